/**
 * Which items are asked of which weld, and each comparison at its very bound. Limits are printed by AWS
 * D1.1 Table 6.1 (2000; 8.1 in 2020), its clause on a welder's coupon, ASME IX QW-194 and ASME B31.3
 * Table 341.3.2; `lib/tables/visual-limits.ts` says which were read.
 */
import { describe, expect, it } from 'vitest';
import { itemsD11, itemsIX, type Opening } from '../../../lib/inspection/bent-items.ts';
import type { GaugeReadings } from '../../../lib/inspection/gauge-readings.ts';
import { isHollowCovered } from '../../../lib/inspection/hollow-root.ts';
import { insideRange } from '../../../lib/inspection/inside-range.ts';
import { worstWindow } from '../../../lib/inspection/undercut-window.ts';
import {
  atMost,
  byEye,
  inSystem,
  isWithin,
  orShareOf,
  printSize,
  reaches,
  rowOf,
  saidLimit,
} from '../../../lib/inspection/visual-item.ts';
import { visualItems } from '../../../lib/inspection/visual-items.ts';

const us = (value: number) => ({ value, system: 'us' as const });
const metric = (value: number) => ({ value, system: 'metric' as const });
const cite = { source: 'common-practice', known: 'practice' } as const;

const weld = (part: Partial<GaugeReadings>) =>
  ({
    code: 'AWS D1.1',
    purpose: 'production, static load',
    weld: 'groove with backing',
    thickness: us(3 / 8),
    ...part,
  }) as GaugeReadings;
const items = (part: Partial<GaugeReadings>) => visualItems(weld(part));
const one = (part: Partial<GaugeReadings>, item: string) =>
  items(part).find((found) => found.item === item);

const coupon = { purpose: 'welder’s test coupon' } as const;
const cyclic = { purpose: 'production, cyclic load' } as const;
const open = { weld: 'groove, open root' } as const;
const fillet = { weld: 'fillet' } as const;

describe('what is asked', () => {
  const seen = ['Crack', 'Incomplete fusion'];
  const face = ['Craters filled', 'Overlap', 'Undercut'];
  const sums = ['Pores, diameters added up in an inch', 'Pores, diameters added up in a foot'];
  const counts = ['Pores counted', 'Largest pore'];
  const cover = 'Height of the cover pass';
  const root = ['Incomplete penetration', 'Root concavity', 'Melt-through'];
  it.each([
    ['a groove on a strip', {}, [...seen, ...face, cover, ...sums]],
    ['an open root', open, [...seen, ...face, cover, ...sums, ...root]],
    ['a fillet', fillet, [...seen, ...face, 'Leg', 'Convexity', ...sums]],
    ['a bridge', cyclic, [...seen, ...face, cover, ...counts]],
    [
      'a groove across the tension',
      { transverseToTension: 'yes' },
      [...seen, ...face, cover, 'Piping porosity'],
    ],
    [
      'a fillet across the tension',
      { ...fillet, transverseToTension: 'yes' },
      [...seen, ...face, 'Leg', 'Convexity', ...sums],
    ],
    ['a coupon on a strip', coupon, [...seen, ...face, cover]],
    ['a coupon with an open root', { ...coupon, ...open }, [...seen, ...face, cover, ...root]],
    ['a coupon of a fillet', { ...coupon, ...fillet }, [...seen, ...face, 'Leg', 'Convexity']],
    ['ASME IX on a strip', { ...coupon, code: 'ASME IX' }, seen],
    [
      'ASME IX, open root',
      { ...coupon, ...open, code: 'ASME IX' },
      [...seen, 'Incomplete penetration'],
    ],
    [
      'pipework, open root',
      { ...open, code: 'ASME B31.3' },
      [
        ...seen,
        'Undercut',
        'Surface pores',
        cover,
        'Root concavity',
        'Incomplete penetration',
        'Protrusion at the root',
      ],
    ],
    ['pipework on a ring', { code: 'ASME B31.3' }, [...seen, 'Undercut', 'Surface pores', cover]],
    [
      'a fillet of pipework',
      { ...fillet, code: 'ASME B31.3' },
      [...seen, 'Undercut', 'Surface pores'],
    ],
    [
      'what lies beside it, where somebody looked',
      { arcStrike: 'no', looseSpatter: 'no', misalignment: us(0) },
      [
        ...[...seen, ...face, cover, ...sums],
        ...['Arc strike outside the weld', 'Loose spatter and slag', 'Misalignment'],
      ],
    ],
  ] as [string, Partial<GaugeReadings>, string[]][])('of %s', (_, part, names) => {
    expect(items(part).map(({ item }) => item)).toEqual(names);
    const read = items(part).filter(({ verdict }) => verdict !== 'cannot be judged from this');
    expect(read.map(({ item }) => item)).toEqual(
      names.slice(names.indexOf('Arc strike outside the weld') >= 0 ? -3 : names.length),
    );
  });

  it('by the clause of its code and purpose', () => {
    const at = (part: Partial<GaugeReadings>) => [
      one(part, 'Crack')?.cite.source,
      one(part, 'Crack')?.cite.at,
    ];
    expect(at({})).toEqual(['aws-d1.1', '2000 Table 6.1 (8.1 in 2020)']);
    expect(at(coupon)[1]).toMatch(/^4\.8\.1 and 4\.30\.1 \(2000\), 6\.10\.1/);
    expect(at({ ...coupon, code: 'ASME IX' })).toEqual(['asme-ix', 'QW-194']);
    expect(at({ code: 'ASME B31.3' })).toEqual(['asme-b31.3', '1996 Table 341.3.2, crack']);
    const rootOf = (part: Partial<GaugeReadings>) =>
      one({ ...open, ...part }, 'Incomplete penetration')?.cite.at;
    expect(rootOf({ ...coupon, code: 'ASME IX' })).toBe('QW-194');
    expect(rootOf({})).toBe('2000 Table 6.1 (8.1 in 2020)');
  });
});

describe('the eye', () => {
  it('passes what it wants to see, and judges nothing that it did not look at', () => {
    expect(byEye('x', 'no', cite)).toMatchObject({ verdict: 'pass', reading: 'no', limit: 'none' });
    expect(byEye('x', 'yes', cite).verdict).toBe('fail');
    expect(byEye('x', 'yes', cite, 'yes', 'full')).toMatchObject({
      verdict: 'pass',
      limit: 'full',
    });
    expect(byEye('x', 'no', cite, 'yes').verdict).toBe('fail');
    expect(byEye('x', undefined, cite)).toMatchObject({
      verdict: 'cannot be judged from this',
      reading: 'not read',
    });
    for (const [item, field, wanted] of [
      ['Crack', 'crack', 'no'],
      ['Incomplete fusion', 'incompleteFusion', 'no'],
      ['Craters filled', 'craterFilled', 'yes'],
      ['Overlap', 'overlap', 'no'],
      ['Arc strike outside the weld', 'arcStrike', 'no'],
      ['Loose spatter and slag', 'looseSpatter', 'no'],
    ] as const)
      for (const answer of ['yes', 'no'] as const)
        expect(one({ [field]: answer }, item)?.verdict, item).toBe(
          answer === wanted ? 'pass' : 'fail',
        );
  });
});

describe('a reading at its limit', () => {
  it('passes with its last bits to spare, and not a millionth more', () => {
    for (const limit of [0.01, 1 / 32, 3, 25]) {
      expect(isWithin(limit * (1 + 5e-10), limit)).toBe(true);
      expect(isWithin(limit * (1 + 1e-6), limit)).toBe(false);
      expect(reaches(limit * (1 - 5e-10), limit)).toBe(true);
      expect(reaches(limit * (1 - 1e-6), limit)).toBe(false);
    }
    expect([isWithin(0, 0), isWithin(1e-12, 0), reaches(0, 0)]).toEqual([true, false, true]);
  });
  it('is printed as its gauge reads it, and its limit in both systems', () => {
    expect([printSize(1 / 32, 'us'), printSize(0.8, 'metric')]).toEqual(['1/32 in', '0.8 mm']);
    expect(saidLimit({ us: 1 / 32, metric: 1 })).toBe('{1/32 in|1 mm}');
    expect(saidLimit({ us: 1.5, metric: 38 })).toBe('{1-1/2 in|38 mm}');
    const item = atMost('x', us(1 / 16), { us: 1 / 16, metric: 2 }, cite);
    expect(item).toEqual({
      item: 'x',
      verdict: 'pass',
      reading: '1/16 in',
      limit: 'at most {1/16 in|2 mm}',
      cite,
    });
    // The figure of the other system is not converted: 1/16 in are 1.59 mm.
    expect(atMost('x', metric(2), { us: 1 / 16, metric: 2 }, cite).verdict).toBe('pass');
    expect(atMost('x', metric(2.001), { us: 1 / 16, metric: 2 }, cite).verdict).toBe('fail');
    expect(atMost('x', undefined, { us: 1, metric: 25 }, cite, 'so much').limit).toBe('so much');
  });
  it('is brought into the system of its drawing by 25.4 mm an inch', () => {
    expect(inSystem(us(2), 'us')).toBe(2);
    expect(inSystem(us(2), 'metric')).toBeCloseTo(50.8, 12);
    expect(inSystem(metric(50.8), 'us')).toBeCloseTo(2, 12);
    expect(inSystem(metric(7), 'metric')).toBe(7);
    const share = orShareOf({ us: 1 / 8, metric: 3 }, 0.1, metric(25.4));
    expect(share.us).toBeCloseTo(0.1, 12);
    expect(share.metric).toBeCloseTo(2.54, 12);
    const inch = orShareOf({ us: 1 / 8, metric: 3 }, 0.1, us(1));
    expect(inch.us).toBeCloseTo(0.1, 12);
    expect(inch.metric).toBeCloseTo(2.54, 12);
    expect(orShareOf({ us: 1 / 8, metric: 3 }, 0.1, us(2))).toEqual({ us: 1 / 8, metric: 3 });
  });
  it('belongs to the first row that reaches to it, or to the last', () => {
    const rows = [{ upTo: { us: 1, metric: 25 } }, { upTo: { us: 2, metric: 50 } }];
    const row = (by: ReturnType<typeof us> | ReturnType<typeof metric>) =>
      rows.indexOf(rowOf(rows, by));
    expect([us(1), us(1.01), us(2), us(9)].map(row)).toEqual([0, 1, 1, 1]);
    expect([metric(25), metric(25.1)].map(row)).toEqual([0, 1]);
  });
  it('of a hollow root is what the cover makes good', () => {
    expect(isHollowCovered(metric(1.5875), us(1 / 16))).toBe(true);
    expect(isHollowCovered(us(1 / 16), metric(1.5875))).toBe(true);
    expect(isHollowCovered(us(1 / 16), metric(1.587))).toBe(false);
    expect(isHollowCovered(metric(1.6), us(1 / 16))).toBe(false);
  });
});

describe('undercut', () => {
  const depth = (part: Partial<GaugeReadings>, at: GaugeReadings['undercutDepth']) =>
    one({ ...part, undercutDepth: at }, 'Undercut');
  it('by purpose has its own limit, and says so', () => {
    expect(depth(cyclic, us(0.01))).toMatchObject({
      verdict: 'pass',
      limit: 'at most {0.01 in|0.25 mm}, in primary members across the tension',
    });
    expect(depth(cyclic, us(0.011))?.verdict).toBe('fail');
    expect(depth({ ...cyclic, transverseToTension: 'no' }, us(1 / 32))).toMatchObject({
      verdict: 'pass',
      limit: 'at most {1/32 in|1 mm}',
    });
    expect(depth({ ...cyclic, transverseToTension: 'yes' }, us(1 / 32))?.verdict).toBe('fail');
    expect(depth({ thickness: us(1) }, us(1 / 16))?.verdict).toBe('pass');
    expect(depth({ thickness: us(0.999) }, us(1 / 16))?.verdict).not.toBe('pass');
    expect(depth({ thickness: metric(25) }, metric(2))?.verdict).toBe('pass');
    expect(depth({ ...coupon, thickness: us(2) }, us(1 / 16))?.verdict).toBe('fail');
    expect(depth({}, undefined)?.verdict).toBe('cannot be judged from this');
  });
  it('deeper than 1/32 in in a thin part goes by its places', () => {
    const places = (...rows: [from: number, to: number, deep: number][]) =>
      depthOf(rows.map(([from, to, deep]) => ({ from: us(from), to: us(to), depth: us(deep) })));
    const depthOf = (undercutPlaces: GaugeReadings['undercutPlaces']) =>
      one({ undercutDepth: us(3 / 64), undercutPlaces }, 'Undercut');
    expect(depthOf(undefined)).toMatchObject({
      verdict: 'cannot be judged from this',
      reading: '3/64 in; list the places',
    });
    expect(depthOf([])).toMatchObject({ verdict: 'cannot be judged from this' });
    expect(places([0, 2, 3 / 64])).toMatchObject({
      verdict: 'pass',
      reading: '3/64 in deep, 2 in in the worst 12 in',
    });
    expect(places([0, 2.01, 3 / 64])?.verdict).toBe('fail');
    // A place of 1/32 in and less is no undercut that counts.
    expect(places([0, 2, 3 / 64], [3, 9, 1 / 32])?.verdict).toBe('pass');
    expect(places([0, 2, 3 / 64], [3, 9, 1 / 31])?.verdict).toBe('fail');
    // One place too deep fails, however many are not.
    expect(places([0, 1, 1 / 16])).toMatchObject({
      verdict: 'pass',
      reading: expect.stringContaining('1/16 in deep'),
    });
    expect(places([0, 1, 1 / 15], [3, 3.5, 1 / 40])?.verdict).toBe('fail');
    expect(one({ undercutDepth: us(1 / 15), undercutPlaces: [] }, 'Undercut')?.verdict).toBe(
      'fail',
    );
    expect(one({ undercutDepth: us(1 / 16), undercutPlaces: [] }, 'Undercut')?.verdict).toBe(
      'cannot be judged from this',
    );
    expect(one({ undercutDepth: us(1 / 32), undercutPlaces: [] }, 'Undercut')?.verdict).toBe(
      'pass',
    );
  });
  it('adds up what lies in one window, from either end, once', () => {
    const sum = (length: number, ...rows: [number, number][]) =>
      worstWindow(
        rows.map(([from, to]) => ({ from, to, depth: 1 })),
        length,
      );
    expect(sum(12)).toBe(0);
    expect(sum(12, [0, 1], [11, 13])).toBe(2);
    // The worst window ends where a place ends.
    expect(sum(10, [0, 4], [9, 12])).toBe(5);
    expect(sum(10, [0, 3], [8, 12])).toBe(5);
    expect(sum(12, [0, 2], [2, 4])).toBe(4);
    expect(sum(12, [0, 3], [1, 2])).toBe(3);
    expect(sum(12, [3, 0], [4, 2])).toBe(4);
    expect(sum(2, [0, 9])).toBe(2);
    expect(sum(12, [30, 31], [0, 1], [1.5, 2])).toBe(1.5);
  });
});

describe('a leg and a face', () => {
  const leg = (part: Partial<GaugeReadings>, filletSize: Reading, read: Reading) =>
    one({ ...fillet, ...part, filletSize, leg: read }, 'Leg');
  type Reading = GaugeReadings['leg'];
  it('may fall short in production by a little, over a tenth of the length; on a coupon never', () => {
    expect(leg({}, us(5 / 16), us(5 / 16))?.verdict).toBe('pass');
    expect(leg({}, us(5 / 16), us(3 / 16))).toMatchObject({
      verdict: 'cannot be judged from this',
      reading: '3/16 in',
      limit: 'the size; below it by at most {1/8 in|3 mm} for at most a tenth of the length',
    });
    expect(leg({}, us(5 / 16), us(0.187))?.verdict).toBe('fail');
    expect(leg(coupon, us(5 / 16), us(5 / 16))).toMatchObject({
      verdict: 'pass',
      limit: 'at least the size, 5/16 in',
    });
    expect(leg(coupon, us(5 / 16), us(0.312))?.verdict).toBe('fail');
    expect(leg(coupon, us(5 / 16), metric(7.9375))?.verdict).toBe('pass');
    expect(leg({}, metric(7.9375), us(5 / 16))?.verdict).toBe('pass');
    for (const [size, read] of [
      [undefined, us(1 / 4)],
      [us(1 / 4), undefined],
    ] as const)
      expect(leg({}, size, read)).toMatchObject({
        verdict: 'cannot be judged from this',
        reading: 'not read',
        limit: 'the size on the drawing',
      });
  });
  it('bulges by the width of the face (AWS D1.1 weld profiles, from memory)', () => {
    const face = (faceWidth: Reading, convexity: Reading) =>
      one({ ...fillet, faceWidth, convexity }, 'Convexity');
    expect(face(us(5 / 16), us(1 / 16))?.verdict).toBe('pass');
    expect(face(us(0.32), us(1 / 8))?.verdict).toBe('pass');
    expect(face(us(5 / 16), us(1 / 8))?.verdict).toBe('fail');
    expect(face(undefined, us(0))).toMatchObject({
      verdict: 'cannot be judged from this',
      limit: 'by the width of the face',
    });
    expect(face(metric(25), metric(5))).toMatchObject({
      verdict: 'pass',
      limit: 'at most {3/16 in|5 mm}',
    });
  });
});

it('a cover on a coupon rises 1/8 in on any plate; in production more on a thick one', () => {
  const cover = (part: Partial<GaugeReadings>) =>
    one({ thickness: us(1.5), reinforcement: us(3 / 16), ...part }, 'Height of the cover pass');
  expect(cover({})?.verdict).toBe('pass');
  expect(cover(coupon)?.verdict).toBe('fail');
  expect(cover({ ...coupon, reinforcement: us(1 / 8) })?.verdict).toBe('pass');
  expect(one({ ...fillet, misalignment: us(0) }, 'Misalignment')).toBeUndefined();
});

describe('pores', () => {
  it('under cyclic load are counted: one in 4 in, none larger than 3/32 in (from memory)', () => {
    const counted = (poreCount: number | undefined, part: Partial<GaugeReadings> = {}) =>
      one({ ...cyclic, ...part, poreCount }, 'Pores counted');
    expect(counted(0)).toMatchObject({ verdict: 'pass', reading: '0' });
    expect(counted(1)).toMatchObject({
      verdict: 'pass',
      reading: '1',
      limit: 'at most one in any {4 in|100 mm} of weld',
    });
    expect(counted(2)?.verdict).toBe('fail');
    expect(counted(undefined)).toMatchObject({ verdict: 'cannot be judged from this' });
    expect(counted(1, fillet)?.limit).toContain('the fillet of a stiffener');
    expect(one({ ...cyclic, largestPore: us(3 / 32) }, 'Largest pore')?.verdict).toBe('pass');
    expect(one({ ...cyclic, largestPore: us(0.094) }, 'Largest pore')?.verdict).toBe('fail');
  });
});

describe('the back of an open root', () => {
  const hollow = (part: Partial<GaugeReadings>) => one({ ...open, ...part }, 'Root concavity');
  it('may be hollow by 1/16 in where the cover makes it good', () => {
    expect(hollow({ rootConcavity: us(1 / 32) })).toMatchObject({
      verdict: 'cannot be judged from this',
      reading: '1/32 in; read the cover pass too',
    });
    expect(hollow({ rootConcavity: us(0) })?.verdict).toBe('pass');
    expect(hollow({ rootConcavity: us(1 / 32), reinforcement: us(1 / 32) })?.verdict).toBe('pass');
    expect(hollow({ rootConcavity: us(1 / 32), reinforcement: us(1 / 64) })?.verdict).toBe('fail');
    expect(hollow({ rootConcavity: us(1 / 8), reinforcement: us(1 / 4) })?.verdict).toBe('fail');
    expect(hollow({ rootConcavity: us(1 / 8) })).toMatchObject({ verdict: 'fail' });
    expect(hollow({})).toMatchObject({
      verdict: 'cannot be judged from this',
      reading: 'not read',
    });
  });
  it('in pipework may be hollow as deep as the cover is high', () => {
    const pipe = { code: 'ASME B31.3' } as const;
    expect(hollow({ ...pipe, rootConcavity: us(1 / 8), reinforcement: us(1 / 8) })?.verdict).toBe(
      'pass',
    );
    expect(hollow({ ...pipe, rootConcavity: us(1 / 8), reinforcement: us(0.12) })?.verdict).toBe(
      'fail',
    );
    for (const part of [{ rootConcavity: us(1 / 8) }, { reinforcement: us(1 / 8) }])
      expect(hollow({ ...pipe, ...part })?.verdict).toBe('cannot be judged from this');
  });
});

describe('the openings of a bent strap (AWS D1.1 2015 4.9.3.3, ASME IX 2010 QW-163, read)', () => {
  const opening = (
    size: Opening['size'],
    place: Opening['place'] = 'face',
    cause: Opening['cause'] = 'none seen',
  ): Opening => ({ size, place, cause });
  const slag = 'slag or incomplete fusion';
  const rows = (...all: Opening[]) =>
    itemsD11(all).map(({ verdict, reading }) => `${verdict}: ${reading}`);
  it('are told item by item, with their limits', () => {
    expect(itemsD11([]).map(({ item, limit }) => `${item}: ${limit}`)).toEqual([
      'Largest opening: no longer than {1/8 in|3 mm}',
      'Openings added up: those longer than {1/32 in|1 mm}, up to {1/8 in|3 mm}, add up to at most {3/8 in|10 mm}',
      'Corner crack without a flaw in it: no longer than {1/4 in|6 mm}',
    ]);
    expect(itemsIX([]).map(({ item, limit }) => `${item}: ${limit}`)).toEqual([
      'Largest opening: no longer than {1/8 in|3 mm}',
      'Corner crack without a flaw in it: not counted',
    ]);
    expect(rows()).toEqual(['pass: none', 'pass: none', 'pass: none']);
    expect(itemsIX([opening(us(1), 'corner')])).toMatchObject([
      { verdict: 'pass', reading: 'none' },
      { verdict: 'pass', reading: '1 in' },
    ]);
  });
  it('count at the corner like any other where a flaw is in them', () => {
    expect(rows(opening(us(0.26)))).toEqual(['fail: 0.26 in', 'pass: none', 'pass: none']);
    // The last bits of a reading are no finding.
    expect(rows(opening(us((1 / 8) * (1 + 5e-10))))[0]).toMatch(/^pass/);
    expect(rows(opening(us((1 / 8) * (1 + 1e-6))))[0]).toMatch(/^fail/);
    expect(rows(opening(us(1 / 4), 'corner'))).toEqual([
      'pass: none',
      'pass: none',
      'pass: 1/4 in',
    ]);
    expect(rows(opening(us(0.26), 'corner'))[2]).toBe('bend another strap: 0.26 in');
    expect(rows(opening(us(1 / 4), 'corner', slag))).toEqual([
      'fail: 1/4 in',
      'pass: none',
      'pass: none',
    ]);
    expect(rows(opening(us(1 / 4), 'face', slag))[0]).toBe('fail: 1/4 in');
  });
  it('are added up in their own system, in inches where both are there', () => {
    expect(
      rows(opening(metric(3)), opening(metric(3)), opening(metric(3)), opening(metric(1)))[1],
    ).toBe('pass: 9 mm');
    const four = [3, 3, 3, 1.01].map((size) => opening(metric(size)));
    expect(rows(...four)[1]).toBe('fail: 10.01 mm');
    // Three of 1/8 in are the whole 3/8 in; 2.5 mm and three of 2.35 mm, 9.55, are more than 3/8 in, 9.525.
    const three = Array.from({ length: 3 }, () => opening(us(1 / 8)));
    expect(rows(...three)[1]).toBe('pass: 3/8 in');
    expect(rows(...three, opening(metric(1)))[1]).toBe('pass: 3/8 in');
    expect(rows(...three, opening(metric(1.01)))[1]).toMatch(/^fail: 0\.41/);
  });
  it('are told by the largest, in the system it was read in, the first of equals', () => {
    expect(rows(opening(us(1 / 16)), opening(metric(2)))[0]).toBe('pass: 2 mm');
    expect(rows(opening(metric(1.5)), opening(us(1 / 16)))[0]).toBe('pass: 1/16 in');
    expect(rows(opening(us(1)), opening(metric(25.4)))[0]).toBe('fail: 1 in');
    expect(rows(opening(metric(25.4)), opening(us(1)))[0]).toBe('fail: 25.4 mm');
  });
});

describe('a reading beside the range of a procedure', () => {
  it('is inside at both ends, and needs but one of them', () => {
    const range = (reading: number | undefined, from?: number, to?: number) =>
      insideRange(reading, from, to, 'volts');
    expect([
      range(90, 90, 130),
      range(130, 90, 130),
      range(89.9, 90, 130),
      range(130.1, 90, 130),
    ]).toEqual(['yes', 'yes', 'no, too low', 'no, too high']);
    expect([
      range(89, 90),
      range(200, 90),
      range(131, undefined, 130),
      range(1, undefined, 130),
    ]).toEqual(['no, too low', 'yes', 'no, too high', 'yes']);
    expect([range(undefined, 90, 130), range(100)]).toEqual(['not checked', 'not checked']);
    // The last bits of a converted reading are no finding, on either side of nothing.
    expect([range(90 - 1e-8, 90), range(90 - 1e-6, 90)]).toEqual(['yes', 'no, too low']);
    expect([range(130 + 1e-8, undefined, 130), range(130 + 1e-6, undefined, 130)]).toEqual([
      'yes',
      'no, too high',
    ]);
    expect([range(-20 - 1e-8, -20), range(-20 + 1e-6, undefined, -20)]).toEqual([
      'yes',
      'no, too high',
    ]);
    expect([range(5, 5, 5)]).toEqual(['yes']);
    expect(() => range(100, 130, 90)).toThrow('The range ends below its start');
    expect(() => range(undefined, 130, 90)).toThrow('The range ends below its start');
  });
});
