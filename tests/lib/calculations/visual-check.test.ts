/** The visual check beyond its single limits, which visual-limits.test.ts tries: places of undercut, codes that do not apply. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import visualCheck from '../../../lib/calculations/visual-check.ts';
import { type Place, worstWindow } from '../../../lib/inspection/undercut-window.ts';

const verdictOf = (typed: Typed, item: string): string => {
  const answered = answer(visualCheck, typed);
  if (!answered.ok) return answered.problems.map(({ text }) => text).join('; ');
  const rows = answered.results.items as { item: string; verdict: string }[];
  return rows.find((row) => row.item === item)?.verdict ?? 'no such item';
};

const coupon = { code: 'AWS D1.1', purpose: 'welder’s test coupon', weld: 'groove, open root' };
const building = {
  code: 'AWS D1.1',
  purpose: 'production, static load',
  weld: 'groove with backing',
};
const fillet = { ...building, weld: 'fillet' };
const piping = { ...building, code: 'ASME B31.3', weld: 'groove, open root' };

it.each([
  ['a coupon', coupon],
  ['a fillet', fillet],
])('judges nothing of %s that was not read', (_, typed) => {
  const answered = answer(visualCheck, { ...typed, thickness: '3/8 in' });
  expect(answered).toMatchObject({
    ok: true,
    results: { verdict: 'not complete: some items were not read' },
  });
});

describe('undercut deeper than 1/32 in on plate thinner than 1 in', () => {
  const typed = { ...building, thickness: '3/4 in', undercutDepth: '3/64 in' };
  const places = (...rows: [string, string][]) =>
    rows.map(([from, to]) => ({ from, to, depth: '3/64 in' }));

  it('cannot be judged without the places', () => {
    expect(verdictOf(typed, 'Undercut')).toBe('cannot be judged from this');
  });
  it('passes two places of 1-1/2 in whose ends lie more than 12 in apart', () => {
    const undercutPlaces = places(['0 in', '1-1/2 in'], ['14 in', '15-1/2 in']);
    expect(verdictOf({ ...typed, undercutPlaces }, 'Undercut')).toBe('pass');
  });
  it('fails 2-1/2 in inside one foot', () => {
    const undercutPlaces = places(['0 in', '1 in'], ['9 in', '10-1/2 in']);
    expect(verdictOf({ ...typed, undercutPlaces }, 'Undercut')).toBe('fail');
  });
  it('fails deeper than 1/16 in, however short', () => {
    expect(verdictOf({ ...typed, undercutDepth: '5/64 in' }, 'Undercut')).toBe('fail');
  });
});

it('tells a reading with as many figures as show on which side of its limit it lies', () => {
  const answered = answer(visualCheck, {
    ...coupon,
    thickness: '3/8 in',
    undercutDepth: '0.0313 in',
  });
  const { items } = (answered.ok ? answered.results : {}) as {
    items: { item: string; reading: string; verdict: string }[];
  };
  expect(items).toContainEqual(
    expect.objectContaining({ item: 'Undercut', verdict: 'fail', reading: '0.0313 in' }),
  );
});

it('finds the worst window as sliding it by small steps does', () => {
  const place: fc.Arbitrary<Place> = fc
    .record({ from: fc.nat(400), length: fc.integer({ min: 1, max: 60 }) })
    .map(({ from, length }) => ({ from, to: from + length, depth: 1 }));
  fc.assert(
    fc.property(
      fc.array(place, { maxLength: 12 }),
      fc.integer({ min: 5, max: 150 }),
      (places, length) => {
        let worst = 0;
        for (let start = -160; start <= 460; start++) {
          let covered = 0;
          for (let at = start; at < start + length; at++)
            if (places.some(({ from, to }) => from <= at && at + 1 <= to)) covered++;
          worst = Math.max(worst, covered);
        }
        expect(worstWindow(places, length)).toBe(worst);
      },
    ),
    { numRuns: 60 },
  );
});

it('counts spatter that the brush takes off, and nothing that nobody looked for', () => {
  const typed = { ...coupon, thickness: '3/8 in' };
  expect(verdictOf({ ...typed, looseSpatter: 'yes' }, 'Loose spatter and slag')).toBe('fail');
  expect(verdictOf({ ...typed, looseSpatter: 'no' }, 'Loose spatter and slag')).toBe('pass');
  expect(verdictOf(typed, 'Loose spatter and slag')).toBe('no such item');
  expect(verdictOf({ ...fillet, thickness: '3/8 in', misalignment: '1 in' }, 'Misalignment')).toBe(
    'no such item',
  );
});

it.each([
  ['1/16 in', '1/16 in', 'pass'],
  ['1/16 in', '1/32 in', 'fail'],
  ['1/16 in', '', 'cannot be judged from this'],
  ['0', '', 'pass'],
  ['3/32 in', '1/8 in', 'fail'],
  ['1 mm', '1/32 in', 'fail'],
])(
  'a root hollow by %s under a cover of %s: %s, the plate’s thickness being kept or not',
  (rootConcavity, reinforcement, verdict) => {
    const typed = { ...coupon, thickness: '3/8 in', rootConcavity, reinforcement };
    expect(verdictOf(typed, 'Root concavity')).toBe(verdict);
  },
);

it('gives no verdict by ASME IX on a production weld', () => {
  expect(verdictOf({ ...building, code: 'ASME IX', thickness: '3/8 in' }, 'Crack')).toContain(
    'test coupons only',
  );
});

it('gives no verdict by ASME B31.3 on a test coupon', () => {
  const typed = { ...piping, purpose: 'welder’s test coupon', thickness: '7.11 mm' };
  expect(verdictOf(typed, 'Crack')).toContain('goes by ASME IX');
});

it.each([
  ['1.9 mm', 'pass'],
  ['2 mm', 'pass'],
  ['2.1 mm', 'fail'],
])(
  'weighs a hollow root of %s in piping against a cover 2 mm high: %s',
  (rootConcavity, verdict) => {
    const typed = { ...piping, thickness: '7.11 mm', reinforcement: '2 mm', rootConcavity };
    expect(verdictOf(typed, 'Root concavity')).toBe(verdict);
  },
);
