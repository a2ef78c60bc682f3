/** What a class plan comes to, in words. */
import { durationText } from '../text/clock-text.ts';
import type { ClassNeeds } from './class-needs.ts';

/** Demand against supply in one sentence. An overfull plan is called overfull, never anything else. */
export function verdict({ demand, supply, preparation }: ClassNeeds): {
  overfull: boolean;
  booths: string;
  bench: string;
} {
  const spare = supply.each - demand.each;
  const overfull = spare < -1e-9;
  const short = preparation.hours - preparation.capacity;
  return {
    overfull,
    booths: overfull
      ? `Too full: ${durationText(-spare)} a learner too many. Take out exercises or attempts, or add evenings.`
      : spare < supply.each * 0.05
        ? `Full: ${durationText(spare)} a learner is left for absences, machines that are down and slow evenings.`
        : `${durationText(spare)} a learner is left for absences, machines that are down and slow evenings.`,
    bench:
      short > 1e-9
        ? `Too much: ${durationText(short)} more beveling than there is time for. Buy beveled metal, or find hours beside the class.`
        : `${durationText(-short)} is left at the bench.`,
  };
}

/** Weeks that hold more booth hours than there are, because exercises are fixed there: a sentence each. */
export const overfullWeeks = ({ weeks }: ClassNeeds): ReadonlyMap<number, string> =>
  new Map(
    weeks
      .filter(({ number, demand, supply }) => number > 0 && demand > supply + 1e-6)
      .map(({ number, demand, supply }) => [
        number,
        `Week ${number} is ${durationText(demand - supply)} too full.`,
      ]),
  );
