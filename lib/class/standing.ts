/** Where one learner stands: what comes next, what waits, what is to be caught up, what runs out. */
import { daysBetween } from '../calendar.ts';
import type { BoardLearner } from '../files/class-board.ts';
import type { Coupon } from '../files/learner-record.ts';
import { type ContinuityCode, follow } from '../kept-alive.ts';

/** What a board has to know of an exercise, in the order of the course. */
export interface BoardExercise {
  slug: string;
  title: string;
  station: 'booth' | 'side';
  /** Core diameter of its largest electrode, inches; 0 where nothing is welded. */
  largest: number;
  /** A test plate or a test pipe. */
  test?: true;
  /** Signed before anybody strikes. */
  gate?: true;
  /** The highest current that its sheet starts from, amperes. */
  current?: number;
}

export interface Standing {
  learner: BoardLearner;
  /** Undefined when everything is passed. */
  next: BoardExercise | undefined;
  /** How many exercises of the course lie before it. */
  place: number;
  /** The safety gate is signed, or passed. */
  mayStrike: boolean;
  waiting: Coupon[];
  /** Attempts of the next exercise that were to be repeated. */
  repeats: number;
  catchUp: number;
  /** The next exercise is a test, and all that comes before it is passed or set by hand. */
  readyFor: BoardExercise | undefined;
  /** Undefined where no test was passed. */
  alive: { until: string; daysLeft: number; late?: string } | undefined;
}

/** `exercises` in the order of the course; `today` is a day such as `2026-03-02`. */
export function standingOf(
  learner: BoardLearner,
  exercises: readonly BoardExercise[],
  code: ContinuityCode,
  today: string,
): Standing {
  const passed = new Set(
    learner.coupons.filter((it) => it.result === 'passed').map((it) => it.exercise),
  );
  const byHand = exercises.find(({ slug }) => slug === learner.at);
  const next =
    byHand && !passed.has(byHand.slug) ? byHand : firstOpen(exercises, passed, learner.at);
  const waiting = learner.coupons.filter(({ result }) => result === 'waiting');
  const missed = learner.absences.reduce((sum, { minutes }) => sum + minutes, 0);
  return {
    learner,
    next,
    place: next ? exercises.indexOf(next) : exercises.length,
    mayStrike:
      (learner.gate ?? '') !== '' || exercises.every(({ gate, slug }) => !gate || passed.has(slug)),
    waiting,
    repeats: learner.coupons.filter((it) => it.result === 'repeat' && it.exercise === next?.slug)
      .length,
    catchUp: Math.max(0, missed - learner.caughtUp),
    readyFor:
      next?.test && !waiting.some(({ exercise }) => exercise === next.slug) ? next : undefined,
    alive: aliveOf(learner, code, today),
  };
}

/** The first exercise that is not passed, from the one set by hand on. */
function firstOpen(
  exercises: readonly BoardExercise[],
  passed: ReadonlySet<string>,
  from: string,
): BoardExercise | undefined {
  const start = Math.max(
    0,
    exercises.findIndex(({ slug }) => slug === from),
  );
  return exercises.slice(start).find(({ slug }) => !passed.has(slug));
}

function aliveOf(
  { tested, lastWelded, coupons }: BoardLearner,
  code: ContinuityCode,
  today: string,
): Standing['alive'] {
  if (tested === '') return undefined;
  const uses = [lastWelded, ...coupons.map(({ on }) => on)].filter(
    (it) => it !== '' && it <= today,
  );
  const { until, tooLate } = follow(code, tested, uses);
  return { until, daysLeft: daysBetween(today, until), ...(tooLate && { late: tooLate }) };
}
