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

describe('when a problem comes up', () => {
  const one = [{ id: 'groove-1g', calculations: ['groove-area'] }];
  const comes = (problems: ReturnType<typeof tried>[], on = '2026-01-01') =>
    Array.from({ length: 200 }, (_, ago) => addDays(on, ago)).find(
      (day) => dueOn(day, one, { lessonsRead: [read('groove-1g', on)], problems }).length > 0,
    );

  it('is after 1, 3, 7, 14, 30 and 60 days (custom, no source), whatever order the days stand in', () => {
    expect(gaps).toEqual([1, 3, 7, 14, 30, 60]);
    expect(comes([])).toBe('2026-01-02');
    const days = ['2026-01-05', '2026-01-02'].map((on) => tried('groove-area', on));
    expect(comes(days)).toBe('2026-01-12');
    expect(comes([tried('groove-area', '2026-01-08', false), ...days])).toBe('2026-01-09');
    expect(
      comes([tried('groove-area', '2026-01-02', false), tried('groove-area', '2026-01-03')]),
    ).toBe('2026-01-06');
  });

  it('counts its own tries alone, and a day of reading that came after them', () => {
    expect(comes([tried('deposit', '2026-01-02')])).toBe('2026-01-02');
    expect(comes([tried('groove-area', '2025-12-01')])).toBe('2026-01-04');
  });

  it('tells what is longest overdue first, by the lesson that was read first in the course', () => {
    const lessonsRead = [read('fillet-2f', '2026-03-01'), read('flat-bead', '2026-03-04')];
    const due = dueOn('2026-04-01', lessons, { lessonsRead, problems: [] });
    expect(due.map(({ calculation, lesson, on }) => [calculation, lesson, on])).toEqual([
      ['fillet-throat', 'fillet-2f', '2026-03-02'],
      ['fillet-leg', 'fillet-2f', '2026-03-02'],
      ['heat-input', 'flat-bead', '2026-03-05'],
      ['travel-speed', 'flat-bead', '2026-03-05'],
      ['filter-shade', 'flat-bead', '2026-03-05'],
    ]);
  });

  it('a round takes six, the longest overdue', () => {
    const many = Array.from({ length: 8 }, (_, at) => ({ id: `l${at}`, calculations: [`c${at}`] }));
    const lessonsRead = many.map(({ id }, at) => read(id, `2026-03-0${at + 1}`));
    const round = roundOn('2026-04-01', many, { lessonsRead, problems: [] });
    expect(round.map(({ calculation }) => calculation).sort()).toEqual([
      'c0',
      'c1',
      'c2',
      'c3',
      'c4',
      'c5',
    ]);
    expect(mostInRound).toBe(6);
  });

  it('a day has its own set: 1 on January 1, 2000, and never more than five digits', () => {
    expect(setOfDay('2000-01-01')).toBe(1);
    expect(setOfDay('2000-01-02')).toBe(2);
    // 99,999 days later it begins anew.
    expect(setOfDay(addDays('2000-01-01', 99_998))).toBe(99_999);
    expect(setOfDay(addDays('2000-01-01', 99_999))).toBe(1);
  });
});
