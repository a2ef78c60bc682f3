import type { LearnerRecord } from '../../lib/files/learner-record.ts';
import { movesOn, readiness } from '../../lib/record/readiness.ts';
import { type ExerciseAsks, wanted } from '../../lib/record/wanted.ts';
import type { System } from '../../lib/units.ts';
import Wanted from './Wanted.tsx';

interface Props {
  exercises: readonly (ExerciseAsks & { title: string; checks: number })[];
  record: LearnerRecord;
  system: System;
}

const percent = (share: number): string => `${Math.round(share * 100)}%`;
const words = { waiting: 'waits', passed: 'passed', repeat: 'repeat' } as const;

/** Exercise by exercise: what was handed in, and what that says so far. */
export default function Coupons({ exercises, record, system }: Props) {
  const begun = exercises.filter(({ id }) =>
    [...record.coupons, ...record.selfChecks].some(({ exercise }) => exercise === id),
  );
  if (begun.length === 0) return <p>No coupon yet.</p>;
  return (
    <ul class="record-list">
      {begun.map((asks) => {
        const { id, title, checks } = asks;
        const { graded, passed, run, range } = readiness(record.coupons, id);
        const ticked = record.selfChecks.find(({ exercise }) => exercise === id)?.ticked.length;
        return (
          <li key={id}>
            <strong>{title}.</strong>{' '}
            {range &&
              `${passed} of ${graded} graded coupons passed: ${percent(passed / graded)}; with so many seen, the long run may lie anywhere from ${percent(range.low)} to ${percent(range.high)}. Passes in a row now: ${run}. ${run >= movesOn ? 'Ask your instructor whether you go on.' : ''}`}
            {ticked !== undefined && ` Self-check: ${ticked} of ${checks} ticked.`}
            <ul>
              {record.coupons
                .filter(({ exercise }) => exercise === id)
                .map(({ on, result, grader, readings, missed = [] }, place) => (
                  <li key={place}>
                    {on}: {words[result]}
                    {grader && `, ${grader}`}
                    {readings.map(({ item, reading }) => `; ${item} ${reading}`)}
                    {missed.length > 0 && `; not met: ${missed.join(', ')}`}
                  </li>
                ))}
            </ul>
            <Wanted sentences={wanted(record.coupons, asks)} system={system} />
          </li>
        );
      })}
    </ul>
  );
}
