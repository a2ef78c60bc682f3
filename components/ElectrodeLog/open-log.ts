import { h, render } from 'preact';
import type { DemoEvening } from './demo-log.ts';
import LogDesk from './LogDesk.tsx';

/** Puts the live log in the place of the blank sheet. */
export function openLog(place: HTMLElement, demo: DemoEvening): void {
  place.replaceChildren();
  render(h(LogDesk, { demo }), place);
}
