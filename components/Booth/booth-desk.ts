/** Brings the booth page to life. */
import { h, render } from 'preact';
import BoothDesk, { type Props } from './BoothDesk.tsx';
import { takeOffered } from './pick-groups.ts';

export const openDesk = (place: HTMLElement, parts: Props['parts']): void =>
  render(h(BoothDesk, { ...takeOffered(place), parts }), place);
