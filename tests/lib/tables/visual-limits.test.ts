/**
 * Every limit of the eye and the gauge in both unit systems, at the limit and just over, as printed:
 * AWS D1.1:2000 Table 6.1 (8.1 in 2020) with the weld profiles, and ASME B31.3:1996 Table 341.3.2.
 * Which are read and which from memory stands at each row of `lib/tables/visual-limits.ts`.
 */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import visualCheck from '../../../lib/calculations/visual-check.ts';

const building = {
  code: 'AWS D1.1',
  purpose: 'production, static load',
  weld: 'groove with backing',
};
const fillet = { ...building, weld: 'fillet' };
const bridge = { ...building, purpose: 'production, cyclic load' };
const coupon = { ...building, purpose: 'welder’s test coupon', weld: 'groove, open root' };
const piping = { ...building, code: 'ASME B31.3', weld: 'groove, open root' };

function verdict(typed: Typed, item: string): string | undefined {
  const found = answer(visualCheck, typed);
  if (!found.ok) throw new Error(found.problems[0]?.text);
  const rows = found.results.items as { item: string; verdict: string }[];
  return rows.find((row) => row.item === item)?.verdict;
}

type Row = [
  what: string,
  item: string,
  field: string,
  typed: Typed,
  most: number,
  unit: 'in' | 'mm',
];
const face = (faceWidth: string) => ({ ...fillet, thickness: '10 mm', faceWidth });
const plate = (base: Typed, thickness: string) => ({ ...base, thickness });
const cap = ['Height of the cover pass', 'reinforcement'] as const;
const root = ['Protrusion at the root', 'meltThrough'] as const;

const rows: Row[] = [
  ['face 5/16 in', 'Convexity', 'convexity', face('5/16 in'), 1 / 16, 'in'],
  ['face 8 mm', 'Convexity', 'convexity', face('8 mm'), 2, 'mm'],
  ['face 0.32 in', 'Convexity', 'convexity', face('0.32 in'), 1 / 8, 'in'],
  ['face 0.99 in', 'Convexity', 'convexity', face('0.99 in'), 1 / 8, 'in'],
  ['face 24 mm', 'Convexity', 'convexity', face('24 mm'), 3, 'mm'],
  ['face 1.01 in', 'Convexity', 'convexity', face('1.01 in'), 3 / 16, 'in'],
  ['face 26 mm', 'Convexity', 'convexity', face('26 mm'), 5, 'mm'],
  ['building, 1 in', ...cap, plate(building, '1 in'), 1 / 8, 'in'],
  ['building, 25 mm', ...cap, plate(building, '25 mm'), 3, 'mm'],
  ['building, 1.01 in', ...cap, plate(building, '1.01 in'), 3 / 16, 'in'],
  ['building, 50 mm', ...cap, plate(building, '50 mm'), 5, 'mm'],
  ['building, 51 mm', ...cap, plate(building, '51 mm'), 6, 'mm'],
  ['coupon', ...cap, plate(coupon, '10 mm'), 3, 'mm'],
  ['piping, 1/4 in', ...cap, plate(piping, '1/4 in'), 1 / 16, 'in'],
  ['piping, 6 mm', ...cap, plate(piping, '6 mm'), 1.5, 'mm'],
  ['piping, 0.26 in', ...cap, plate(piping, '0.26 in'), 1 / 8, 'in'],
  ['piping, 1/2 in', ...cap, plate(piping, '1/2 in'), 1 / 8, 'in'],
  ['piping, 13 mm', ...cap, plate(piping, '13 mm'), 3, 'mm'],
  ['piping, 0.51 in', ...cap, plate(piping, '0.51 in'), 5 / 32, 'in'],
  ['piping, 1 in', ...cap, plate(piping, '1 in'), 5 / 32, 'in'],
  ['piping, 25 mm', ...cap, plate(piping, '25 mm'), 4, 'mm'],
  ['piping, 1.01 in', ...cap, plate(piping, '1.01 in'), 3 / 16, 'in'],
  ['piping, 26 mm', ...cap, plate(piping, '26 mm'), 5, 'mm'],
  ['piping, 6 mm', ...root, plate(piping, '6 mm'), 1.5, 'mm'],
  ['piping, 1 in', ...root, plate(piping, '1 in'), 5 / 32, 'in'],
  ['building, 24 mm', 'Undercut', 'undercutDepth', plate(building, '24 mm'), 1, 'mm'],
  ['building, 25 mm', 'Undercut', 'undercutDepth', plate(building, '25 mm'), 2, 'mm'],
  ['bridge', 'Undercut', 'undercutDepth', plate(bridge, '10 mm'), 0.25, 'mm'],
  [
    'bridge, along',
    'Undercut',
    'undercutDepth',
    { ...plate(bridge, '10 mm'), transverseToTension: 'no' },
    1,
    'mm',
  ],
  ['coupon', 'Undercut', 'undercutDepth', plate(coupon, '10 mm'), 1, 'mm'],
  ['piping, 1/2 in', 'Undercut', 'undercutDepth', plate(piping, '1/2 in'), 1 / 32, 'in'],
  [
    'piping, 0.1 in: a quarter of the wall',
    'Undercut',
    'undercutDepth',
    plate(piping, '0.1 in'),
    0.025,
    'in',
  ],
  [
    'piping, 1/2 in',
    'Incomplete penetration',
    'incompletePenetration',
    plate(piping, '1/2 in'),
    1 / 32,
    'in',
  ],
  [
    'piping, 0.1 in: a fifth of the wall',
    'Incomplete penetration',
    'incompletePenetration',
    plate(piping, '0.1 in'),
    0.02,
    'in',
  ],
  [
    'piping, 10 mm',
    'Incomplete penetration',
    'incompletePenetration',
    plate(piping, '10 mm'),
    1,
    'mm',
  ],
  [
    'building',
    'Pores, diameters added up in an inch',
    'porosityPerInch',
    plate(building, '10 mm'),
    10,
    'mm',
  ],
  [
    'building',
    'Pores, diameters added up in a foot',
    'porosityPerFoot',
    plate(building, '10 mm'),
    20,
    'mm',
  ],
  [
    'coupon',
    'Root concavity',
    'rootConcavity',
    { ...plate(coupon, '10 mm'), reinforcement: '3 mm' },
    2,
    'mm',
  ],
  ['coupon', 'Melt-through', 'meltThrough', plate(coupon, '10 mm'), 3, 'mm'],
];

describe('a reading at its limit passes, and one just over does not', () => {
  it.each(rows)('%s: %s', (_, item, field, typed, most, unit) => {
    const read = (size: number) => verdict({ ...typed, [field]: `${size} ${unit}` }, item);
    expect(read(most)).toBe('pass');
    expect(read(Number((most * 1.004).toPrecision(6)))).not.toBe('pass');
  });
});

// Under the size for at most a tenth of the length.
it.each([
  ['3/16 in', 1 / 16, 'in'],
  ['5 mm', 2, 'mm'],
  ['1/4 in', 3 / 32, 'in'],
  ['6 mm', 2.5, 'mm'],
  ['5/16 in', 1 / 8, 'in'],
  ['8 mm', 3, 'mm'],
  ['7 mm', 3, 'mm'],
] as const)(
  'a fillet of %s may be %d %s short, for a tenth of its length',
  (filletSize, by, unit) => {
    const leg = (size: number) =>
      verdict({ ...fillet, thickness: '10 mm', filletSize, leg: `${size} ${unit}` }, 'Leg');
    const [whole = '', part] = filletSize.replace(/ .*/, '').split('/');
    const size = Number(whole) / Number(part ?? 1);
    expect(leg(size)).toBe('pass');
    expect(leg(size - by)).toBe('cannot be judged from this');
    expect(leg(Number((size - by * 1.01).toPrecision(6)))).toBe('fail');
  },
);

describe('the root of a pipe', () => {
  it('may be hollow as far as the cover pass makes it good', () => {
    const hollow = (rootConcavity: string, reinforcement: string) =>
      verdict({ ...piping, thickness: '7 mm', rootConcavity, reinforcement }, 'Root concavity');
    expect(hollow('1 mm', '1 mm')).toBe('pass');
    expect(hollow('1.01 mm', '1 mm')).toBe('fail');
    expect(hollow('1/16 in', '1.6 mm')).toBe('pass');
    expect(hollow('1.6 mm', '1/16 in')).toBe('fail');
  });
});

it('is not complete while a reading is missing, fails by one, and passes when all do', () => {
  const all = {
    ...building,
    thickness: '3/8 in',
    crack: 'no',
    incompleteFusion: 'no',
    craterFilled: 'yes',
    overlap: 'no',
    undercutDepth: '0 in',
    reinforcement: '1/16 in',
    porosityPerInch: '0 in',
    porosityPerFoot: '0 in',
  };
  const of = (typed: Typed) => {
    const found = answer(visualCheck, typed);
    return found.ok
      ? [found.results.verdict, new Set(found.because.map(({ kind }) => kind))]
      : found.problems;
  };
  expect(of(all)).toEqual(['passes', new Set(['row'])]);
  expect(of({ ...all, overlap: 'yes' })).toEqual(['fails', new Set(['row', 'caution'])]);
  expect(of({ ...all, crack: undefined })).toEqual([
    'not complete: some items were not read',
    new Set(['row']),
  ]);
});
