import { h, render } from 'preact';
import { loadPracticed } from '../../lib/practice/load-practiced.ts';
import PracticeRound from './PracticeRound.tsx';

/** Puts a round of problems in the place of the printed ones. */
export async function practice(box: HTMLElement): Promise<void> {
  const ids = (box.dataset.practice ?? '').split(' ');
  const calculations = await Promise.all(ids.map(loadPracticed));
  const set = 1 + Math.floor(Math.random() * 9999);
  box.replaceChildren();
  render(h(PracticeRound, { calculations, set }), box);
  box.querySelector<HTMLElement>('input, select')?.focus();
}
