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

describe('the address of a set', () => {
  it('takes the least and the most, and names each lesson once', () => {
    const read = (text: string) => readSetQuery(text, nothing);
    expect(read('set=1&count=1')).toMatchObject({ set: 1, count: 1 });
    expect(read('set=99999&count=30')).toMatchObject({ set: 99_999, count: 30 });
    expect(read('set=100000')).toMatchObject({ set: 1 });
    expect(read('set= 7 &count=%2007')).toMatchObject({ set: 7, count: 7 });
    expect(read('set=0000007')).toMatchObject({ set: 1 });
    expect([lastSet, mostProblems]).toEqual([99_999, 30]);
    expect(read('lesson=a&lesson=b&lesson=a&calculation=c&calculation=c')).toMatchObject({
      lessons: ['a', 'b'],
      calculations: ['c'],
    });
  });

  it('falls back on the whole choice where it names neither lesson nor calculation', () => {
    const fallback = { lessons: ['x'], calculations: ['y'], set: 5, count: 6 };
    expect(readSetQuery('', fallback)).toEqual(fallback);
    expect(readSetQuery('lesson=a', fallback)).toEqual({
      ...fallback,
      lessons: ['a'],
      calculations: [],
    });
    expect(readSetQuery('calculation=c', fallback)).toEqual({
      ...fallback,
      lessons: [],
      calculations: ['c'],
    });
  });

  it('is written in one order, with the reader’s units', () => {
    expect(setQuery({ lessons: ['a', 'b'], calculations: ['c'], set: 7, count: 9 }, 'metric')).toBe(
      'lesson=a&lesson=b&calculation=c&set=7&count=9&units=metric',
    );
  });
});
