import { expect, it } from 'vitest';
import { emptyRecord } from '../../../lib/files/learner-record.ts';
import { mergeLearnerRecords } from '../../../lib/record/merge-learner-records.ts';

it('merged records come out the same whichever comes first, in the order of their days, ticks by number', () => {
  const check = (exercise: string, ticked: number[], on: string) => ({ exercise, ticked, on });
  const one = {
    ...emptyRecord(),
    selfChecks: [check('b', [10, 2], '2026-03-05'), check('c', [1], '2026-03-01')],
  };
  const two = {
    ...emptyRecord(),
    selfChecks: [check('b', [0], '2026-03-02'), check('a', [1], '2026-03-05')],
  };
  const both = mergeLearnerRecords(one, two);
  expect(both.selfChecks).toEqual([
    check('c', [1], '2026-03-01'),
    check('a', [1], '2026-03-05'),
    check('b', [0, 2, 10], '2026-03-05'),
  ]);
  expect(mergeLearnerRecords(two, one)).toEqual(both);
});
