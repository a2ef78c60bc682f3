import { h, render } from 'preact';
import RecordDesk, { type RecordLists } from './RecordDesk.tsx';

/** Puts the record in the place of its empty form. */
export function openRecord(place: HTMLElement, lists: RecordLists): void {
  place.replaceChildren();
  render(h(RecordDesk, lists), place);
}
