import { expect, it } from 'vitest';
import { readDay } from '../../../lib/text/day-text.ts';
import { dayInFull } from '../../../lib/typed/days.ts';

it.each([
  '2026-03-02',
  '2026/3/2',
  '2026.03.02',
  'March 2, 2026',
  'mar 2 2026',
  'Mar. 2nd, 2026',
  '2 March 2026',
  ' 2nd Mar. 2026 ',
  '02 MARCH, 2026',
  '2026-03-02T18:15',
  '2026-3-2 18:15:30Z',
])('%j is the second of March', (typed) => {
  expect(readDay(dayInFull(typed))).toEqual({ day: '2026-03-02' });
});

it.each([
  ['1 Jan 2026', '2026-01-01'],
  ['31 December 2026', '2026-12-31'],
  ['May 5, 2026', '2026-05-05'],
  ['Sept 9, 2026', '2026-09-09'],
])('%s is %s', (typed, day) => {
  expect(readDay(dayInFull(typed))).toEqual({ day });
});

it.each(['03/02/2026', '2.3.2026', '2 Foo 2026', 'Foo 2, 2026', 'yesterday', '18:15', ''])(
  '%j stays as it was typed',
  (typed) => {
    expect(dayInFull(typed)).toBe(typed);
  },
);

it('leaves a day that no calendar has to be refused', () => {
  expect(readDay(dayInFull('31 February 2026'))).toMatchObject({
    problem: expect.stringContaining('no calendar has'),
  });
});
