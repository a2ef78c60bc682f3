/** Brings the grading page to life. */
import { h, render } from 'preact';
import { takeOffered } from '../Booth/pick-groups.ts';
import GradingDesk, { type Parts } from './GradingDesk.tsx';

export const openGrading = (place: HTMLElement, parts: Parts): void =>
  render(h(GradingDesk, { ...takeOffered(place), parts }), place);
