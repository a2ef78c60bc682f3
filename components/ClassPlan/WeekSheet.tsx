import type { ClassNeeds } from '../../lib/class/class-needs.ts';
import { durationText } from '../../lib/text/clock-text.ts';
import Said from '../Reasons/Said.tsx';
import PlanTable from './PlanTable.tsx';
import Size from './Size.tsx';

/** Week by week: who welds what, the hours it takes, and what lies ready on the first evening. */
export default function WeekSheet({ needs }: { needs: ClassNeeds }) {
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
            : attempts.map(({ turn, count }, at) => (
                <>
                  {at > 0 && ', '}
                  {count} × {turn.exercise.title}
                </>
              )),
          number === 0 ? (
            <b>{durationText(demand)} too many</b>
          ) : (
            <>
              {durationText(demand)} of {durationText(supply)}
              {demand > supply + 1e-6 && <b>, {durationText(demand - supply)} too many</b>}
            </>
          ),
          pieces.map(({ section, length, count }, at) => (
            <>
              {at > 0 && ', '}
              {count} × <Said text={section} /> × <Size value={length} unit="in" />
            </>
          )),
          rods.map(({ kind, count }, at) => (
            <>
              {at > 0 && ', '}
              {count} <Said text={kind} />
            </>
          )),
        ])}
      />
    </>
  );
}
