/** Six months by the calendar, against counting months by hand and walking the days one by one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import continuity from '../../../lib/calculations/continuity.ts';
import { addMonths, daysBetween } from '../../../lib/calendar.ts';
import { readDay } from '../../../lib/text/day-text.ts';

const ask = (typed: Typed) => {
  const answered = answer(continuity, { code: 'AWS D1.1', process: 'SMAW', ...typed });
  return answered.ok ? answered.results : answered.problems;
};
const uses = (...days: string[]) => days.map((on) => ({ process: 'SMAW', on }));

const day = fc
  .date({ min: new Date('1999-01-01'), max: new Date('2050-12-31'), noInvalidDate: true })
  .map((at) => at.toISOString().slice(0, 10));
const next = (from: string) => new Date(Date.parse(from) + 86_400_000).toISOString().slice(0, 10);

describe('months', () => {
  it.each([
    ['2025-08-31', '2026-02-28'],
    ['2023-08-31', '2024-02-29'],
    ['2023-08-29', '2024-02-29'],
    ['2026-03-31', '2026-09-30'],
    ['2026-12-31', '2027-06-30'],
    ['2026-02-28', '2026-08-28'],
    ['2026-07-15', '2027-01-15'],
  ])('six from %s end on %s', (from, end) => {
    expect(addMonths(from, 6)).toBe(end);
  });

  it('end on the same day of the sixth month, or on the last day that it has', () => {
    fc.assert(
      fc.property(day, (from) => {
        // Walk on day by day until the sixth first of a month, then up to the wanted day.
        let at = from;
        for (let firsts = 0; firsts < 6; at = next(at)) if (next(at).endsWith('-01')) firsts++;
        while (at.slice(8) < from.slice(8) && !next(at).endsWith('-01')) at = next(at);
        expect(addMonths(from, 6)).toBe(at);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a day as typed', () => {
  it.each(['2026-02-30', '2026-13-01', '2025-02-29', '2026-00-10', '2026-04-31'])(
    '%s is refused as a day no calendar has',
    (text) => {
      expect(ask({ qualified: text, on: '2026-10-01' })).toEqual([
        { field: 'qualified', text: `Day of the test ${text} is a day no calendar has` },
      ]);
    },
  );
  it.each([
    '3/2/2026',
    '02.03.2026',
    '26-03-02',
    'March 2',
    '2026-03',
    '99999999',
    '2026-03-021',
    'on 2026-03-02',
    '2026-03-02!',
  ])('%s is refused with how to write it', (text) => {
    expect(readDay(text)).toEqual({
      problem: `needs a day written like 2026-03-02, not “${text}”`,
    });
  });
  it('may leave out noughts, and leap days are days', () => {
    expect(readDay(' 2026-3-2 ')).toEqual({ day: '2026-03-02' });
    expect(readDay('2024-02-29')).toEqual({ day: '2024-02-29' });
  });
  it('is refused in a row by the row’s field', () => {
    expect(ask({ qualified: '2026-01-01', uses: uses('2026-02-30'), on: '2026-03-01' })).toEqual([
      { field: 'uses.1.on', text: 'Day 2026-02-30 is a day no calendar has' },
    ]);
  });
});

describe('a qualification', () => {
  it('ends a day earlier under ASME IX', () => {
    const asked = { qualified: '2026-03-02', on: '2026-04-01' };
    expect(ask(asked)).toMatchObject({ currentUntil: '2026-09-02', daysLeft: 154 });
    expect(ask({ ...asked, code: 'ASME IX' })).toMatchObject({
      currentUntil: '2026-09-01',
      daysLeft: 153,
    });
  });
  it('says what keeps it, and that nothing does once it ended', () => {
    const asked = { qualified: '2026-03-02' };
    expect(ask({ ...asked, on: '2026-04-01' })).toMatchObject({
      keepIt: 'One weld with SMAW by 2026-09-02, written down with the name of who saw it',
      lastUse: '2026-03-02, the test',
    });
    expect(ask({ ...asked, on: '2026-10-01' })).toMatchObject({
      keepIt: expect.stringMatching(/^Nothing does: it ended after 2026-09-02/),
    });
  });
  it('cites the other code where the two part', () => {
    const cited = (code: string) => {
      const answered = answer(continuity, {
        code,
        process: 'SMAW',
        qualified: '2026-03-02',
        on: '2026-04-01',
      });
      return (
        answered.ok &&
        answered.because.find(({ text }) => text.startsWith('The codes part'))?.cite?.source
      );
    };
    expect(cited('AWS D1.1')).toBe('asme-ix');
    expect(cited('ASME IX')).toBe('aws-d1.1');
  });
  it('is not brought back by a use that came too late', () => {
    expect(
      ask({ qualified: '2026-01-10', uses: uses('2026-07-11', '2026-08-01'), on: '2026-08-02' }),
    ).toMatchObject({ state: 'ended', currentUntil: '2026-07-10', daysLeft: 0 });
  });
  it('is kept by uses in any order, and not by those after the day asked about', () => {
    const asked = { qualified: '2026-01-10', uses: uses('2026-11-01', '2026-06-30') };
    expect(ask({ ...asked, on: '2026-10-01' })).toMatchObject({
      state: 'current',
      currentUntil: '2026-12-30',
      lastUse: '2026-06-30, used',
    });
  });
  it('is not kept by another process, nor by a use before the test, and says so of these alone', () => {
    const typed = {
      code: 'AWS D1.1',
      process: 'SMAW',
      qualified: '2026-01-10',
      uses: [
        { process: 'GTAW', on: '2026-06-01' },
        ...uses('2025-12-01', '2026-01-10', '2026-03-01', '2026-08-02', '2026-08-03'),
      ],
      on: '2026-08-02',
    };
    const answered = answer(continuity, typed);
    expect(answered).toMatchObject({
      results: { state: 'current', lastUse: '2026-08-02, used', currentUntil: '2027-02-02' },
    });
    const said = (kind: string) =>
      answered.ok && answered.because.filter((one) => one.kind === kind).map(({ text }) => text);
    expect(said('passed')).toEqual([
      '2026-06-01: GTAW does not keep SMAW.',
      '2025-12-01 lies before the test.',
      '2026-08-03 lies after the day you ask about.',
    ]);
    expect(said('caution')).toEqual([]);
    const without = answer(continuity, { ...typed, uses: typed.uses.slice(0, 1) });
    expect(without).toMatchObject({ results: { state: 'ended', currentUntil: '2026-07-10' } });
  });
  it('has no state before its test', () => {
    expect(ask({ qualified: '2026-01-10', on: '2026-01-09' })).toMatchObject([{ field: 'on' }]);
  });
  it('is current exactly while no gap is too long, whichever days it was used', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(900), { maxLength: 8 }), fc.nat(900), (gaps, asked) => {
        const start = '2024-08-29';
        const onDay = (days: number) =>
          new Date(Date.parse(start) + days * 86_400_000).toISOString().slice(0, 10);
        const on = onDay(asked);
        const stops = [0, ...gaps.filter((gap) => gap <= asked), asked].sort((a, b) => a - b);
        const alive = stops.every(
          (at, index) => index === 0 || onDay(at) <= addMonths(onDay(stops[index - 1] ?? 0), 6),
        );
        const found = ask({ qualified: start, uses: uses(...gaps.map(onDay)), on });
        expect(found).toMatchObject({ state: alive ? 'current' : 'ended' });
      }),
      { numRuns: 200 },
    );
  });
  it('counts the days left to the last good day', () => {
    fc.assert(
      fc.property(day, fc.nat(180), (qualified, later) => {
        const on = new Date(Date.parse(qualified) + later * 86_400_000).toISOString().slice(0, 10);
        const found = ask({ qualified, on }) as { daysLeft: number; currentUntil: string };
        expect(found.daysLeft).toBe(daysBetween(on, found.currentUntil));
        let left = 0;
        for (let at = on; at < found.currentUntil; at = next(at)) left++;
        expect(found.daysLeft).toBe(left);
      }),
      { numRuns: 100 },
    );
  });
});
