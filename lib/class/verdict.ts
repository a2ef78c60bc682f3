import { durationText } from '../text/clock-text.ts';
import type { ClassNeeds } from './class-needs.ts';

/** Demand against supply in one sentence. An overfull plan is called overfull, never anything else. */
export function verdict({ demand, supply, preparation, weeks }: ClassNeeds): {
  overfull: boolean;
  booths: string;
  /** Weeks that hold more than their hours, because exercises are fixed there; '' where none does. */
  weeks: string;
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
    weeks: weeksOver(weeks),
    bench:
      short > 1e-9
        ? `Too much: ${durationText(short)} more beveling than there is time for. Buy beveled metal, or find hours beside the class.`
        : `${durationText(-short)} is left at the bench.`,
  };
}

function weeksOver(weeks: ClassNeeds['weeks']): string {
  const over = weeks.flatMap((week) => {
    const hours = hoursOver(week);
    return hours > 0 ? [`${durationText(hours)} in week ${week.number}`] : [];
  });
  return over.length > 0
    ? `Too many booth hours: ${over.join(', ')}. Exercises are fixed there; give one another week, or empty its box.`
    : '';
}

/** By number of the week, what is to be said beside the box that fixes an exercise there. */
export const overfullWeeks = ({ weeks }: ClassNeeds): ReadonlyMap<number, string> =>
  new Map(
    weeks
      .filter((week) => hoursOver(week) > 0)
      .map((week) => [
        week.number,
        `Week ${week.number}: ${durationText(hoursOver(week))} too many`,
      ]),
  );

/** Booth hours that a week of the term is asked for above what it has; 0 where it has room. */
const hoursOver = ({ number, demand, supply }: ClassNeeds['weeks'][number]): number =>
  number > 0 && demand > supply + 1e-6 ? demand - supply : 0;
