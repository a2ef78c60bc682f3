/** What is marked on the bench, kept as the hand works, so that a reload loses nothing. */
import { type MeasuredSlice, measuredSlice } from '../../lib/files/measured-slice.ts';
import { Shelf } from '../Shelf/shelf.ts';
import { toKept, type Worked } from './bench-state.ts';
import type { Picture } from './picture.ts';
import { forgetPicture } from './picture-store.ts';

export interface Kept {
  /** A sentence on what is kept. */
  said: string;
}

const shelf = new Shelf<MeasuredSlice | undefined>(measuredSlice as never, () => undefined);

export const keptSlice = (): MeasuredSlice | undefined => shelf.take().data;

let waiting: ReturnType<typeof setTimeout> | undefined;
let write: (() => void) | undefined;

/** Writes once the hand rests, and at the latest when the page is left. */
export function keep(
  picture: Picture,
  isKept: boolean,
  worked: Worked,
  tell: (kept: Kept) => void,
): void {
  clearTimeout(waiting);
  write = () => {
    write = undefined;
    const problem = shelf.put(toKept(picture, isKept, worked));
    if (problem) tell({ said: `${problem}.` });
  };
  waiting = setTimeout(() => write?.(), 400);
}

addEventListener('pagehide', () => write?.());

/** Picture and marks. */
export async function forget(): Promise<void> {
  clearTimeout(waiting);
  write = undefined;
  shelf.clear();
  await forgetPicture();
}
