/** Brings the grading page to life. */
import { h, render } from 'preact';
import GradingDesk, { type Group, type Parts } from './GradingDesk.tsx';

export function openGrading(place: HTMLElement, parts: Parts): void {
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
  render(h(GradingDesk, { groups, parts }), place);
}
