/** An exercise as one class does it, and the attempts and hours that makes. */
import type { ClassExercise } from './class-exercise.ts';

export interface Turn {
  exercise: ClassExercise;
  /** Learners who do it. */
  learners: number;
  /** Attempts of each, before repeats. */
  attempts: number;
  /** At its station for one attempt. */
  minutes: number;
  /** The week in which all of it is done; undefined: as soon as there is room. */
  week?: number;
  /** Repeats as a share of the attempts: 0.5 adds one to every two. */
  repeats: number;
}

/** Attempts of the whole class, repeats included; a fraction of one is an attempt. */
export const attemptsOf = ({ learners, attempts, repeats }: Turn): number =>
  Math.ceil(learners * attempts * (1 + repeats) - 1e-9);

/** Hours of the whole class at the station, repeats included, not rounded. */
export const hoursOf = ({ learners, attempts, repeats, minutes }: Turn): number =>
  (learners * attempts * (1 + repeats) * minutes) / 60;

/**
 * Whether the exercise takes a booth; others are done beside them, at saw, grinder, gauge or paper.
 */
export const atBooth = ({ exercise }: Turn): boolean => exercise.station === 'booth';
