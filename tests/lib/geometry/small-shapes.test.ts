/** Areas, faces, axes and doubts against plain sums: the midpoint rule, right triangles, straight-line readings. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FilletMarks, readFillet } from '../../../lib/geometry/etched-fillet.ts';
import { filletUncertainty } from '../../../lib/geometry/fillet-uncertainty.ts';
import { areaUnder, faceHeight, facePoints } from '../../../lib/geometry/layer-face.ts';
import {
  distanceToCurve,
  inOrder,
  keptWhere,
  mainAxis,
  middleOf,
  straight,
} from '../../../lib/geometry/marked-lines.ts';
import { type Point, signedArea } from '../../../lib/geometry/outline.ts';
import { propagated } from '../../../lib/geometry/propagated.ts';

const numbers = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe('signedArea', () => {
  it('is above none counterclockwise, below none clockwise, and none of nothing', () => {
    const corners: Point[] = [
      [1, 1],
      [5, 1],
      [5, 4],
      [1, 4],
    ];
    expect(signedArea(corners)).toBe(12);
    expect(signedArea(corners.toReversed())).toBe(-12);
    expect(signedArea(corners.slice(0, 3))).toBe(6);
    expect(signedArea(corners.slice(0, 2))).toBe(0);
    expect(signedArea([])).toBe(0);
  });
});

describe('the face of a layer', () => {
  it('stands at its toes, rises by its crown in the middle, and has the area of the midpoint rule', () => {
    fc.assert(
      fc.property(
        numbers(0.5, 9),
        numbers(0, 9),
        numbers(-1, 3),
        numbers(-1, 1),
        (halfWidth, height, crown, share) => {
          const face = { halfWidth, height, crown };
          for (const toe of [-halfWidth, halfWidth])
            expect(faceHeight(face, toe)).toBeCloseTo(height, 9);
          expect(faceHeight(face, 0)).toBeCloseTo(height + crown, 9);
          const to = share * halfWidth;
          const step = (to + halfWidth) / 2000;
          let sum = 0;
          for (let i = 0; i < 2000; i++)
            sum += faceHeight(face, -halfWidth + (i + 0.5) * step) * step;
          expect(areaUnder(face, to)).toBeCloseTo(sum, 4);
        },
      ),
      { numRuns: 25 },
    );
    expect(faceHeight({ halfWidth: 0, height: 3, crown: 1 }, 0)).toBe(3);
    expect(areaUnder({ halfWidth: 0, height: 3, crown: 1 }, 0)).toBe(0);
  });

  it('is drawn by 32 chords across, of which each corner lies on it, and by one where it is flat', () => {
    const face = { halfWidth: 4, height: 2, crown: 1 };
    const whole = facePoints(face, -4, 4);
    expect(whole).toHaveLength(33);
    for (const [place, [x, y]] of whole.entries()) {
      expect(x).toBeCloseTo(-4 + place / 4, 12);
      expect(y).toBeCloseTo(faceHeight(face, x), 12);
    }
    expect(facePoints(face, -4, 0).map(([x]) => x)).toEqual(whole.slice(0, 17).map(([x]) => x));
    expect(facePoints({ ...face, crown: 0 }, -4, 4)).toEqual([
      [-4, 2],
      [4, 2],
    ]);
    expect(facePoints(face, 1, 1)).toEqual([[1, faceHeight(face, 1)]]);
  });
});

describe('straight things through marks', () => {
  it('lie along a line whose points were marked, wherever it runs', () => {
    for (let turn = 0; turn < 180; turn += 15) {
      const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
      const points = [-3, 1, 2, 8].map((along): Point => [5 + along * cos, -2 + along * sin]);
      const [x, y] = mainAxis(points);
      expect(Math.abs(x * sin - y * cos)).toBeLessThan(1e-9);
      expect(Math.hypot(x, y)).toBeCloseTo(1, 12);
      expect(middleOf(points)[0]).toBeCloseTo(5 + 2 * cos, 12);
      expect(middleOf(points)[1]).toBeCloseTo(-2 + 2 * sin, 12);
    }
  });

  it('have a left side above none, and marks in order from either end', () => {
    const line = straight([1, 1], [4, 5]);
    expect(line.sideOf([1, 1])).toBe(0);
    expect(line.sideOf([-3, 4])).toBeCloseTo(5, 12);
    expect(line.sideOf([5, -2])).toBeCloseTo(-5, 12);
    const marks: Point[] = [
      [1, 0],
      [2, 0],
      [3, 0],
    ];
    expect(inOrder(marks, [0, 0], [4, 0])).toEqual(marks);
    expect(inOrder(marks, [4, 0], [0, 0])).toEqual(marks.toReversed());
    expect(inOrder([], [4, 0], [0, 0])).toEqual([]);
  });

  it('are as far from a point as the nearest of their chords', () => {
    const curve: Point[] = [
      [0, 0],
      [4, 0],
      [4, 4],
    ];
    expect(distanceToCurve([3, 1], curve)).toBe(1);
    expect(distanceToCurve([3, 3], curve)).toBe(1);
    expect(distanceToCurve([-3, -4], curve)).toBe(5);
    expect(distanceToCurve([4, 7], curve)).toBe(3);
    expect(
      distanceToCurve(
        [2, 0],
        [
          [2, 5],
          [2, 5],
        ],
      ),
    ).toBe(5);
    expect(distanceToCurve([2, 0], [[5, 4]])).toBe(5);
  });

  it('are cut exactly where they pass none', () => {
    const curve: Point[] = [
      [-2, 0],
      [2, 4],
      [6, 0],
    ];
    expect(keptWhere(curve, ([x]) => x)).toEqual([
      [0, 2],
      [2, 4],
      [6, 0],
    ]);
    expect(keptWhere(curve, ([x]) => 4 - x)).toEqual([
      [-2, 0],
      [2, 4],
      [4, 2],
    ]);
    expect(keptWhere(curve, ([x]) => x - 2)).toEqual([
      [2, 4],
      [6, 0],
    ]);
    expect(keptWhere(curve, () => -1)).toEqual([]);
  });
});

describe('propagated', () => {
  it('of straight lines is the root of squares, slope times error (JCGM 100:2008, 5.1.2)', () => {
    const read = ([a = 0, b = 0, c = 0]: readonly number[]) => ({
      sum: 3 * a - 4 * b,
      one: c,
      both: a + c,
    });
    const found = propagated(read, [10, 20, 30], [1, 2, 0.5]);
    expect(found.sum).toBeCloseTo(Math.hypot(3, 8), 9);
    expect(found.one).toBeCloseTo(0.5, 9);
    expect(found.both).toBeCloseTo(Math.hypot(1, 0.5), 9);
    expect(propagated(read, [10, 20, 30], [0, 0, 0])).toEqual({});
  });

  it('leaves out what comes and goes, and moves that cannot be read', () => {
    const read = ([a = 0]: readonly number[]) => (a > 10.5 ? undefined : { a });
    expect(propagated(read, [10], [1])).toEqual({});
    expect(propagated(read, [9], [1]).a).toBeCloseTo(1, 9);
    const comes = ([a = 0]: readonly number[]) => ({ sure: a, rare: a > 10 ? a : undefined });
    expect(propagated(comes, [10], [1])).toEqual({ sure: 1 });
  });
});

describe('a fillet of 6, 8 and 10', () => {
  const marks: FilletMarks = {
    root: [0, 0],
    toeA: [8, 0],
    toeB: [0, 6],
    face: [],
    fusion: [],
    plateA: [],
    plateB: [],
  };
  const mirrored = (points: readonly Point[]) => points.map(([x, y]): Point => [x, -y]);

  it('has its legs, its right angle, and the height of its triangle for a throat', () => {
    const found = readFillet(marks);
    expect(found).toMatchObject({ legA: 8, legB: 6, faceWidth: 10 });
    expect(found.angle).toBeCloseTo(90, 9);
    expect(found.throat).toBeCloseTo(4.8, 12);
    expect(Object.keys(found)).toHaveLength(5);
  });

  it('with a flat face is a triangle of 24, with one that rises or lacks one more or less', () => {
    // Three fifths and four fifths: one out of the face, square to it.
    const face = (out: number): Point[] =>
      [0.25, 0.5, 0.75].map((share) => [8 - 8 * share + 0.6 * out, 6 * share + 0.8 * out]);
    const flat = readFillet({ ...marks, face: face(0) });
    expect(flat.depositArea).toBeCloseTo(24, 9);
    expect(flat.rise).toBeCloseTo(0, 9);
    expect(flat.throat).toBeCloseTo(4.8, 9);
    const [out, hollow] = [
      readFillet({ ...marks, face: face(1) }),
      readFillet({ ...marks, face: face(-1) }),
    ];
    expect(out.rise).toBeCloseTo(1, 0);
    expect(out.throat).toBeCloseTo(4.8, 9);
    expect(hollow.hollow).toBeGreaterThan(0.99);
    expect(hollow.throat).toBeCloseTo(4.8 - (hollow.hollow ?? 0), 9);
    expect((out.depositArea ?? 0) - 24).toBeCloseTo(24 - (hollow.depositArea ?? 0), 6);
  });

  it('melted one deep along both plates reads one on each, and the same in a mirror', () => {
    const fusion: Point[] = [
      [7, -1],
      [4, -1],
      [-1, -1],
      [-1, 3],
      [-1, 5],
    ];
    const face: Point[] = [
      [6, 1.5],
      [4, 3],
      [2, 4.5],
    ];
    const undercut = {
      undercutA: [
        [9, -0.5],
        [9, -0.2],
      ] as Point[],
      undercutB: [[-0.7, 7]] as Point[],
    };
    const found = readFillet({ ...marks, face, fusion, ...undercut });
    // Its curve swings a little past the marks, which stand one below.
    expect(found.fusionA).toBeGreaterThanOrEqual(1);
    expect(found.fusionA).toBeLessThan(1.4);
    expect(found.fusionB).toBeGreaterThanOrEqual(1);
    expect(found.fusionB).toBeLessThan(1.4);
    expect(found.penetration).toBeCloseTo(Math.SQRT2, 9);
    expect(found.actualThroat).toBeCloseTo(4.8 + 0.6 + 0.8, 6);
    expect(found.undercutA).toBeCloseTo(0.5, 9);
    expect(found.undercutB).toBeCloseTo(0.7, 9);
    // Along A 8 by 1 and along B 6 by 1, and the corner between, cut off at the toes: 14 within straight chords, more in a curve.
    expect(found.meltedArea).toBeGreaterThan(14);
    expect(found.meltedArea).toBeLessThan(1.2 * 14);
    const melted = found.meltedArea ?? 0;
    expect(found.dilution).toBeCloseTo((100 * melted) / (melted + 24), 6);
    const mirror = readFillet({
      root: [0, 0],
      toeA: [8, 0],
      toeB: [0, -6],
      face: mirrored(face),
      fusion: mirrored(fusion),
      plateA: [],
      plateB: [],
      undercutA: mirrored(undercut.undercutA),
      undercutB: mirrored(undercut.undercutB),
    });
    for (const [name, value] of Object.entries(found))
      expect(mirror[name as keyof typeof mirror], name).toBeCloseTo(value, 9);
  });

  it('takes its angle from the plates’ faces where they are marked, whichever way along', () => {
    const leaning: Point[] = [
      [2, 12],
      [1, 6],
    ];
    const found = readFillet({
      ...marks,
      plateB: leaning,
      plateA: [
        [20, 0],
        [10, 0],
      ],
    });
    expect(found.angle).toBeCloseTo((Math.atan2(6, 1) * 180) / Math.PI, 9);
    expect(found.legA).toBeCloseTo(8, 9);
    expect(readFillet({ ...marks, plateB: leaning.slice(0, 1) }).angle).toBeCloseTo(90, 9);
  });

  it('fused short of the root reads below none behind it', () => {
    const fusion: Point[] = [
      [6, 0.1],
      [3, 0.4],
      [1, 1],
      [0.4, 3],
      [0.1, 5],
    ];
    const found = readFillet({
      ...marks,
      face: [
        [6, 1.5],
        [4, 3],
        [2, 4.5],
      ],
      fusion,
    });
    expect(found.penetration).toBeCloseTo(-Math.SQRT2, 6);
    expect(found.dilution).toBe(0);
  });

  it('is in doubt as two marks of a length are: root and toe, along the leg and a little across', () => {
    const doubt = filletUncertainty(marks, 0.01);
    // Distance of two free points: each moves it by its error along the line.
    expect(doubt.legA).toBeCloseTo(0.01 * Math.SQRT2, 6);
    expect(doubt.legB).toBeCloseTo(0.01 * Math.SQRT2, 6);
    expect(doubt.faceWidth).toBeCloseTo(0.01 * Math.SQRT2, 6);
    // Of an angle: each toe across its leg, the root across both, in degrees.
    const across = Math.hypot(1 / 8, 1 / 6, 1 / 8, 1 / 6) * 0.01;
    expect(doubt.angle).toBeCloseTo((across * 180) / Math.PI, 4);
    expect(filletUncertainty(marks, 0)).toMatchObject({ legA: 0 });
  });
});
