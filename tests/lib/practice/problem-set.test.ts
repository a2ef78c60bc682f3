import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadPracticed } from '../../../lib/practice/load-practiced.ts';
import {
  lastSet,
  mostProblems,
  problemSet,
  readSetQuery,
  setQuery,
} from '../../../lib/practice/problem-set.ts';

const three = await Promise.all(['heat-input', 'travel-speed', 'fillet-throat'].map(loadPracticed));
const nothing = { lessons: [], calculations: [], set: 1, count: 8 };
const slug = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/);
const slugs = fc.uniqueArray(slug, { maxLength: 6 });

describe('a set of problems', () => {
  it('is the same set whenever it is made again, and another one under another number', () => {
    const once = problemSet(three, 4021, 12, 'us').map(({ text }) => text);
    expect(problemSet(three, 4021, 12, 'us').map(({ text }) => text)).toEqual(once);
    expect(problemSet(three, 4022, 12, 'us').map(({ text }) => text)).not.toEqual(once);
  });

  it('begins the same way however many problems are asked for', () => {
    const long = problemSet(three, 77, 12, 'metric').map(({ text }) => text);
    expect(problemSet(three, 77, 5, 'metric').map(({ text }) => text)).toEqual(long.slice(0, 5));
  });

  it('never asks for the same calculation twice in a row where there is a choice', () => {
    const ids = problemSet(three, 9, mostProblems, 'us').map(({ id }) => id);
    expect(ids.filter((id, place) => id === ids[place - 1])).toEqual([]);
    expect(problemSet([], 9, 5, 'us')).toEqual([]);
  });

  it('comes back whole from its address', () => {
    const choice = fc.record({
      lessons: slugs,
      calculations: slugs,
      set: fc.integer({ min: 1, max: lastSet }),
      count: fc.integer({ min: 1, max: mostProblems }),
    });
    fc.assert(
      fc.property(choice, (one) => {
        expect(readSetQuery(setQuery(one, 'us'), nothing)).toEqual(one);
      }),
    );
  });

  it('falls back where an address holds no whole number in range', () => {
    for (const wrong of ['0', '-3', '1e3', '100000', 'abc', '', '4.5'])
      expect(readSetQuery(`set=${wrong}&count=${wrong}`, nothing)).toEqual(nothing);
    expect(readSetQuery('count=31', nothing).count).toBe(8);
  });
});
