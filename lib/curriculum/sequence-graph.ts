/**
 * Which lesson builds on which: an arrow from the lesson that introduces a skill to each that needs
 * it, without the arrows that longer ways already show.
 */
import { introducedIn } from './ask.ts';
import type { Curriculum } from './curriculum.ts';

/** Lessons by their place in reading order, from 0. */
export interface Arrow {
  from: number;
  to: number;
}

/** Every arrow between lessons of the course, each pair once, by target and source. */
export function arrows(course: Curriculum): Arrow[] {
  const introduced = introducedIn(course);
  const place = new Map(course.lessons.map(({ slug }, index) => [slug, index]));
  return course.lessons.flatMap(({ needs }, to) => {
    const from = needs.flatMap((skill) => place.get(introduced.get(skill)?.slug ?? '') ?? []);
    return [...new Set(from)]
      .filter((one) => one < to)
      .sort((a, b) => a - b)
      .map((one) => ({ from: one, to }));
  });
}

/** The arrows that no way over other lessons replaces; what can be reached stays the same. */
export function withoutDetours(all: readonly Arrow[]): Arrow[] {
  const next = Map.groupBy(all, ({ from }) => from);
  const reaches = (from: number, to: number, straight: boolean): boolean =>
    (next.get(from) ?? []).some(
      (arrow) =>
        arrow.to <= to &&
        ((arrow.to === to && !straight) || (arrow.to < to && reaches(arrow.to, to, false))),
    );
  return all.filter(({ from, to }) => !reaches(from, to, true));
}

/** A line down the side of the list, from one lesson to all that build on it. */
export interface Trunk {
  from: number;
  to: readonly number[];
  /** Counted from the list outward; trunks in one lane never stand at the same height. */
  lane: number;
}

/** One trunk a lesson, short ones next to the list. */
export function trunks(some: readonly Arrow[]): Trunk[] {
  const taken: { first: number; last: number }[][] = [];
  return [...Map.groupBy(some, ({ from }) => from)]
    .map(([from, group]) => ({ from, to: group.map(({ to }) => to).sort((a, b) => a - b) }))
    .map((trunk) => ({ ...trunk, last: Math.max(...trunk.to) }))
    .sort((a, b) => a.last - a.from - (b.last - b.from) || a.from - b.from)
    .map(({ from, to, last }) => {
      const free = taken.findIndex((lane) =>
        lane.every((one) => one.last <= from || last <= one.first),
      );
      const lane = free < 0 ? taken.length : free;
      taken[lane] = [...(taken[lane] ?? []), { first: from, last }];
      return { from, to, lane };
    })
    .sort((a, b) => a.from - b.from);
}
