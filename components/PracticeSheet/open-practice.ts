import { h, render } from 'preact';
import PracticeDesk, { type PracticeLists } from './PracticeDesk.tsx';

/** Puts the desk that makes sets in the place of the printed example. */
export function openPractice(place: HTMLElement, lists: PracticeLists): void {
  place.replaceChildren();
  render(h(PracticeDesk, lists), place);
}
