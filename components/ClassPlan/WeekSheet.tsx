import type { ComponentChildren } from 'preact';
import type { ClassNeeds } from '../../lib/class/class-needs.ts';
import type { Rotation } from '../../lib/class/rotation.ts';
import { durationText, wallClock } from '../../lib/text/clock-text.ts';
import Said from '../Reasons/Said.tsx';
import PieceSize from './PieceSize.tsx';
import PlanTable from './PlanTable.tsx';

/** Week by week: who welds what, the hours it takes, and what lies ready on the first evening. */
export default function WeekSheet({ needs }: { needs: ClassNeeds }) {
  const { rotation } = needs;
  return (
    <>
      <p class="quiet">
        Averages of a class: each learner moves on after three good ones in a row, not by the week.
        Hold points in every exercise: after fit-up, after the root, before the cover.
      </p>
      <PlanTable
        caption="Week by week"
        columns={['Week', 'Attempts of the class', 'Booth hours', 'Pieces ready', 'Electrodes']}
        rows={needs.weeks.map(({ number, supply, demand, attempts, pieces, rods }) => [
          number === 0 ? 'No room' : number,
          attempts.length === 0
            ? '–'
            : lines(attempts.map(({ turn, count }) => `${count} × ${turn.exercise.title}`)),
          number === 0 ? (
            <b>{durationText(demand)} too many</b>
          ) : (
            <>
              {durationText(demand)} of {durationText(supply)}
              {demand > supply + 1e-6 && <b>, {durationText(demand - supply)} too many</b>}
            </>
          ),
          lines(
            pieces.map(({ section, length, count }) => (
              <>
                {count} × <PieceSize section={section} length={length} />
              </>
            )),
          ),
          lines(
            rods.map(({ kind, count }) => (
              <>
                {count} × <Said text={kind} />
              </>
            )),
          ),
        ])}
      />
      {rotation && <Beside rotation={rotation} />}
    </>
  );
}

/** Nobody sits: the side station is where the metal for the booths is made. */
function Beside({ rotation: { rounds, beside, evenings } }: { rotation: Rotation }) {
  const shown = evenings.slice(0, 4);
  return (
    <>
      <PlanTable
        caption="Who stands beside the booths, by turns"
        columns={['Round', ...shown.map((_, at) => `Evening ${at + 1}`)]}
        rows={rounds.map(({ from, to }, round) => [
          `${wallClock(from)} to ${wallClock(to)}`,
          ...shown.map((evening) => runsText(evening[round] ?? [])),
        ])}
      />
      <p class="quiet">
        {beside} at the side station in each round of about forty minutes: saw and grind, etch and
        gauge, or sums. Nobody saws or grinds before the grinder sign-off. The numbers are places on
        your list of learners.{' '}
        {evenings.length > shown.length && 'The next evenings go on from there. '}
        After {evenings.length === 1 ? 'one evening' : `${evenings.length} evenings`} everybody has
        had a turn, and it begins again.
      </p>
    </>
  );
}

/** 1, 2, 3, 7 is `1 to 3, 7`. */
function runsText(places: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const place of places.toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[1] === place - 1) last[1] = place;
    else runs.push([place, place]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from} to ${to}`)).join(', ');
}

/** One thing a line: a list is read down at the saw and at the oven. */
const lines = (items: readonly ComponentChildren[]) => (
  <ul class="plan-lines">
    {items.map((item, at) => (
      <li key={at}>{item}</li>
    ))}
  </ul>
);
