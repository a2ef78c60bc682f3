import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '../../../lib/calendar.ts';
import { dueOn, gaps, mostInRound, roundOn, setOfDay } from '../../../lib/practice/review.ts';

const lessons = [
  { id: 'flat-bead', calculations: ['heat-input', 'travel-speed', 'filter-shade'] },
  { id: 'fillet-2f', calculations: ['fillet-throat', 'fillet-leg', 'heat-input'] },
  { id: 'groove-1g', calculations: ['groove-area'] },
];
const read = (lesson: string, on: string) => ({ lesson, on });
const tried = (calculation: string, on: string, solved = true) => ({
  calculation,
  set: 1,
  place: 0,
  solved,
  on,
});

describe('what comes back', () => {
  it('comes the day after reading, and nothing from lessons unread', () => {
    const record = { lessonsRead: [read('flat-bead', '2026-03-02')], problems: [] };
    expect(dueOn('2026-03-02', lessons, record)).toEqual([]);
    expect(dueOn('2026-03-03', lessons, record).map((it) => it.calculation)).toEqual(
      lessons[0]?.calculations,
    );
  });

  it('comes after a longer gap with each day solved, up to the longest', () => {
    let on = '2026-03-02';
    const record = {
      lessonsRead: [read('groove-1g', on)],
      problems: [] as ReturnType<typeof tried>[],
    };
    for (const gap of [...gaps, gaps.at(-1) ?? 0]) {
      expect(dueOn(addDays(on, gap - 1), lessons, record)).toEqual([]);
      on = addDays(on, gap);
      expect(dueOn(on, lessons, record)).toHaveLength(1);
      record.problems.push(tried('groove-area', on));
    }
  });

  it('comes the next day after a miss, even if it was solved later that day', () => {
    const lessonsRead = [read('groove-1g', '2026-01-01')];
    const problems = [
      tried('groove-area', '2026-02-01'),
      tried('groove-area', '2026-03-01', false),
      tried('groove-area', '2026-03-01'),
    ];
    expect(dueOn('2026-03-02', lessons, { lessonsRead, problems })).toHaveLength(1);
  });
});

describe('the round of a day', () => {
  it('is short, from what is due, each once, and mixes lessons as far as it can', () => {
    const days = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(days, (ago) => {
        const today = '2026-06-01';
        const lessonsRead = lessons.map(({ id }, at) => read(id, addDays(today, -(ago[at] ?? 0))));
        const record = { lessonsRead, problems: [] };
        const round = roundOn(today, lessons, record);
        const due = dueOn(today, lessons, record).map((it) => it.calculation);
        expect(round).toHaveLength(Math.min(mostInRound, due.length));
        expect(new Set(round.map((it) => it.calculation)).size).toBe(round.length);
        const most = Math.max(
          0,
          ...Map.groupBy(round, (it) => it.lesson)
            .values()
            .map((it) => it.length),
        );
        const pairs = round.filter((it, at) => it.lesson === round[at - 1]?.lesson).length;
        expect(pairs).toBe(Math.max(0, 2 * most - 1 - round.length));
      }),
    );
  });

  it('has other numbers the next day', () => {
    expect(setOfDay('2026-03-03')).toBe(setOfDay('2026-03-02') + 1);
  });
});
