/** Readings of an etched groove against shapes whose true sizes are known by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGroove } from '../../../lib/geometry/etched-groove.ts';
import type { GrooveMarks } from '../../../lib/geometry/groove-marks.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { seeded } from '../../../lib/practice/seeded.ts';
import { mappedGroove, randomGroove } from '../section/random-groove.ts';
import { placing } from '../section/random-section.ts';

/** Square edges 40 apart in plate 100 thick, melted 10 deep on both sides, flush above and below. */
const square: GrooveMarks = {
  toeA: [-30, 100],
  toeB: [30, 100],
  rootA: [-30, 0],
  rootB: [30, 0],
  cap: [[0, 100]],
  rootBead: [[0, 0]],
  fusionA: [75, 50, 25].map((y): Point => [-30, y]),
  fusionB: [75, 50, 25].map((y): Point => [30, y]),
  edgeA: [
    [-20, 100],
    [-20, 0],
  ],
  edgeB: [
    [20, 0],
    [20, 100],
  ],
  frontA: [
    [-80, 100],
    [-50, 100],
  ],
  frontB: [
    [50, 100],
    [80, 100],
  ],
  backA: [
    [-80, 0],
    [-50, 0],
  ],
  backB: [
    [50, 0],
    [80, 0],
  ],
  undercutA: [],
  undercutB: [],
  onStrip: false,
};
const close = (found: object, wanted: Readonly<Record<string, number>>) => {
  for (const [name, value] of Object.entries(wanted))
    expect((found as Record<string, number>)[name], name).toBeCloseTo(value, 6);
};
/** Five marks on a parabola through the toes. */
const parabola = (rise: number, y: number): Point[] =>
  [1, 2, 3, 4, 5].map((i): Point => {
    const share = i / 6;
    return [-30 + 60 * share, y + 4 * rise * share * (1 - share)];
  });

describe('readGroove', () => {
  it('reads a flush weld of 60 by 100 in a gap of 40: a third of it is melted plate', () => {
    close(readGroove(square), {
      capWidth: 60,
      rootWidth: 60,
      capHeight: 0,
      underfill: 0,
      thickness: 100,
      throat: 100,
      wholeThickness: 100,
      unfusedA: 0,
      sidewallA: 10,
      sidewallMostA: 10,
      sidewallB: 10,
      weldArea: 6000,
      meltedArea: 2000,
      depositArea: 4000,
      dilution: 100 / 3,
    });
  });

  it('counts neither cap nor root bead in the throat, and both in the whole thickness', () => {
    const found = readGroove({
      ...square,
      cap: parabola(12, 100),
      rootBead: parabola(-9, 0),
    });
    close(found, { capHeight: 12, rootHeight: 9, throat: 100 });
    expect(found.wholeThickness).toBeGreaterThanOrEqual(100);
    const narrow = { ...square, rootA: [-5, 0] as Point, rootB: [5, 0] as Point };
    const tapered = readGroove({ ...narrow, cap: parabola(12, 100), rootBead: [[0, -3]] });
    expect(tapered.throat).toBeCloseTo(100, 6);
    expect(tapered.wholeThickness).toBeGreaterThan(103);
    expect(found.weldArea).toBeCloseTo(6000 + (2 / 3) * 60 * 12 + (2 / 3) * 60 * 9, -1);
  });

  it('takes underfill, a hollow root and a root that is not fused through from the throat', () => {
    const hollow = readGroove({ ...square, cap: parabola(-8, 100), rootBead: parabola(5, 0) });
    close(hollow, { underfill: 8, rootHollow: 5, throat: 87, wholeThickness: 87 });
    const short = readGroove({
      ...square,
      rootA: [-30, 15],
      rootB: [30, 15],
      rootBead: [[0, 15]],
      fusionA: [80, 60, 40].map((y): Point => [-30, y]),
      fusionB: [80, 60, 40].map((y): Point => [30, y]),
    });
    close(short, { unfusedA: 15, unfusedB: 15, throat: 85 });
  });

  it('reads a gap between weld and edge as less than nothing', () => {
    const gap = { ...square, edgeA: square.edgeA.map(([, y]): Point => [-34, y]) };
    close(readGroove(gap), { sidewallA: -4, sidewallB: 10 });
  });

  it('follows a bevel with a land, and does not count what runs into the plate’s face', () => {
    const bevel: Point[] = [
      [-70, 100],
      [-20, 25],
      [-20, 0],
    ];
    const found = readGroove({
      ...square,
      toeA: [-80, 100],
      fusionA: [
        [-55, 55],
        [-26, 15],
      ],
      edgeA: bevel,
    });
    const across = (x: number, y: number) => ((x + 20) * -75 - (y - 25) * 50) / Math.hypot(50, 75);
    expect(found.sidewallMostA).toBeGreaterThanOrEqual(across(-55, 55) - 1e-9);
    expect(found.sidewallA).toBeLessThanOrEqual(6 + 1e-9);
  });

  it('counts what melted in a backing strip as base metal', () => {
    const onStrip = readGroove({ ...square, onStrip: true, rootBead: parabola(-12, 0) });
    const strip = (2 / 3) * 60 * 12;
    expect(onStrip.meltedArea).toBeCloseTo(2000 + strip, -1);
    expect(onStrip.depositArea).toBeCloseTo(4000, 6);
    expect(onStrip.wholeThickness).toBeUndefined();
  });

  it('reads undercut below the plate’s own face', () => {
    close(readGroove({ ...square, undercutA: [[-33, 94]], undercutB: [[33, 97]] }), {
      undercutA: 6,
      undercutB: 3,
    });
  });

  it('says nothing of what was not marked', () => {
    const bare = readGroove({
      ...square,
      cap: [],
      rootBead: [],
      fusionA: [],
      edgeB: [],
      frontA: [],
      backB: [],
      frontB: [],
    });
    expect(Object.keys(bare).sort()).toEqual(['capWidth', 'rootWidth', 'unfusedA']);
  });

  it('does not mind how the picture lies, nor from which end curves are marked', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 7, noNaN: true }), fc.boolean(), (turn, mirror) => {
        const { marks } = randomGroove(seeded('turned'));
        const turned = mappedGroove(marks, placing(turn, mirror));
        const reversed = {
          ...turned,
          cap: turned.cap.toReversed(),
          fusionA: turned.fusionA.toReversed(),
          edgeB: turned.edgeB.toReversed(),
        };
        const before = readGroove(marks);
        for (const again of [readGroove(turned), readGroove(reversed)])
          for (const [name, value] of Object.entries(before))
            expect(again[name as keyof typeof before], name).toBeCloseTo(value, 6);
      }),
      { numRuns: 20 },
    );
  });
});
