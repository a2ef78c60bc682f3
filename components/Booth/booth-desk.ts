/** Brings the booth page to life. */
import { h, render } from 'preact';
import BoothDesk, { type Props } from './BoothDesk.tsx';
import { takeGroups } from './pick-groups.ts';

export const openDesk = (place: HTMLElement, parts: Props['parts']): void =>
  render(h(BoothDesk, { groups: takeGroups(place), parts }), place);
