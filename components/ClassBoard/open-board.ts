import { h, render } from 'preact';
import BoardBench, { type BoardData } from './BoardBench.tsx';

/** Puts the live board in the place of the printed demo class. */
export function openBoard(place: HTMLElement, data: BoardData): void {
  place.replaceChildren();
  render(h(BoardBench, data), place);
}
