/** Each limit at, just under and just over, in both unit systems; the whole by a restatement. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import bentSpecimen from '../../../lib/calculations/bent-specimen.ts';

type Row = { size: string; place: 'face' | 'corner'; cause?: string };
const judge = (openings: Row[], more = {}) => {
  const answered = answer(bentSpecimen, { openings, ...more });
  if (!answered.ok) throw new Error(answered.problems.map(({ text }) => text).join('; '));
  return answered.results as {
    verdictD11: string;
    verdictIX: string;
    items: { item: string; reading: string }[];
  };
};
const slag = 'slag or incomplete fusion';
const again = 'does not count: bend another strap';

it('adds openings up in the system that they were measured in, the larger named as it was read', () => {
  const sum = (...sizes: string[]) => {
    const { items } = judge(sizes.map((size) => ({ size, place: 'face' as const })));
    return items.map(({ item, reading }) => `${item}: ${reading}`);
  };
  expect(sum()).toContain('Openings added up: none');
  expect(sum('1/64 in')).toContain('Openings added up: none');
  expect(sum('1/16 in', '1/8 in')).toContain('Openings added up: 3/16 in');
  expect(sum('2 mm', '3 mm')).toContain('Openings added up: 5 mm');
  // 2 mm are 0.0787 in: with 1/16 in, 0.1412 in.
  expect(sum('2 mm', '1/16 in')).toContain('Openings added up: 0.141 in');
  expect(sum('2 mm', '1/16 in')).toContain('Largest opening: 2 mm');
  expect(sum('1 mm', '1/16 in')).toContain('Largest opening: 1/16 in');
  // Beside 1/8 in, three figures would read as on the limit.
  expect(sum('0.12504 in')).toContain('Largest opening: 0.12504 in');
});

describe.each([
  ['in', 1 / 8, 1 / 4],
  ['mm', 3, 6],
])('in %s', (unit, largest, corner) => {
  it.each(['face', 'corner'] as const)('an opening with a flaw on the %s', (place) => {
    const one = (size: number) => judge([{ size: `${size} ${unit}`, place, cause: slag }]);
    for (const size of [largest, largest - 0.001])
      expect(one(size)).toMatchObject({ verdictD11: 'passes', verdictIX: 'passes' });
    expect(one(largest + 0.001)).toMatchObject({ verdictD11: 'fails', verdictIX: 'fails' });
  });
  it('a corner crack without a flaw', () => {
    const one = (size: number) => judge([{ size: `${size} ${unit}`, place: 'corner' }]);
    for (const size of [corner, corner - 0.001]) expect(one(size).verdictD11).toBe('passes');
    expect(one(corner + 0.001)).toMatchObject({ verdictD11: again, verdictIX: 'passes' });
  });
  it('the sum of those above the small ones', () => {
    const small = unit === 'in' ? 1 / 32 : 1;
    const sum = unit === 'in' ? 3 / 8 : 10;
    const rows = (...sizes: number[]): Row[] =>
      sizes.map((size) => ({ size: `${size} ${unit}`, place: 'face' }));
    const most = unit === 'in' ? [1 / 8, 1 / 8] : [3, 3, 2];
    const rest = sum - most.reduce((a, b) => a + b, 0);
    expect(judge(rows(...most, rest)).verdictD11).toBe('passes');
    expect(judge(rows(...most, rest - 0.001)).verdictD11).toBe('passes');
    const over = unit === 'in' ? [1 / 16, rest - 1 / 16 + 0.001] : [rest + 0.001];
    expect(judge(rows(...most, ...over)).verdictD11).toBe('fails');
    expect(judge(rows(...most, rest, small, small, small)).verdictD11).toBe('passes');
    expect(judge(rows(...most, rest, small + 0.001)).verdictD11).toBe('fails');
  });
});

it('passes a clean strap, and not one that broke or slid out of the bend', () => {
  expect(judge([])).toMatchObject({ verdictD11: 'passes', verdictIX: 'passes' });
  expect(judge([], { broke: 'yes' })).toMatchObject({ verdictD11: 'fails', verdictIX: 'fails' });
  expect(judge([], { weldInBend: 'no' })).toMatchObject({ verdictD11: again, verdictIX: again });
});

it('adds readings of both unit systems', () => {
  const { items, verdictD11 } = judge([
    { size: '3 mm', place: 'face' },
    { size: '1/8 in', place: 'face' },
    { size: '1/8 in', place: 'face' },
    { size: '1/16 in', place: 'face' },
  ]);
  expect(verdictD11).toBe('fails');
  expect(items.find(({ item }) => item === 'Openings added up')?.reading).toContain('0.43');
});

it('judges as a plain restatement in inches does', () => {
  const row = fc.record({
    sixtyFourths: fc.integer({ min: 0, max: 30 }),
    place: fc.constantFrom('face' as const, 'corner' as const),
    cause: fc.constantFrom('none seen', slag),
  });
  fc.assert(
    fc.property(fc.array(row, { maxLength: 10 }), (rows) => {
      const openings = rows.map(({ sixtyFourths, ...rest }) => ({
        size: `${sixtyFourths}/64 in`,
        ...rest,
      }));
      const counted = rows.filter(({ place, cause }) => place === 'face' || cause === slag);
      const bare = rows.filter(({ place, cause }) => place === 'corner' && cause !== slag);
      const long = counted.some(({ sixtyFourths }) => sixtyFourths > 8);
      const sum = counted
        .map(({ sixtyFourths }) => sixtyFourths)
        .filter((size) => size > 2 && size <= 8)
        .reduce((a, b) => a + b, 0);
      const structural =
        long || sum > 24
          ? 'fails'
          : bare.some(({ sixtyFourths }) => sixtyFourths > 16)
            ? again
            : 'passes';
      expect(judge(openings)).toMatchObject({
        verdictD11: structural,
        verdictIX: long ? 'fails' : 'passes',
      });
    }),
    { numRuns: 300 },
  );
});
