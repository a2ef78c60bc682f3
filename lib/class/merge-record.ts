/** A learner's own record laid onto the board: nothing on the board is lost, no grade is taken back. */
import { type BoardLearner, type ClassBoard, newLearner } from '../files/class-board.ts';
import type { Coupon, LearnerRecord } from '../files/learner-record.ts';

const key = ({ exercise, on }: Coupon): string => `${exercise} ${on}`;

/** The board with the record’s coupons; a learner whom it does not know yet is added. */
export function mergeRecord(board: ClassBoard, record: LearnerRecord): ClassBoard {
  const name = record.learner.trim();
  const known = board.learners.find(({ learner }) => learner === name);
  const learner = merged(known ?? newLearner(name), record.coupons);
  return {
    ...board,
    learners: known
      ? board.learners.map((it) => (it === known ? learner : it))
      : [...board.learners, learner],
  };
}

/** What the board has graded stands; a coupon that waits there takes the grade of the record. */
function merged(learner: BoardLearner, coupons: readonly Coupon[]): BoardLearner {
  const left = [...coupons];
  const kept = learner.coupons.map((own) => {
    const at = left.findIndex((it) => key(it) === key(own));
    if (at < 0) return own;
    const [theirs] = left.splice(at, 1);
    return own.result === 'waiting' && theirs ? theirs : own;
  });
  const all = [...kept, ...left].sort((a, b) => a.on.localeCompare(b.on));
  return { ...learner, coupons: all };
}
