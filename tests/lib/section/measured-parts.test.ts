/** How readings follow the scale, what is judged at a limit, and how many marks there are of each kind. */
import { describe, expect, it } from 'vitest';
import type { FilletMarks } from '../../../lib/geometry/etched-fillet.ts';
import { filletItems } from '../../../lib/section/fillet-verdicts.ts';
import { grooveReadings } from '../../../lib/section/groove-readings.ts';
import { coverage } from '../../../lib/section/measured.ts';
import { measuredFillet } from '../../../lib/section/measured-fillet.ts';
import { measuredOnPicture } from '../../../lib/section/measured-on-picture.ts';
import { printMeasured } from '../../../lib/section/measured-text.ts';
import type { MeasuredGroove } from '../../../lib/section/picture-groove.ts';
import {
  type PicturePlane,
  planeFrom,
  planeMap,
  planeNumbers,
} from '../../../lib/section/picture-plane.ts';
import {
  atMost,
  judged,
  never,
  notBelowZero,
  stated,
  text,
} from '../../../lib/section/section-item.ts';
import {
  isPlaced,
  type MarkName,
  markCounts,
  markNames,
  noMarks,
  withMark,
  withMovedMark,
  withoutMark,
} from '../../../lib/section/section-marks.ts';

const marks: FilletMarks = {
  root: [0, 0],
  toeA: [80, 0],
  toeB: [0, 60],
  face: [
    [58, 18],
    [40, 33],
    [18, 48],
  ],
  fusion: [
    [60, -6],
    [20, -8],
    [-6, -6],
    [-8, 20],
    [-6, 45],
  ],
  plateA: [
    [90, 0],
    [130, 0],
  ],
  plateB: [
    [0, 70],
    [0, 110],
  ],
  undercutA: [[82, -3]],
  undercutB: [[-3, 62]],
};
const areas = ['depositArea', 'meltedArea'];
const ratios = ['angle', 'dilution'];

describe('measuredFillet', () => {
  const at = (scale: number, scaleError: number, markingError: number) =>
    measuredFillet(marks, { scale, scaleError, markingError });
  const names = Object.keys(at(1, 0, 0)) as (keyof ReturnType<typeof at>)[];
  const power = (name: string) => (areas.includes(name) ? 2 : ratios.includes(name) ? 0 : 1);

  it('reads all sixteen, lengths with the scale and areas with its square', () => {
    expect(names).toHaveLength(16);
    const [one, third] = [at(1, 0, 1), at(1 / 3, 0, 1)];
    for (const name of names) {
      const factor = 3 ** -power(name);
      expect(third[name]?.value, name).toBeCloseTo((one[name]?.value ?? 0) * factor, 9);
      expect(third[name]?.uncertainty, name).toBeCloseTo((one[name]?.uncertainty ?? 0) * factor, 9);
    }
    expect(one.legA.value).toBeCloseTo(80, 9);
    expect(one.legB.value).toBeCloseTo(60, 9);
    expect(one.angle.value).toBeCloseTo(90, 9);
    expect(one.faceWidth.value).toBeCloseTo(100, 9);
  });

  it('doubts a length as its scale is doubted, an area twice as much, an angle not at all', () => {
    const found = at(0.1, 0.01, 0);
    for (const name of names) {
      const { value, uncertainty } = found[name] ?? { value: 0, uncertainty: 0 };
      expect(uncertainty, name).toBeCloseTo(coverage * 0.01 * power(name) * Math.abs(value), 9);
    }
  });

  it('adds both doubts at right angles (GUM, uncorrelated inputs; from memory)', () => {
    const [scale, hand, both] = [at(0.1, 0.02, 0), at(0.1, 0, 2), at(0.1, 0.02, 2)];
    for (const name of names)
      expect(both[name]?.uncertainty, name).toBeCloseTo(
        Math.hypot(scale[name]?.uncertainty ?? 0, hand[name]?.uncertainty ?? 0),
        9,
      );
  });
});

describe('the plane of a picture', () => {
  const byEnds: PicturePlane = {
    by: 'distance',
    ends: [
      [1, 2],
      [31, 42],
    ],
    length: 10,
    lengthError: 0.3,
  };
  const byCorners: PicturePlane = {
    by: 'rectangle',
    corners: [
      [0, 0],
      [40, 1],
      [41, 30],
      [1, 31],
    ],
    width: 20,
    height: 15,
    lengthError: 0.2,
  };

  it('is as many numbers as its points and lengths, each with its own error', () => {
    expect(planeNumbers(byEnds, 2)).toEqual({
      values: [1, 2, 31, 42, 10],
      errors: [2, 2, 2, 2, 0.3],
    });
    expect(planeNumbers(byCorners, 2)).toEqual({
      values: [0, 0, 40, 1, 41, 30, 1, 31, 20, 15],
      errors: [2, 2, 2, 2, 2, 2, 2, 2, 0.2, 0.2],
    });
    for (const plane of [byEnds, byCorners])
      expect(planeFrom(plane, planeNumbers(plane, 2).values)).toEqual(plane);
  });

  it('by a distance is one scale both ways', () => {
    expect(planeMap(byEnds)).toEqual([
      [0.2, 0, 0],
      [0, 0.2, 0],
      [0, 0, 1],
    ]);
    expect(
      planeMap({
        ...byEnds,
        ends: [
          [1, 2],
          [1, 2],
        ],
      }),
    ).toBeUndefined();
  });

  it('that sets no scale, or has no place for a mark, reads nothing', () => {
    const read = ({ place }: { place: readonly (readonly [number, number])[] }) => ({
      x: place[0]?.[0] ?? 0,
    });
    const place = [[31, 42]] as const;
    const found = measuredOnPicture({ place }, byEnds, 0, read);
    expect(found?.x.value).toBeCloseTo(31 * 0.2, 12);
    const one: PicturePlane = {
      ...byEnds,
      ends: [
        [1, 2],
        [1, 2],
      ],
    };
    expect(measuredOnPicture({ place }, one, 1, read)).toBeUndefined();
    const tilted: PicturePlane = {
      ...byCorners,
      corners: [
        [0, 0],
        [40, 10],
        [40, 20],
        [0, 30],
      ],
    };
    expect(measuredOnPicture({ place: [[500, 15]] }, tilted, 0, read)).toBeUndefined();
    expect(measuredOnPicture({ place: [[20, 15]] }, tilted, 0, read)).toBeDefined();
  });
});

describe('one reading against one limit', () => {
  const cite = { source: 'geometry', known: 'derived' } as const;

  it('is judged by all that it may be; the last bits of a number are no finding', () => {
    expect(judged({ value: 3, uncertainty: 0 }, 3 + 2e-9, 'at least')).toBe('pass');
    expect(judged({ value: 0, uncertainty: 0 }, 0.9e-9, 'at least')).toBe('pass');
    expect(judged({ value: 0, uncertainty: 0 }, 1.5e-9, 'at least')).toBe('fail');
    expect(judged({ value: -3, uncertainty: 0 }, -3 + 2e-9, 'at least')).toBe('pass');
    expect(judged({ value: 3, uncertainty: 0.5 }, 3.5, 'at least')).toBe('too close to tell');
    expect(judged({ value: 3, uncertainty: 0.5 }, 2.5, 'at most')).toBe('too close to tell');
    expect(judged({ value: 3, uncertainty: 0.5 }, 3.5, 'at most')).toBe('pass');
    expect(judged({ value: 3, uncertainty: 0.5 }, 2.49, 'at most')).toBe('fail');
  });

  it('that cannot be below none keeps the doubt that reaches above it', () => {
    expect(notBelowZero({ value: -0.2, uncertainty: 0.5 })).toEqual({ value: 0, uncertainty: 0.3 });
    expect(notBelowZero({ value: -0.6, uncertainty: 0.5 })).toEqual({ value: 0, uncertainty: 0 });
    expect(notBelowZero({ value: 0.2, uncertainty: 0.5 })).toEqual({
      value: 0.2,
      uncertainty: 0.5,
    });
    expect(text({ value: 0, uncertainty: 0 }, 'metric')).toBe('none');
    expect(text({ value: 0, uncertainty: 0.3 }, 'metric')).not.toBe('none');
    expect(text({ value: 1, uncertainty: 0 }, 'metric')).toBe(
      printMeasured({ value: 1, uncertainty: 0 }, 'mm', 'metric'),
    );
  });

  it('says its limit in both systems, and what was seen', () => {
    const limit = { us: 1 / 8, metric: 3 };
    expect(atMost({ system: 'us' }, 'Cap', undefined, limit, cite)).toEqual({
      item: 'Cap',
      verdict: 'not judged',
      reading: '–',
      limit: 'at most {1/8 in|3 mm}',
      cite,
    });
    const between = { value: 3.1, uncertainty: 0 };
    expect(atMost({ system: 'us' }, 'Cap', between, limit, cite).verdict).toBe('pass');
    expect(atMost({ system: 'metric' }, 'Cap', between, limit, cite).verdict).toBe('fail');
    expect(never('Cracks', undefined, cite)).toMatchObject({ verdict: 'not judged', reading: '–' });
    expect(never('Cracks', 'seen', cite)).toMatchObject({ verdict: 'fail', reading: 'seen' });
    expect(stated({ value: 5 / 16, system: 'us' })).toBe('{5/16 in}');
    expect(stated({ value: 8, system: 'metric' })).toBe('{8 mm}');
  });

  it('of a throat applies where the angle may lie between 80° and 100°', () => {
    const of = (value: number) => {
      const one = { value: 9, uncertainty: 0 };
      const angle = { value, uncertainty: 2 };
      const found = { legA: one, legB: one, angle, faceWidth: one, throat: one };
      return filletItems({
        code: 'AWS D1.1',
        system: 'us',
        size: { value: 5 / 16, system: 'us' },
        found: found as unknown as Parameters<typeof filletItems>[0]['found'],
        cracks: undefined,
        unfused: undefined,
      }).find(({ item }) => item === 'Throat that counts')?.verdict;
    };
    expect([77.9, 78, 102, 102.1].map(of)).toEqual([
      'does not apply',
      'pass',
      'pass',
      'does not apply',
    ]);
  });
});

describe('marks', () => {
  const ones: MarkName[] = ['root', 'toeA', 'toeB', 'rootA', 'rootB', 'undercutA', 'undercutB'];

  it('are one of a point, two to six of a face, and a curve’s as many as it takes to bend', () => {
    for (const name of ones) expect(markCounts[name]).toEqual({ least: 1, most: 1 });
    for (const name of ['plateA', 'plateB', 'backA', 'backB'] as const)
      expect(markCounts[name]).toEqual({ least: 2, most: 6 });
    // A line through two points is the least; a land makes a third; a strip may be marked from both ends.
    for (const name of ['edgeA', 'edgeB'] as const) expect(markCounts[name].least).toBe(2);
    expect(markCounts.ends).toEqual({ least: 2, most: 2 });
    expect(markCounts.corners).toEqual({ least: 4, most: 4 });
    expect(markCounts.rootBead.least).toBe(1);
    expect(markCounts.passes.least).toBe(1);
    for (const name of ['face', 'fusionA', 'fusionB'] as const)
      expect(markCounts[name].least).toBe(3);
    expect(markCounts.fusion.least).toBe(5);
  });

  it.each(markNames)(
    'of the kind %s count from their least, and there is room to their most',
    (name) => {
      const { least, most } = markCounts[name];
      let placed = noMarks;
      for (let i = 1; i <= most; i++) {
        ({ placed } = withMark(placed, name, [10 * i, 0]));
        expect(placed[name]).toHaveLength(i);
        expect(isPlaced(placed, name)).toBe(i >= least);
      }
      expect(withMark(placed, name, [0, 0]).placed[name]).toHaveLength(most);
    },
  );

  it('are moved and taken away one at a time', () => {
    const placed = {
      ...noMarks,
      passes: [
        [1, 1],
        [2, 2],
        [3, 3],
      ] as const,
    };
    expect(withoutMark(placed, 'passes', 1).passes).toEqual([
      [1, 1],
      [3, 3],
    ]);
    expect(withMovedMark(placed, 'passes', 1, [9, 9]).passes).toEqual([
      [1, 1],
      [9, 9],
      [3, 3],
    ]);
    expect(withMark(placed, 'passes', [4, 4])).toMatchObject({ at: 3 });
  });

  it('of a curve wait for their order until both of its ends stand', () => {
    const face = [
      [20, 80],
      [80, 20],
    ] as const;
    const oneEnd = { ...noMarks, toeA: [[100, 0]] as const, face };
    expect(withMark(oneEnd, 'face', [50, 50]).at).toBe(2);
  });
});

describe('grooveReadings', () => {
  const one = { value: 1, uncertainty: 0.1 };
  const order = [
    'capWidth',
    'capHeight',
    'underfill',
    'rootWidth',
    'rootHeight',
    'rootHollow',
    'thickness',
    'throat',
    'wholeThickness',
    'unfusedA',
    'unfusedB',
    'sidewallA',
    'sidewallMostA',
    'sidewallB',
    'sidewallMostB',
    'undercutA',
    'undercutB',
    'weldArea',
    'depositArea',
    'meltedArea',
    'dilution',
  ] as const;
  const found = Object.fromEntries(order.map((name) => [name, one])) as unknown as MeasuredGroove;

  it('are all shown, cap before root and sizes before areas; a strip hides the hollow', () => {
    expect(grooveReadings(found, false).map(({ name }) => name)).toEqual(order);
    expect(grooveReadings(found, true).map(({ name }) => name)).toEqual(
      order.filter((name) => name !== 'rootHollow'),
    );
    const units = Object.fromEntries(grooveReadings(found, false).map((it) => [it.name, it.unit]));
    for (const name of order)
      expect(units[name]).toBe(name === 'dilution' ? 'percent' : /Area$/.test(name) ? 'mm2' : 'mm');
  });

  it('are none, not below none, where there cannot be less', () => {
    const below = Object.fromEntries(
      order.map((name) => [name, { value: -1, uncertainty: 0.1 }]),
    ) as unknown as MeasuredGroove;
    const none = grooveReadings(below, false)
      .filter(({ value }) => value === 0)
      .map(({ name }) => name);
    expect(none).toEqual([
      'capHeight',
      'underfill',
      'rootHeight',
      'rootHollow',
      'unfusedA',
      'unfusedB',
      'undercutA',
      'undercutB',
    ]);
  });
});
