/** Brings the booth page to life. */
import { h, render } from 'preact';
import BoothDesk, { type Group, type Props } from './BoothDesk.tsx';

export function openDesk(place: HTMLElement, parts: Props['parts']): void {
  const groups = [...place.querySelectorAll('optgroup')].map(
    (group): Group => ({
      title: group.label,
      picks: [...group.querySelectorAll('option')].map(({ value, text }) => ({
        value,
        title: text,
      })),
    }),
  );
  place.replaceChildren();
  render(h(BoothDesk, { groups, parts }), place);
}
