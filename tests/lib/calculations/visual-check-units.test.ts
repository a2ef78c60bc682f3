/** Readings whose units differ from those of the drawing, and pores across the tension. */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import visualCheck from '../../../lib/calculations/visual-check.ts';

function verdictOf(typed: Typed, item: string): string {
  const answered = answer(visualCheck, typed);
  if (!answered.ok) return answered.problems.map(({ text }) => text).join('; ');
  const rows = answered.results.items as { item: string; verdict: string }[];
  return rows.find((row) => row.item === item)?.verdict ?? 'no such item';
}

const building = {
  code: 'AWS D1.1',
  purpose: 'production, static load',
  weld: 'groove with backing',
};
const fillet = { ...building, weld: 'fillet' };

describe('a gauge in one system and a drawing in the other', () => {
  const leg = (base: Typed, filletSize: string, read: string) =>
    verdictOf({ ...base, thickness: '10 mm', filletSize, leg: read }, 'Leg');
  const test = { ...fillet, purpose: 'welder’s test coupon' };
  it.each([
    ['5/16 in', '8 mm', 'pass'],
    ['5/16 in', '7.93 mm', 'fail'],
    ['8 mm', '0.315 in', 'pass'],
    ['8 mm', '5/16 in', 'fail'],
  ])('judge a test fillet of %s read as %s: %s', (size, read, verdict) => {
    expect(leg(test, size, read)).toBe(verdict);
  });
  // 1/8 in, 3 mm under a size of 5/16 in, 8 mm, for a tenth of the length (AWS D1.1 2000 Table 6.1).
  it.each([
    ['5/16 in', '8 mm', 'pass'],
    ['5/16 in', '6.4 mm', 'cannot be judged from this'],
    ['8 mm', '5/16 in', 'cannot be judged from this'],
    ['8 mm', '6 mm', 'cannot be judged from this'],
    ['5/16 in', '4.7 mm', 'fail'],
    ['8 mm', '0.19 in', 'fail'],
  ])('judge a fillet of %s in a building read as %s: %s', (size, read, verdict) => {
    expect(leg(fillet, size, read)).toBe(verdict);
  });
  it('judge places in the system in which the depth was read', () => {
    const deep = (undercutDepth: string, from: string, to: string) =>
      verdictOf(
        {
          ...building,
          thickness: '3/8 in',
          undercutDepth,
          undercutPlaces: [{ from, to, depth: undercutDepth }],
        },
        'Undercut',
      );
    // The source prints 2 in and 50 mm, which is a little less.
    expect(deep('3/64 in', '0 mm', '50.8 mm')).toBe('pass');
    expect(deep('3/64 in', '0 mm', '51 mm')).toBe('fail');
    expect(deep('1.2 mm', '0 in', '1.96 in')).toBe('pass');
    expect(deep('1.2 mm', '0 in', '2 in')).toBe('fail');
  });
});

it('allows no piping porosity in a groove across the tension, and some in a fillet', () => {
  const pores = (weld: string, transverseToTension: string, porosityPerInch: string) => {
    const typed = { ...building, weld, thickness: '1/2 in', transverseToTension, porosityPerInch };
    const across = verdictOf(typed, 'Piping porosity');
    return across === 'no such item'
      ? verdictOf(typed, 'Pores, diameters added up in an inch')
      : across;
  };
  expect(pores('groove with backing', 'yes', '0')).toBe('pass');
  expect(pores('groove with backing', 'yes', '1/64')).toBe('fail');
  expect(pores('groove with backing', 'no', '1/64')).toBe('pass');
  expect(pores('fillet', 'yes', '1/64')).toBe('pass');
  expect(pores('fillet', 'yes', '1/2')).toBe('fail');
});
