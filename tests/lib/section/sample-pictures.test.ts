/**
 * The two drawn sections, measured on their own drawing: forty pixels are a millimeter, plates are where
 * they are said to be, and what is given as true is what the drawn curves hold.
 */
import { describe, expect, it } from 'vitest';
import { readFillet } from '../../../lib/geometry/etched-fillet.ts';
import { readGroove } from '../../../lib/geometry/etched-groove.ts';
import { distanceToCurve } from '../../../lib/geometry/marked-lines.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import {
  filletPicture,
  filletSampleLength,
  filletSampleMarks,
  filletTruth,
} from '../../../lib/section/sample-fillet.ts';
import {
  groovePicture,
  grooveSampleLength,
  grooveSampleMarks,
  grooveTruth,
} from '../../../lib/section/sample-groove.ts';

const near = (found: Point | undefined, x: number, y: number) => {
  expect(found?.[0]).toBeCloseTo(x, 6);
  expect(found?.[1]).toBeCloseTo(y, 6);
};
/** Whether a point lies within an outline: a ray to the right crosses it an odd number of times. */
const isWithin = ([x, y]: Point, outline: readonly Point[]) =>
  outline.filter(([ax, ay], i) => {
    const [bx, by] = outline.at(i - 1) as Point;
    return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
  }).length %
    2 ===
  1;

describe('the drawn fillet', () => {
  const { root, toeA, toeB, face, fusion, rule, passLines } = filletPicture;
  const weld = [toeA, ...face, toeB, ...fusion.toReversed()];

  it('stands with its root at 440, 520, legs of 8.2 and 7.6 mm along and up', () => {
    near(root, 440, 520);
    near(toeA, 440 + 8.2 * 40, 520);
    near(toeB, 440, 520 - 7.6 * 40);
    expect(filletPicture.plate).toBeCloseTo(9.5 * 40, 9);
    expect(rule.step * rule.millimeters).toBe(20 * 40);
    const [from, to] = filletSampleMarks.ends;
    expect(to[0] - from[0]).toBe(40 * filletSampleLength);
    expect(to[1]).toBe(from[1]);
    expect(from).toEqual(rule.from);
  });

  it('bulges as a parabola, 0.7 mm out of the middle of its face', () => {
    const width = Math.hypot(8.2, 7.6);
    for (const [i, [x, y]] of face.entries()) {
      const t = (i + 1) / 41;
      const out = 4 * 0.7 * t * (1 - t);
      near(
        [x, y],
        440 + 40 * (8.2 * (1 - t) + (out * 7.6) / width),
        520 - 40 * (7.6 * t + (out * 8.2) / width),
      );
    }
  });

  it('is melted into both plates, and nowhere through them', () => {
    for (const [x, y] of fusion) {
      const [along, up] = [(x - 440) / 40, (520 - y) / 40];
      expect(along < 0 || up < 0).toBe(true);
      expect(Math.min(along, up)).toBeGreaterThan(-9.5 / 2);
    }
    expect(fusion).toHaveLength(60);
    expect(fusion.some(([x, y]) => x < 440 && y > 520)).toBe(true);
  });

  it('has the sizes that are given as true', () => {
    const found = readFillet({ ...filletPicture, plateA: [], plateB: [] });
    const lengths = ['legA', 'legB', 'faceWidth', 'throat', 'rise'] as const;
    const scaled: Record<string, number> = {
      ...Object.fromEntries(lengths.map((name) => [name, (found[name] ?? 0) / 40])),
      angle: found.angle,
      depositArea: (found.depositArea ?? 0) / 1600,
      meltedArea: (found.meltedArea ?? 0) / 1600,
      dilution: found.dilution ?? 0,
    };
    expect(Object.keys(scaled).sort()).toEqual(Object.keys(filletTruth).sort());
    for (const [name, truth] of Object.entries(filletTruth))
      expect((scaled[name] ?? 0) / truth, name).toBeCloseTo(1, 3);
  });

  it('is marked on its curves and faces, with a mark in each pass', () => {
    expect([filletSampleMarks.face.length, filletSampleMarks.fusion.length]).toEqual([7, 11]);
    for (const mark of filletSampleMarks.face)
      expect(distanceToCurve(mark, [toeA, ...face, toeB])).toBeLessThan(0.5);
    for (const mark of filletSampleMarks.fusion)
      expect(distanceToCurve(mark, [toeA, ...fusion, toeB])).toBeLessThan(0.5);
    for (const [x, y] of filletSampleMarks.plateA) expect([x > toeA[0], y]).toEqual([true, 520]);
    for (const [x, y] of filletSampleMarks.plateB) expect([x, y < toeB[1]]).toEqual([440, true]);
    expect(filletSampleMarks.passes).toHaveLength(3);
    for (const mark of filletSampleMarks.passes) expect(isWithin(mark, weld)).toBe(true);
    // Where a line ends on the face it may stand a quarter of a millimeter out of it.
    for (const line of passLines)
      for (const point of line)
        expect(isWithin(point, weld) || distanceToCurve(point, face) < 10).toBe(true);
  });
});

describe('the drawn groove', () => {
  const { toeA, toeB, rootA, rootB, cap, rootBead, fusionA, fusionB, edgeA, edgeB, rule } =
    groovePicture;
  /** Half the groove's width at the front: 1.2 mm and 8.5 mm of bevel at 30°. */
  const halfTop = 1.2 + 8.5 / Math.sqrt(3);
  const at = (along: number, up: number): [number, number] => [620 + 40 * along, 560 - 40 * up];
  const weld = [
    ...[toeA, ...cap, toeB, ...fusionB, rootB],
    ...[...rootBead.toReversed(), rootA, ...fusionA.toReversed()],
  ];

  it('is plate of 9.5 mm with 60° between its edges, a land of 1 mm, open by 2.4 mm', () => {
    for (const [edge, side] of [
      [edgeA, -1],
      [edgeB, 1],
    ] as const) {
      near(edge[0], ...at(side * halfTop, 9.5));
      near(edge[1], ...at(side * 1.2, 1));
      near(edge[2], ...at(side * 1.2, 0));
    }
    near(toeA, ...at(-halfTop - 1.1, 9.5));
    near(toeB, ...at(halfTop + 0.8, 9.5));
    near(rootA, ...at(-2.1, 0));
    near(rootB, ...at(1.9, 0));
    expect([groovePicture.front, groovePicture.back]).toEqual([560 - 380, 560]);
    expect(rule.step * rule.millimeters).toBe(40 * grooveSampleLength);
    const [from, to] = grooveSampleMarks.ends;
    expect([to[0] - from[0], to[1] - from[1]]).toEqual([1000, 0]);
  });

  it('rises 1.3 mm over the front and 0.9 mm beyond the back', () => {
    expect(Math.min(...cap.map(([, y]) => y))).toBeCloseTo(180 - 52, 0);
    expect(Math.max(...rootBead.map(([, y]) => y))).toBeCloseTo(560 + 36, 0);
    expect(cap).toHaveLength(40);
    expect(rootBead).toHaveLength(20);
  });

  it('has the sizes that are given as true', () => {
    const found = readGroove({
      ...groovePicture,
      frontA: [],
      frontB: [],
      backA: [],
      backB: [],
      undercutA: [],
      undercutB: [],
      onStrip: false,
    }) as unknown as Record<string, number>;
    for (const name of ['capWidth', 'rootWidth', 'capHeight', 'rootHeight', 'throat'] as const)
      expect((found[name] ?? 0) / 40, name).toBeCloseTo(grooveTruth[name], 2);
    expect(grooveTruth.thickness).toBe(9.5);
    for (const name of ['sidewallA', 'sidewallB'] as const)
      expect((found[name] ?? 0) / 40, name).toBeCloseTo(grooveTruth[name], 3);
    for (const name of ['weldArea', 'depositArea', 'meltedArea'] as const)
      expect((found[name] ?? 0) / 1600 / grooveTruth[name], name).toBeCloseTo(1, 3);
    expect((found.dilution ?? 0) / grooveTruth.dilution).toBeCloseTo(1, 3);
    // Melted beyond both edges, and not through the plates' other ends.
    expect(grooveTruth.sidewallA).toBeGreaterThan(0.3);
    expect(grooveTruth.sidewallB).toBeGreaterThan(0.3);
  });

  it('is marked on its curves and faces, with a mark in each pass', () => {
    const marks = grooveSampleMarks;
    const on = (points: readonly Point[], curve: readonly Point[], count: number) => {
      expect(points).toHaveLength(count);
      for (const point of points) expect(distanceToCurve(point, curve)).toBeLessThan(0.5);
    };
    on(marks.face, [toeA, ...cap, toeB], 7);
    on(marks.rootBead, [rootA, ...rootBead, rootB], 5);
    on(marks.fusionA, [toeA, ...fusionA, rootA], 7);
    on(marks.fusionB, [toeB, ...fusionB, rootB], 7);
    for (const [x, y] of marks.plateA) expect([x < toeA[0], y]).toEqual([true, 180]);
    for (const [x, y] of marks.plateB) expect([x > toeB[0], y]).toEqual([true, 180]);
    for (const [x, y] of marks.backA) expect([x < rootA[0], y]).toEqual([true, 560]);
    for (const [x, y] of marks.backB) expect([x > rootB[0], y]).toEqual([true, 560]);
    expect(marks.passes).toHaveLength(6);
    for (const mark of marks.passes) expect(isWithin(mark, weld)).toBe(true);
    // From left to right within each layer of two.
    expect((marks.passes[2] as Point)[0]).toBeLessThan((marks.passes[3] as Point)[0]);
    expect((marks.passes[4] as Point)[0]).toBeLessThan((marks.passes[5] as Point)[0]);
  });

  it('shows each pass by a line that begins and ends in the weld or at its edge', () => {
    expect(groovePicture.passLines).toHaveLength(5);
    const rim = [toeA, ...cap, toeB, ...fusionB, rootB, ...fusionA.toReversed(), toeA];
    for (const line of groovePicture.passLines)
      for (const point of line)
        expect(isWithin(point, weld) || distanceToCurve(point, rim) < 2).toBe(true);
  });
});
