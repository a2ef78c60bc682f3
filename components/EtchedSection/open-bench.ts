import { h, render } from 'preact';
import Bench from './Bench.tsx';
import type { Picture } from './picture.ts';
import { readPicture } from './read-picture.ts';

let shown: Picture | undefined;
let opened = 0;

/** Puts a picture on the bench, a fresh one for each. Returns the sentence that says why not, or ''. */
export async function openBench(file: Blob, name: string, isSample: boolean): Promise<string> {
  const picture = await readPicture(file, name, isSample);
  if ('problem' in picture) return picture.problem;
  const place = document.querySelector('#section-bench');
  if (!place) return '';
  if (shown) URL.revokeObjectURL(shown.address);
  shown = picture;
  render(h(Bench, { key: `${++opened}`, picture }), place);
  const heading = place.querySelector<HTMLElement>('#section-marking');
  heading?.focus();
  return '';
}
