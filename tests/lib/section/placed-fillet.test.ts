/** From marks to readings: the sample's truth, and a sentence for everything that is missing. */
import { describe, expect, it } from 'vitest';
import { drawnFillet, filletLines } from '../../../lib/section/fillet-lines.ts';
import { planeMap } from '../../../lib/section/picture-plane.ts';
import { filletMarks, placedFillet } from '../../../lib/section/placed-fillet.ts';
import type { TypedScale } from '../../../lib/section/placed-plane.ts';
import {
  filletPicture,
  filletSampleLength,
  filletSampleMarks,
  filletTruth,
} from '../../../lib/section/sample-fillet.ts';
import { scaleBar } from '../../../lib/section/scale-bar.ts';
import { noMarks, type Placed } from '../../../lib/section/section-marks.ts';
import { areaOf } from '../geometry/polygon-oracle.ts';

const typed: TypedScale = {
  by: 'distance',
  length: filletSampleLength,
  width: 25,
  height: 20,
  lengthError: 0.1,
};
const sample: Placed = { ...noMarks, ...filletSampleMarks };
const missing = (placed: Placed, more: Partial<TypedScale> = {}) => {
  const found = placedFillet(placed, { ...typed, ...more }, 2);
  return 'missing' in found ? found.missing : undefined;
};

describe('the sample', () => {
  it('is read as what is true of it', () => {
    const measured = placedFillet(sample, typed, 2);
    if ('missing' in measured) throw new Error(measured.missing);
    for (const [name, truth] of Object.entries(filletTruth)) {
      const { value, uncertainty } = measured.found[name as keyof typeof filletTruth] ?? {};
      expect(Math.abs((value ?? 0) - truth), name).toBeLessThan(0.2 * (uncertainty ?? 0));
    }
  });

  it('has the areas that a polygon library finds in its outlines', () => {
    const { root, toeA, toeB, face, fusion } = filletPicture;
    const square = 40 ** 2;
    expect(areaOf([root, toeA, ...face, toeB]) / square).toBeCloseTo(filletTruth.depositArea, 1);
    expect(areaOf([root, toeA, ...fusion, toeB]) / square).toBeCloseTo(filletTruth.meltedArea, 1);
  });
});

describe('placedFillet', () => {
  it.each([
    ['nothing', noMarks, {}, /known distance/],
    ['no corners', noMarks, { by: 'rectangle' }, /four corners/],
    ['no length', sample, { length: undefined }, /distance between/],
    ['no give or take', sample, { lengthError: undefined }, /may be off/],
    [
      'ends in one place',
      {
        ...sample,
        ends: [
          [5, 5],
          [5, 5],
        ],
      },
      {},
      /are one/,
    ],
    [
      'no sides of the rectangle',
      {
        ...sample,
        corners: [
          [0, 0],
          [9, 0],
          [9, 9],
          [0, 9],
        ],
      },
      { by: 'rectangle', width: undefined },
      /both sides of the rectangle/,
    ],
    ['no toe', { ...sample, toeB: [] }, {}, /root and both toes/],
    ['toes at the root', { ...sample, toeA: sample.root }, {}, /too close/],
    [
      'a root between the toes',
      { ...sample, root: [[604, 368]], plateA: [], plateB: [] },
      {},
      /20° to 170°/,
    ],
    [
      'a fusion line away from the root',
      {
        ...sample,
        root: [[0, 0]],
        toeA: [[400, 0]],
        toeB: [[0, 400]],
        plateA: [
          [0, 0],
          [9, 100],
        ],
        plateB: [
          [0, 0],
          [-100, 18],
        ],
        fusion: [
          [350, 10],
          [300, 20],
          [200, 60],
          [100, 100],
          [50, 250],
        ],
      },
      {},
      /does not pass the root/,
    ],
    [
      'crossed corners',
      {
        ...sample,
        corners: [
          [0, 0],
          [9, 9],
          [9, 0],
          [0, 9],
        ],
      },
      { by: 'rectangle' },
      /No rectangle/,
    ],
  ] as [string, Placed, Partial<TypedScale>, RegExp][])(
    'says what is missing: %s',
    (_, placed, more, text) => {
      expect(missing(placed, more)).toMatch(text);
    },
  );

  it('counts a curve only from its least number of marks', () => {
    const two = { ...sample, face: sample.face.slice(0, 2), fusion: sample.fusion.slice(0, 4) };
    const measured = placedFillet(two, typed, 2);
    expect('found' in measured && Object.keys(measured.found)).not.toContain('rise');
    expect('found' in measured && Object.keys(measured.found)).not.toContain('penetration');
  });
});

describe('filletLines and scaleBar', () => {
  const measured = placedFillet(sample, typed, 2);
  const map = 'plane' in measured ? planeMap(measured.plane) : undefined;

  it('draw a throat that is as long as the one that was measured, before the hollow is taken off', () => {
    const lines =
      map &&
      filletLines(
        {
          ...sample,
          root: sample.root[0] ?? [0, 0],
          toeA: sample.toeA[0] ?? [0, 0],
          toeB: sample.toeB[0] ?? [0, 0],
        },
        map,
      );
    const [from, to] = lines?.throat ?? [];
    expect(
      Math.hypot((to?.[0] ?? 0) - (from?.[0] ?? 0), (to?.[1] ?? 0) - (from?.[1] ?? 0)) / 40,
    ).toBeCloseTo(filletTruth.throat, 6);
  });

  it('are labeled with readings that there are', () => {
    const marks = filletMarks(sample);
    const lines = marks && map && filletLines(marks, map);
    const names = 'found' in measured ? Object.keys(measured.found) : [];
    for (const { reading } of lines ? drawnFillet(lines).labels : [])
      expect(names).toContain(reading);
    expect(lines && drawnFillet(lines).areas.map(({ of }) => of)).toEqual(['deposit', 'melted']);
  });

  it('draw a bar of a round length that fits', () => {
    const bar = map && scaleBar(map, filletPicture, [1, 2, 5, 10]);
    expect(bar?.length).toBe(5);
    expect((bar?.ends[1][0] ?? 0) - (bar?.ends[0][0] ?? 0)).toBeCloseTo(200, 6);
    expect(map && scaleBar(map, filletPicture, [100])).toBeUndefined();
  });
});

describe('a mark that cannot be measured', () => {
  const bare: Placed = {
    ...noMarks,
    ends: filletSampleMarks.ends,
    root: [[0, 0]],
    toeA: [[400, 0]],
    toeB: [[-300, 400]],
  };
  const none = /make no fillet/;
  it('makes a leg that lies across its plate, or a face that reaches back to the root', () => {
    expect(missing(bare)).toBeUndefined();
    const upright: Placed['plateA'] = [
      [0, 500],
      [0, 900],
    ];
    expect(missing({ ...bare, plateA: upright })).toMatch(none);
    expect(
      missing({
        ...bare,
        toeB: [[0, 400]],
        plateA: [
          [500, 200],
          [1000, 400],
        ],
        plateB: [
          [-500, 0],
          [-900, 0],
        ],
      }),
    ).toMatch(none);
    const hollow: Placed['face'] = [
      [200, 20],
      [20, 10],
      [-10, 200],
    ];
    expect(missing({ ...bare, toeB: [[0, 400]], face: hollow })).toBeUndefined();
    const through = hollow.map(([x, y]): [number, number] => [x - 60, y - 60]);
    expect(missing({ ...bare, toeB: [[0, 400]], face: through })).toMatch(none);
  });

  it('stands no nearer than four marking errors', () => {
    const close = (apart: number) =>
      missing({ ...bare, toeA: [[apart, 0]], toeB: [[0, 400]] })?.includes('too close');
    expect([close(7.9), close(8), close(8.1)]).toEqual([true, true, undefined]);
    expect(missing({ ...bare, toeB: [[0, 8]] })).toMatch(/too close/);
    expect(missing({ ...bare, toeA: [[400, 0]], toeB: [[400, 8]] })).toMatch(/too close/);
  });

  it('lies in plates that meet at 20° to 170°', () => {
    const at = (degrees: number) => {
      const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      return missing({ ...bare, toeB: [[400 * cos, 400 * sin]] });
    };
    expect([20.1, 90, 169.9].map(at)).toEqual([undefined, undefined, undefined]);
    for (const degrees of [15, 19.9, 170.1, 179])
      expect(at(degrees)).toMatch(/meet at 20° to 170°/);
  });

  it('lies this side of the horizon of a tilted picture', () => {
    // The sides of this rectangle meet at a height of 200: beyond it lies nothing of the plane.
    const tilted: Placed = {
      ...bare,
      corners: [
        [400, 400],
        [600, 400],
        [700, 600],
        [300, 600],
      ],
      root: [[400, 550]],
      toeA: [[600, 550]],
      toeB: [[400, 420]],
    };
    expect(missing(tilted, { by: 'rectangle' })).toBeUndefined();
    expect(missing({ ...tilted, toeB: [[400, 150]] }, { by: 'rectangle' })).toMatch(
      /no place for it/,
    );
  });

  it('is missing while root or a toe is, and without either side of the rectangle', () => {
    for (const name of ['root', 'toeA', 'toeB'] as const) {
      expect(filletMarks({ ...bare, [name]: [] })).toBeUndefined();
      expect(missing({ ...bare, [name]: [] })).toBe('Mark the root and both toes.');
    }
    const corners: Placed['corners'] = [
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ];
    for (const side of ['width', 'height'] as const)
      expect(missing({ ...bare, corners }, { by: 'rectangle', [side]: undefined })).toMatch(
        /both sides/,
      );
  });
});

it('takes the most that a length may be off for two standard errors', () => {
  const measured = placedFillet(sample, { ...typed, lengthError: 0.3 }, 2);
  expect('plane' in measured && measured.plane).toMatchObject({
    by: 'distance',
    length: filletSampleLength,
    lengthError: 0.15,
  });
});

it('names every curve by its own marks', () => {
  const of = (x: number, count: number) =>
    Array.from({ length: count }, (_, i): [number, number] => [x, i]);
  const placed: Placed = {
    ...sample,
    face: of(1, 3),
    fusion: of(2, 5),
    plateA: of(3, 2),
    plateB: of(4, 2),
    undercutA: of(5, 1),
    undercutB: of(6, 1),
  };
  const { root, toeA, toeB, ...curves } = placed;
  expect(filletMarks(placed)).toEqual({
    root: root[0],
    toeA: toeA[0],
    toeB: toeB[0],
    face: curves.face,
    fusion: curves.fusion,
    plateA: curves.plateA,
    plateB: curves.plateB,
    undercutA: curves.undercutA,
    undercutB: curves.undercutB,
  });
});
