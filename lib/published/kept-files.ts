/** The files that readers save for themselves. */
import { classBoard } from '../files/class-board.ts';
import { classPlan } from '../files/class-plan.ts';
import type { FileKind } from '../files/file-kind.ts';
import { gradingBook } from '../files/grading-book.ts';
import { learnerRecord } from '../files/learner-record.ts';
import { ownOutlineFile } from '../files/own-outline-file.ts';

export interface KeptFile {
  kind: FileKind<unknown>;
  /** What stands in it, for somebody who wants to read it with another program. */
  holds: string;
}

/** In the order of the page about them. */
export const keptFiles: readonly KeptFile[] = [
  {
    kind: learnerRecord,
    holds: 'Lessons read, ticks, coupons with readings and grades, and problems of one learner.',
  },
  {
    kind: gradingBook,
    holds: 'Rubric and readings of the coupons of each exercise.',
  },
  {
    kind: classPlan,
    holds: 'Exercises of a term, learners, stock and prices, as typed.',
  },
  {
    kind: classBoard,
    holds: 'Learners by number, where each is, absences, and the booths with their machines.',
  },
  {
    kind: ownOutlineFile,
    holds: 'A reviewer’s own outline and the lessons set beside each topic.',
  },
] as KeptFile[];
