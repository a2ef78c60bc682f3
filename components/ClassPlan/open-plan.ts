import { h, render } from 'preact';
import PlanBench, { type PlanData } from './PlanBench.tsx';

/** Puts the live plan in the place of the printed demo term. */
export function openPlan(place: HTMLElement, data: PlanData): void {
  place.replaceChildren();
  render(h(PlanBench, data), place);
}
