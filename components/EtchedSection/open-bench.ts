import { h, render } from 'preact';
import type { MeasuredSlice } from '../../lib/files/measured-slice.ts';
import Bench from './Bench.tsx';
import { fromKept, type Worked } from './bench-state.ts';
import { forget, type Kept, keep, keptSlice } from './keep-slice.ts';
import type { Picture, SampleName } from './picture.ts';
import { keepPicture, keptPicture } from './picture-store.ts';
import { readPicture } from './read-picture.ts';

let onBench: Picture | undefined;
let opened = 0;

/** Puts a picture on the bench, a fresh one for each. Returns the sentence that says why not, or ''. */
export async function openBench(file: Blob, name: string, sample?: SampleName): Promise<string> {
  const picture = await readPicture(file, name, sample);
  if ('problem' in picture) return picture.problem;
  const before = keptSlice();
  const isKept = await keepPicture(picture.blob);
  show(picture, isKept, before && isSame(before, picture) ? before : undefined);
  document.querySelector<HTMLElement>('#section-marking')?.focus();
  return '';
}

/** What was on the bench when the page was left. Returns a sentence on what is missing, or ''. */
export async function reopenBench(): Promise<string> {
  const slice = keptSlice();
  if (!slice) return '';
  const { name, sample } = slice.picture;
  const blob = await keptPicture();
  const picture = blob && (await readPicture(blob, name, sample));
  // A picture chosen meanwhile stays.
  if (onBench) return '';
  if (!picture || 'problem' in picture)
    return `Picture: the marks on “${name}” are kept, the picture is not. Choose it again, and they come back.`;
  show(picture, true, slice);
  return '';
}

/** The same file, scaled down the same way. */
const isSame = ({ picture }: MeasuredSlice, { name, width, height }: Picture) =>
  picture.name === name && picture.width === width && picture.height === height;

function show(picture: Picture, isKept: boolean, slice: MeasuredSlice | undefined): void {
  const place = document.querySelector('#section-bench');
  if (!place) return;
  if (onBench) URL.revokeObjectURL(onBench.address);
  onBench = picture;
  const key = `${++opened}`;
  const draw = (kept: Kept) =>
    render(
      h(Bench, {
        key,
        picture,
        worked: slice && fromKept(slice),
        kept: kept.said,
        onKeep: (worked: Worked) => keep(picture, isKept, worked, draw),
        onPutAway: () => putAway(place),
      }),
      place,
    );
  draw({
    said: isKept
      ? 'Picture and marks stay in this browser until you put them away. Nothing is sent.'
      : 'The marks stay in this browser; the picture is too large to be kept, so choose it again after a reload. Nothing is sent.',
  });
}

async function putAway(place: Element): Promise<void> {
  render(null, place);
  if (onBench) URL.revokeObjectURL(onBench.address);
  onBench = undefined;
  await forget();
  document.querySelector<HTMLElement>('#section-file')?.focus();
}
