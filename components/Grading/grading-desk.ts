/** Brings the grading page to life. */
import { h, render } from 'preact';
import { takeGroups } from '../Booth/pick-groups.ts';
import GradingDesk, { type Parts } from './GradingDesk.tsx';

export const openGrading = (place: HTMLElement, parts: Parts): void =>
  render(h(GradingDesk, { groups: takeGroups(place), parts }), place);
