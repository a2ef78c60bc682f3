/** Which sentence a wrong number gets, with nothing in the problem that could be mixed up. */
import { describe, expect, it } from 'vitest';
import type { Calculation, Output } from '../../../lib/calculation.ts';
import type { Asked } from '../../../lib/practice/asked.ts';
import { judge } from '../../../lib/practice/judge.ts';
import {
  lastSet,
  mostProblems,
  readSetQuery,
  setQuery,
  wholeNumber,
} from '../../../lib/practice/problem-set.ts';
import { dueOn, roundOn, setOfDay } from '../../../lib/practice/review.ts';
import { whyWrong } from '../../../lib/practice/why-wrong.ts';
import type { Unit } from '../../../lib/units.ts';

function bare(kind: 'formula' | 'procedure', it: Output, result: number): Asked {
  const calculation = {
    kind,
    title: 'Bare',
    inputs: {},
    outputs: { it },
    compute: () => ({ it: result, because: [] }),
  } as unknown as Calculation;
  return { calculation, typed: {}, results: { it: result }, want: 'it', system: 'us' };
}
const count: Output = { label: 'Pieces', unit: '1' };
const size: Output = { label: 'Size', unit: 'V' };
const said = (
  kind: 'formula' | 'procedure',
  output: Output,
  right: number,
  typed: number,
  unit: Unit,
) => whyWrong(bare(kind, output, right), typed, right, unit);

describe('whyWrong', () => {
  it('says of a count whether it is too many or too few', () => {
    expect(said('formula', count, 7, 11, '1')).toBe('Too many. The hint shows the rule.');
    expect(said('formula', count, 7, 4, '1')).toBe('Too few. The hint shows the rule.');
    expect(said('procedure', count, 7, 11, '1')).toMatch(/^Too many\. .* that decides\.$/);
    expect(said('procedure', count, 7, 4, '1')).toMatch(/^Too few\. .* that decides\.$/);
    expect(said('formula', count, 7, 8, '1')).toMatch(/^Off by one: it was rounded up/);
    expect(said('formula', count, 7, 6, '1')).toMatch(/^Off by one: the last one counts too/);
    expect(said('formula', count, 7, 6.5, '1')).toMatch(/whole number/);
    expect(said('formula', count, 7, -4, '1')).toBe('The sign is the other way round.');
  });

  it('says of a size whether it is too much, too little, or close', () => {
    expect(said('formula', size, 30, 100, 'V')).toMatch(/^Too much, and no usual slip/);
    expect(said('formula', size, 30, 22, 'V')).toMatch(/^Too little, and no usual slip/);
    expect(said('procedure', size, 30, 100, 'V')).toMatch(/^Too much\. The hint/);
    expect(said('procedure', size, 30, 22, 'V')).toMatch(/^Too little\. The hint/);
    expect(said('formula', size, 30, 32.9, 'V')).toMatch(/^Close/);
    expect(said('formula', size, 30, 27.1, 'V')).toMatch(/^Close/);
    expect(said('formula', size, 30, 33.5, 'V')).toMatch(/^Too much/);
    expect(said('formula', size, 30, -20, 'V')).toBe('The sign is the other way round.');
    expect(said('formula', size, 0, 2, 'V')).toBe('Here it is nothing at all.');
    expect(said('formula', count, 0, 3, '1')).toBe('Too many. The hint shows the rule.');
  });

  it('takes the first slip that fits, and a closer one where it fits much better', () => {
    // Ten times, within two parts in a hundred.
    expect(said('formula', size, 30, 305, 'V')).toMatch(/decimal point/);
    expect(said('formula', size, 30, 307, 'V')).toMatch(/^Too much, and no usual slip/);
    // Of a count a slip is exact or none.
    expect(said('formula', count, 30, 300, '1')).toMatch(/decimal point/);
    expect(said('formula', count, 30, 301, '1')).toBe('Too many. The hint shows the rule.');
    expect(said('formula', size, 30, 60, 'V')).toMatch(/twice too much/);
    expect(said('formula', size, 30, 15, 'V')).toMatch(/half of it/);
  });

  it('knows a size rounded the wrong way: up where it must fit, down where it must be enough', () => {
    const rounded = (way: 'up' | 'down' | 'nearest'): Output => ({
      label: 'Leg',
      unit: 'in',
      digits: 3,
      round: { to: '1/16 in|1 mm', way },
    });
    const at = (way: 'up' | 'down' | 'nearest', typed: number) =>
      said('formula', rounded(way), 0.28, typed, 'in');
    expect(at('up', 0.25)).toMatch(/^Rounded the wrong way/);
    expect(at('down', 0.3125)).toMatch(/^Rounded the wrong way/);
    expect(at('down', 0.25)).not.toMatch(/^Rounded/);
    expect(at('nearest', 0.25)).not.toMatch(/^Rounded/);
    expect(at('up', 0.26)).not.toMatch(/^Rounded/);
  });

  it('knows the right number behind another unit', () => {
    const why = (value: number, unit: Unit) =>
      whyWrong(bare('formula', { label: 'Size', unit: 'in' }, 3), 76.2, 3, 'in', { value, unit });
    expect(why(3, 'ft')).toMatch(/^The number is right, but ft/);
    expect(why(3, 'in')).not.toMatch(/^The number is right/);
    expect(why(4, 'ft')).not.toMatch(/^The number is right/);
  });
});

describe('judge', () => {
  it('takes an answer as it is printed, with spaces around it, and a result that has no figures', async () => {
    const third = bare('formula', { label: 'Size', unit: 'V', digits: 1 }, 0.0346);
    // Printed with one figure: 0.03.
    expect((await judge(third, ' 0.03 ')).right).toBe(true);
    expect((await judge(third, '0.029')).right).toBe(false);
    expect((await judge(third, '\t')).said).toBe('Your answer is empty.');
    expect((await judge(third, '')).said).toBe('Your answer is empty.');
    const one = bare('formula', count, 7);
    expect(await judge(one, '7')).toEqual({ right: true, said: 'Right: 7.' });
    expect((await judge(one, '7.05')).right).toBe(false);
  });
});

describe('the address of a set', () => {
  const fallback = { lessons: ['a'], calculations: ['b'], set: 4, count: 5 };

  it('says in which units it was made', () => {
    const choice = { lessons: ['x', 'y'], calculations: ['z'], set: 12, count: 3 };
    expect(setQuery(choice, 'metric')).toBe(
      'lesson=x&lesson=y&calculation=z&set=12&count=3&units=metric',
    );
  });

  it('that names nothing keeps what was chosen; that names one kind drops the other', () => {
    expect(readSetQuery('', fallback)).toEqual(fallback);
    expect(readSetQuery('lesson=x&lesson=x', fallback)).toEqual({
      ...fallback,
      lessons: ['x'],
      calculations: [],
    });
    expect(readSetQuery('calculation=z&calculation=z', fallback)).toEqual({
      ...fallback,
      lessons: [],
      calculations: ['z'],
    });
  });

  it('counts from one to the last, in whole numbers alone', () => {
    expect([wholeNumber('1', 30), wholeNumber(' 30 ', 30)]).toEqual([1, 30]);
    for (const wrong of ['0', '31', '', ' ', '1.5', '-1', 'x1', '1x', '0000001'])
      expect(wholeNumber(wrong, 30)).toBeUndefined();
    expect(readSetQuery(`set=${lastSet}&count=${mostProblems}`, fallback)).toMatchObject({
      set: lastSet,
      count: mostProblems,
    });
    expect(readSetQuery(`set=${lastSet + 1}&count=${mostProblems + 1}`, fallback)).toEqual(
      fallback,
    );
  });
});

describe('what is due', () => {
  const lessons = [
    { id: 'one', calculations: ['a', 'b', 'c'] },
    { id: 'two', calculations: ['d', 'a'] },
  ];
  const lessonsRead = [
    { lesson: 'two', on: '2026-03-01' },
    { lesson: 'one', on: '2026-03-04' },
  ];
  const solved = (calculation: string, on: string) => ({
    calculation,
    set: 1,
    place: 0,
    solved: true,
    on,
  });

  it('stands with the day it came up, longest ago first, each with the first lesson that has it', () => {
    expect(dueOn('2026-03-05', lessons, { lessonsRead, problems: [] })).toEqual([
      { lesson: 'two', calculation: 'd', on: '2026-03-02' },
      { lesson: 'one', calculation: 'a', on: '2026-03-05' },
      { lesson: 'one', calculation: 'b', on: '2026-03-05' },
      { lesson: 'one', calculation: 'c', on: '2026-03-05' },
    ]);
  });

  it('counts days from the last try, and from reading where a try came before it', () => {
    const due = (on: string) =>
      dueOn('2027-01-01', lessons, { lessonsRead, problems: [solved('d', on)] }).find(
        ({ calculation }) => calculation === 'd',
      )?.on;
    const [early, same, late] = [due('2026-02-01'), due('2026-03-01'), due('2026-03-11')];
    expect(early).toBe(same);
    const days = (a = '', b = '') => (Date.parse(b) - Date.parse(a)) / 86_400_000;
    expect(days('2026-03-11', late)).toBe(days('2026-03-01', same));
    expect(days('2026-03-01', same)).toBeGreaterThan(1);
  });

  it('goes round lessons, the one with most left first', () => {
    const round = roundOn('2026-03-05', lessons, { lessonsRead, problems: [] });
    expect(round.map(({ calculation }) => calculation)).toEqual(['a', 'd', 'b', 'c']);
  });

  it('has a set of its own each day, from the first day of 2000 and within five digits', () => {
    expect(setOfDay('2000-01-01')).toBe(1);
    expect(setOfDay('2000-12-31')).toBe(366);
    expect(setOfDay('2273-10-14')).toBeLessThanOrEqual(lastSet);
    expect(setOfDay('2273-10-15')).toBeGreaterThanOrEqual(1);
  });
});
