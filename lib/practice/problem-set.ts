/** A numbered set of problems: which calculations, which number, how many. */

import type { System } from '../units.ts';
import { makeProblem, type Practiced, type Problem } from './problem.ts';

export interface SetChoice {
  /** Lessons and single calculations, by id. */
  lessons: readonly string[];
  calculations: readonly string[];
  set: number;
  count: number;
}

/** More than one evening's sheet carries. */
export const mostProblems = 30;
/** Five digits can be read out across a shop. */
export const lastSet = 99999;

export type SetProblem = Problem & Pick<Practiced, 'id' | 'calculation'>;

/**
 * The problems of a set, one calculation after another and round again, so that no two neighbors ask
 * for the same where there is a choice. The same calculations, number and system give the same set.
 */
export function problemSet(
  calculations: readonly Practiced[],
  set: number,
  count: number,
  system: System,
): SetProblem[] {
  if (calculations.length === 0) return [];
  return Array.from({ length: count }, (_, place) => {
    const one = calculations[place % calculations.length] as Practiced;
    const { id, calculation } = one;
    return { id, calculation, ...makeProblem(one, set, place, system) };
  });
}

/** The whole choice as the query of an address. */
export function setQuery({ lessons, calculations, set, count }: SetChoice, system: System): string {
  const query = new URLSearchParams();
  for (const lesson of lessons) query.append('lesson', lesson);
  for (const calculation of calculations) query.append('calculation', calculation);
  query.set('set', String(set));
  query.set('count', String(count));
  query.set('units', system);
  return query.toString();
}

/** Reads `setQuery`; what is missing or no whole number in range takes the place of `fallback`. */
export function readSetQuery(text: string, fallback: SetChoice): SetChoice {
  const query = new URLSearchParams(text);
  const lessons = [...new Set(query.getAll('lesson'))];
  const calculations = [...new Set(query.getAll('calculation'))];
  const any = lessons.length + calculations.length > 0;
  return {
    lessons: any ? lessons : fallback.lessons,
    calculations: any ? calculations : fallback.calculations,
    set: wholeNumber(query.get('set') ?? '', lastSet) ?? fallback.set,
    count: wholeNumber(query.get('count') ?? '', mostProblems) ?? fallback.count,
  };
}

/** A whole number from 1 to `most`, or undefined. */
export function wholeNumber(text: string, most: number): number | undefined {
  const number = /^\s*\d{1,6}\s*$/.test(text) ? Number(text) : 0;
  return number >= 1 && number <= most ? number : undefined;
}
