/** Beads, layers, plates and regions against right triangles, trapezoids and sums by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGroove } from '../../../lib/geometry/etched-groove.ts';
import { cutLevel, heightOver, heightOverPlate } from '../../../lib/geometry/face-height.ts';
import { filletPasses } from '../../../lib/geometry/fillet-passes.ts';
import { clockOfWeld, weldAtClock } from '../../../lib/geometry/fixed-pipe.ts';
import { fusionBeyondEdge } from '../../../lib/geometry/fusion-beyond-edge.ts';
import { grooveAreas } from '../../../lib/geometry/groove-areas.ts';
import { beadsByLayer, grooveLayers } from '../../../lib/geometry/groove-layers.ts';
import type { GrooveMarks } from '../../../lib/geometry/groove-marks.ts';
import { groovePasses } from '../../../lib/geometry/groove-passes.ts';
import {
  bottomOf,
  halfWidthAt,
  inUnit,
  layerArea,
  layersOf,
} from '../../../lib/geometry/groove-section.ts';
import { type Layer, layerBeads } from '../../../lib/geometry/layer-beads.ts';
import { type Outline, type Point, signedArea } from '../../../lib/geometry/outline.ts';
import { positionRegions } from '../../../lib/geometry/position-regions.ts';
import { ringVolume } from '../../../lib/geometry/ring-volume.ts';
import { stackedPasses } from '../../../lib/geometry/stacked-passes.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const flat = (halfWidth: number, height: number) => ({ halfWidth, height, crown: 0 });

describe('the beads of a layer', () => {
  /** Straight up by 1 beside a land, then opening by 1 a side for each unit up. */
  const bent: Layer = {
    lower: flat(2, 0),
    upper: flat(4, 3),
    bend: { halfWidth: 2, height: 1 },
  };
  const wallAt = (y: number) => (y <= 1 ? 2 : 2 + (y - 1));
  it('share it out evenly and leave nothing, beside a land that bends the walls too', () => {
    for (const [layer, area] of [
      [bent, 4 * 1 + 2 * (2 + 4)],
      [{ lower: flat(2, 0), upper: flat(4, 2) }, 2 * (2 + 4)],
    ] as [Layer, number][])
      for (let count = 1; count <= 7; count++) {
        const beads = layerBeads(layer, count);
        expect(beads).toHaveLength(count);
        for (const [i, { outline, area: own, flank, top, foot }] of beads.entries()) {
          expect(own).toBeCloseTo(area / count, 9);
          expect(signedArea(outline)).toBeCloseTo(area / count, 6);
          for (const [k, [x, y]] of outline.entries()) {
            const [lastX, lastY] = outline.at(k - 1) as Point;
            expect(x !== lastX || y !== lastY).toBe(true);
            if (layer === bent) expect(Math.abs(x)).toBeLessThanOrEqual(wallAt(y) + 1e-6);
          }
          const next = beads[i + 1];
          expect(flank === 0).toBe(next === undefined);
          if (!next) continue;
          expect(next.top[0]).toBe(top[1]);
          expect(next.foot[0]).toBe(foot[1]);
          // A straight flank is as long as its ends are apart; one along a wall is longer.
          const straight = Math.hypot(top[1] - foot[1], layer.upper.height);
          if (layer !== bent) expect(flank).toBeCloseTo(straight, 9);
          else expect(flank).toBeGreaterThanOrEqual(straight - 1e-9);
        }
        expect(beads[0]?.top[0]).toBe(-4);
        expect(beads.at(-1)?.top[1]).toBe(4);
        expect(beads[0]?.foot[0]).toBe(-2);
        expect(beads.at(-1)?.foot[1]).toBe(2);
      }
  });
  it('lean at 45°, or by their step where that is less than the layer is thick', () => {
    const thin = layerBeads({ lower: flat(10, 0), upper: flat(10, 2) }, 4);
    // 45°: down by 2 and over by 2.
    for (const { top, foot, flank } of thin.slice(0, 3)) {
      expect(foot[1] - top[1]).toBeCloseTo(2, 9);
      expect(flank).toBeCloseTo(2 * Math.SQRT2, 9);
    }
    // Cuts stand where a quarter lies before them: 5 wide, half of it under the flank.
    expect(thin[0]?.top[1]).toBeCloseTo(-10 + 5 - 1, 9);
    const [thick] = layerBeads({ lower: flat(4, 0), upper: flat(4, 3) }, 4);
    expect((thick?.foot[1] ?? 0) - (thick?.top[1] ?? 0)).toBeCloseTo(2, 9);
  });
  it('follow the wall where a flank would leave the joint', () => {
    const narrow: Layer = {
      lower: flat(1, 0),
      upper: flat(5, 5),
      bend: { halfWidth: 1, height: 1 },
    };
    const beads = layerBeads(narrow, 9);
    const bends = beads.filter(({ outline }) =>
      outline.some(([x, y]) => Math.abs(Math.abs(x) - 1) < 1e-9 && Math.abs(y - 1) < 1e-9),
    );
    expect(bends.length).toBeGreaterThanOrEqual(2);
    const area = 2 + 4 * (1 + 5);
    for (const { outline } of beads) expect(signedArea(outline)).toBeCloseTo(area / 9, 6);
  });
  it('cover of the earlier bead what lies under them', () => {
    const layers = [
      { lower: flat(0, 0), upper: flat(2, 2), beads: 1 },
      { lower: flat(2, 2), upper: flat(4, 4), beads: 2 },
    ];
    const passes = stackedPasses(layers);
    expect(passes.map(({ number: n, layer }) => [n, layer])).toEqual([
      [1, 1],
      [2, 2],
      [3, 2],
    ]);
    expect(passes[0]?.over).toBeUndefined();
    // Pass 2 begins at the side of pass 1, whose face runs from -2 to 2, and ends over its foot.
    const foot = passes[1]?.bead.foot[1] ?? 0;
    expect(passes[1]?.over).toEqual({ number: 1, share: (Math.min(2, foot) + 2) / 4 });
    const { bead } = passes[1] ?? {};
    const openFace = (bead?.top[1] ?? 0) - (bead?.top[0] ?? 0);
    expect(passes[2]?.over?.number).toBe(2);
    expect(passes[2]?.over?.share).toBeCloseTo(
      (bead?.flank ?? 0) / ((bead?.flank ?? 0) + openFace),
      12,
    );
  });
});

describe('the layers of a groove', () => {
  const heights = (depth: number, more: Partial<Parameters<typeof grooveLayers>[0]> = {}) =>
    grooveLayers({
      depth,
      rootPassThickness: 2,
      fillPassThickness: 2,
      coverLimit: 2,
      capHeight: 0,
      ...more,
    }).map((height) => Number(height.toFixed(9)));
  it('share what is left over the root evenly, none thicker than it may be', () => {
    expect(heights(2)).toEqual([2]);
    expect(heights(1.5)).toEqual([1.5]);
    expect(heights(4)).toEqual([2, 4]);
    expect(heights(8)).toEqual([2, 4, 6, 8]);
    // 5 left in three of 5/3.
    expect(heights(7)).toEqual([2, 3.666666667, 5.333333333, 7]);
    expect(heights(4.000000001)).toEqual([2, 4.000000001]);
  });
  it('take from the cover what its cap is high, two thirds of it', () => {
    // The cover may be 2 − 2/3 · 1.5 = 1: of 5 left, 1 for it and 2 for each of two below.
    expect(heights(7, { capHeight: 1.5 })).toEqual([2, 4, 6, 7]);
    expect(heights(7, { coverLimit: 1 })).toEqual([2, 4, 6, 7]);
    expect(heights(3, { capHeight: 1.5 })).toEqual([2, 3]);
  });
  it('get each next pass where passes are largest, the upper of equals', () => {
    expect(beadsByLayer([1, 2, 3], 3, false)).toEqual([1, 1, 1]);
    expect(beadsByLayer([1, 2, 3], 5, false)).toEqual([1, 2, 2]);
    expect(beadsByLayer([2, 2, 2], 4, false)).toEqual([1, 1, 2]);
    expect(beadsByLayer([2, 2, 2], 5, false)).toEqual([1, 2, 2]);
    expect(beadsByLayer([9, 2, 3], 5, false)).toEqual([3, 1, 1]);
    expect(beadsByLayer([9, 2, 3], 5, true)).toEqual([1, 2, 2]);
    expect(beadsByLayer([9], 4, true)).toEqual([1]);
    expect(beadsByLayer([9], 4, false)).toEqual([4]);
  });
});

describe('a groove and its parts', () => {
  const groove = { thickness: 10, rootOpening: 6, includedAngle: 90, rootFace: 2, capHeight: 1.5 };
  it('opens over its land by the tangent of half its angle', () => {
    expect([0, 2, 5, 10].map((y) => halfWidthAt(groove, y))).toEqual(
      [3, 3, 6, 11].map((x) => expect.closeTo(x, 9)),
    );
    expect(inUnit(groove, 2)).toEqual({
      thickness: 20,
      rootOpening: 12,
      includedAngle: 90,
      rootFace: 4,
      capHeight: 3,
    });
    expect([bottomOf(groove), bottomOf({ ...groove, rootOpening: 0 })]).toEqual([0, 2]);
  });
  it('has layers that bend at the land, and a cap on the last', () => {
    const [root, fill, cover] = layersOf(groove, [4, 7, 10]);
    expect(root?.bend).toEqual({ halfWidth: 3, height: 2 });
    expect([fill?.bend, cover?.bend]).toEqual([undefined, undefined]);
    expect([root, fill, cover].map((one) => one?.upper.crown)).toEqual([0, 0, 1.5]);
    // 6 by 2, and 2 high between 6 and 10 wide; 3 between 10 and 16; 3 between 16 and 22, and two thirds of 22 by 1.5.
    expect([root, fill, cover].map((one) => layerArea(one as Layer))).toEqual(
      [12 + 16, 39, 57 + 22].map((area) => expect.closeTo(area, 9)),
    );
    // A layer that begins or ends at the land has straight sides.
    expect(layersOf(groove, [2, 10]).map(({ bend }) => bend)).toEqual([undefined, undefined]);
    expect(layersOf({ ...groove, rootOpening: 0 }, [5])[0]).toMatchObject({
      lower: { halfWidth: 0, height: 2 },
      bend: undefined,
    });
  });
  it('is drawn in plates that reach a thickness beyond it, on a strip of 6.35 mm', () => {
    const base = (part: Partial<typeof groove>, strip = true) =>
      groovePasses({ ...groove, ...part }, [10], [1], strip, 'flat').map.base;
    const near = (outline: Outline | undefined, wanted: readonly (readonly number[])[]) => {
      expect(outline).toHaveLength(wanted.length);
      for (const [i, [x, y]] of (outline ?? []).entries()) {
        expect(x).toBeCloseTo(wanted[i]?.[0] as number, 6);
        expect(y).toBeCloseTo(wanted[i]?.[1] as number, 6);
      }
    };
    const [left, right, strip] = base({});
    // The face ends at 11, the strip at 19.05: 24.05 with half a thickness is more than 21.
    const edge = [
      [3, 0],
      [24.05, 0],
      [24.05, 10],
      [11, 10],
      [3, 2],
    ];
    near(right?.outline, edge);
    near(left?.outline, edge.map(([x, y]) => [-(x as number), y as number]).reverse());
    near(strip?.outline, [
      [-19.05, -6.35],
      [19.05, -6.35],
      [19.05, 0],
      [-19.05, 0],
    ]);
    expect(base({}, false)).toHaveLength(2);
    // A wide opening takes a wider strip: half of it and 12.7 on each plate.
    const wide = base({ rootOpening: 20 });
    near(wide[2]?.outline.slice(0, 2), [
      [-22.7, -6.35],
      [22.7, -6.35],
    ]);
    // No corner without a land, or where it is the whole edge; thick plate reaches a thickness beyond.
    expect(base({ rootFace: 0 })[1]?.outline).toHaveLength(4);
    expect(base({ rootFace: 10 })[1]?.outline).toHaveLength(4);
    const thick = groovePasses({ ...groove, thickness: 30 }, [30], [1], true, 'flat').map.base[1];
    expect(thick?.outline[1]?.[0]).toBeCloseTo(31 + 30, 6);
  });
});

describe('a drawn fillet', () => {
  it('stands in two plates as thick as its leg, drawn to one and three quarters of it', () => {
    const { map, passes } = filletPasses(8, 0, [1, 2], 'horizontal');
    expect(map.base.map(({ outline }) => outline)).toEqual([
      [
        [-14, -8],
        [14, -8],
        [14, 0],
        [-14, 0],
      ],
      [
        [-8, 0],
        [0, 0],
        [0, 14],
        [-8, 14],
      ],
    ]);
    // A leg goes as the root of the passes laid; the upper one waits for the last of its layer.
    const root = 8 / Math.sqrt(3);
    expect(passes.map(({ lowerLeg, upperLeg }) => [lowerLeg, upperLeg])).toEqual(
      [
        [root, root],
        [8, root],
        [8, 8],
      ].map((legs) => legs.map((leg) => expect.closeTo(leg, 9))),
    );
    expect(map.bounds).toEqual({ left: -14, bottom: -8, right: 14, top: 14 });
  });
  it('grows out of its corner as leg and bulge do', () => {
    const { map } = filletPasses(8, 1, [1, 2], 'horizontal');
    const reach = (layer: number) =>
      Math.max(
        ...map.passes
          .filter((pass) => pass.layer === layer)
          .flatMap(({ outline }) => outline.map(([x, y]) => (x + y) * Math.SQRT1_2)),
      );
    expect(reach(2)).toBeCloseTo(8 * Math.SQRT1_2 + 1, 6);
    expect(reach(1)).toBeCloseTo((8 * Math.SQRT1_2 + 1) / Math.sqrt(3), 6);
  });
  it.each([
    ['flat', [0, 1]],
    ['horizontal', [1, 1]],
    ['vertical', [1, 1]],
    ['overhead', [1, -1]],
  ] as const)('in position %s opens toward %j, its first plate first', (position, [right, up]) => {
    const { map } = filletPasses(8, 0, [1], position);
    const middle = (outline: Outline) =>
      [0, 1].map(
        (axis) => outline.reduce((sum, p) => sum + (p[axis] as number), 0) / outline.length,
      );
    const [x, y] = middle(map.passes[0]?.outline ?? []) as [number, number];
    expect([Math.sign(Number(x.toFixed(9))), Math.sign(Number(y.toFixed(9)))]).toEqual([right, up]);
    for (const { outline } of [...map.base, ...map.passes])
      expect(signedArea(outline)).toBeGreaterThan(0);
    // Turned, not bent: the plates keep their areas.
    expect(map.base.map(({ outline }) => signedArea(outline))).toEqual([
      expect.closeTo(28 * 8, 9),
      expect.closeTo(14 * 8, 9),
    ]);
  });
});

describe('a groove round a pipe', () => {
  it('turns its face to 180° and more on the right half, to less on the left, as a mirror', () => {
    fc.assert(
      fc.property(number(1, 89), number(1, 179), (pipe, clock) => {
        const [right, left] = [weldAtClock(pipe, clock), weldAtClock(pipe, 360 - clock)];
        expect(right.faceRotation).toBeCloseTo(180 + right.faceTilt, 9);
        expect(left.faceRotation).toBeCloseTo(360 - right.faceRotation, 9);
        expect(left.axisInclination).toBeCloseTo(right.axisInclination, 9);
        const back = clockOfWeld(right.axisInclination, right.faceTilt);
        expect(back.pipeInclination).toBeCloseTo(pipe, 5);
        expect(back.clockAngle).toBeCloseTo(clock, 5);
      }),
      { numRuns: 60 },
    );
    expect(weldAtClock(30, 180).faceRotation).toBeCloseTo(330, 9);
    expect(weldAtClock(30, 360).faceRotation).toBeCloseTo(210, 9);
    expect(weldAtClock(0, 180).faceRotation).toBeCloseTo(0, 9);
  });
  it('is one region where nothing changes, and meets end to end', () => {
    expect(positionRegions(90)).toEqual([{ position: 'horizontal', from: 0, to: 180 }]);
    const level = positionRegions(0);
    expect(level.map(({ position }) => position)).toEqual(['flat', 'vertical', 'overhead']);
    expect(level.map(({ from, to }) => [from, to])).toEqual(
      [
        [0, 15],
        // An overhead weld may rise by 80°, which this one does 10° under three o’clock.
        [15, 100],
        [100, 180],
      ].map((ends) => ends.map((end) => expect.closeTo(end, 9))),
    );
  });
  it('sweeps its area once round (Pappus): a ring of 2 by 3 at 10 from the axis', () => {
    expect(ringVolume(6, 10)).toBeCloseTo(Math.PI * 2 * (11.5 ** 2 - 8.5 ** 2), 9);
  });
});

describe('fusion beyond an edge', () => {
  const edge: Outline = [
    [10, 10],
    [4, 4],
    [4, 0],
  ];
  const inside: Point = [20, 5];
  /** The nearest place of the edge by looking closely, and the side by the triangle with the inside. */
  const looked = ([x, y]: Point) => {
    let [least, side] = [Infinity, 1];
    for (let i = 1; i < edge.length; i++) {
      const [[ax, ay], [bx, by]] = [edge[i - 1], edge[i]] as [Point, Point];
      for (let k = 0; k <= 4000; k++) {
        const [px, py] = [ax + ((bx - ax) * k) / 4000, ay + ((by - ay) * k) / 4000];
        const away = Math.hypot(x - px, y - py);
        if (away >= least) continue;
        least = away;
        const turn = (to: Point) => (bx - ax) * (to[1] - ay) - (by - ay) * (to[0] - ax);
        side = turn([x, y]) * turn(inside) > 0 ? -1 : 1;
      }
    }
    return side * least;
  };
  it('is the distance to its nearest piece, below none on the side of the weld', () => {
    const lines: Outline[] = [
      [2, 5, 8].map((y): Point => [y - 4, y]),
      [1, 2, 3].map((y): Point => [3, y]),
      [1, 3, 5].map((y): Point => [5 + y, y]),
    ];
    for (const line of lines) {
      const found = fusionBeyondEdge(edge, line, inside);
      const depths = line.map(looked);
      expect(found?.least).toBeCloseTo(Math.min(...depths), 3);
      expect(found?.most).toBeCloseTo(Math.max(...depths), 3);
    }
    expect(fusionBeyondEdge(edge, lines[1] as Outline, inside)).toEqual({ least: 1, most: 1 });
  });
  it('looks only beside the edge, cut square to its ends', () => {
    // Past the bottom, at y below 0, and past the top, beyond the line square to the bevel at 10, 10.
    const long: Point[] = [
      [1, -3],
      [1, 3],
      [1, 40],
    ];
    const found = fusionBeyondEdge(edge, long, inside);
    expect(found?.least).toBeCloseTo(3, 9);
    // It leaves where x + y is 20: at 1, 19, from which the bevel's end is 9 · √2 away.
    expect(found?.most).toBeCloseTo(9 * Math.SQRT2, 9);
    expect(
      fusionBeyondEdge(
        edge,
        [
          [1, -3],
          [1, -1],
        ],
        inside,
      ),
    ).toBeUndefined();
    expect(fusionBeyondEdge(edge, [], inside)).toBeUndefined();
    expect(fusionBeyondEdge(edge.slice(0, 1), long, inside)).toBeUndefined();
  });
});

describe('heights over a face', () => {
  it('are above none away from the inside, whichever way the face is drawn', () => {
    for (const face of [
      [
        [0, 0],
        [4, 0],
      ],
      [
        [4, 0],
        [0, 0],
      ],
    ] as [Point, Point][]) {
      const height = heightOver(face, [2, -5]);
      expect([height([1, 3]), height([9, -2]), height([2, 0])].map((h) => h + 0)).toEqual([
        3, -2, 0,
      ]);
      expect(
        cutLevel(
          [
            [0, -1],
            [2, 3],
            [4, 0],
          ],
          face,
          [2, -5],
        ),
      ).toEqual([
        [0, -1],
        [2, 0],
        [4, 0],
      ]);
    }
  });
  it('go by a plate’s own face from two marks on', () => {
    const instead: [Point, Point] = [
      [0, 0],
      [4, 0],
    ];
    const own: Point[] = [
      [-4, 1],
      [-2, 1],
    ];
    const over = (face: Point[]) => heightOverPlate(face, instead, [2, -5])([-3, 2]);
    expect([over(own), over(own.slice(0, 1)), over([])]).toEqual([1, 2, 2]);
  });
});

describe('what an etched groove lacks or has', () => {
  const side = (x: number) => [7.5, 5, 2.5].map((y): Point => [x, y]);
  const marks: GrooveMarks = {
    toeA: [-4, 10],
    toeB: [4, 10],
    rootA: [-4, 0],
    rootB: [4, 0],
    cap: [[0, 10]],
    rootBead: [[0, 0]],
    fusionA: side(-4),
    fusionB: side(4),
    edgeA: [
      [-3, 10],
      [-3, 0],
    ],
    edgeB: [
      [2, 10],
      [2, 0],
    ],
    frontA: [
      [-9, 10],
      [-6, 10],
    ],
    frontB: [
      [6, 10],
      [9, 10],
    ],
    backA: [
      [-9, -1],
      [-6, -1],
    ],
    backB: [
      [6, 0.5],
      [9, 0.5],
    ],
    undercutA: [],
    undercutB: [],
    onStrip: false,
  };
  const read = (part: Partial<GrooveMarks>) => readGroove({ ...marks, ...part });
  it('is as thick as the thinner plate, each by its own faces', () => {
    expect(read({}).thickness).toBeCloseTo(9.5, 9);
    expect(read({ frontB: [] }).thickness).toBeCloseTo(11, 9);
    expect(read({ backB: marks.backB.slice(0, 1) }).thickness).toBeCloseTo(11, 9);
    expect(read({ frontA: [] }).thickness).toBeCloseTo(9.5, 9);
    expect(read({ backA: [] }).thickness).toBeCloseTo(9.5, 9);
    for (const part of [
      { frontA: [], frontB: [] },
      { backA: [], backB: [] },
      { frontA: [], backB: [] },
    ])
      expect(read(part).thickness).toBeUndefined();
    // Roots lie at none: one over the back of A, half a one under that of B.
    expect(read({}).unfusedA).toBeCloseTo(1, 9);
    expect(read({}).unfusedB).toBeCloseTo(-0.5, 9);
    expect(read({ backA: marks.backA.slice(0, 1) })).not.toHaveProperty('unfusedA');
    expect(read({ backB: [] })).not.toHaveProperty('unfusedB');
  });
  it('is undercut as deep as its deepest mark on either side', () => {
    const two = read({
      undercutA: [
        [-5, 9.6],
        [-4.5, 9.2],
      ],
      undercutB: [
        [5, 9.3],
        [4.5, 9.9],
      ],
    });
    expect(two.undercutA).toBeCloseTo(0.8, 9);
    expect(two.undercutB).toBeCloseTo(0.7, 9);
  });
  it('has areas only where cap and both edges of fusion are marked, sides only where theirs is', () => {
    const areas = ['weldArea', 'depositArea', 'meltedArea', 'dilution'];
    const whole = read({});
    expect(whole.weldArea).toBeCloseTo(80, 9);
    expect(whole.meltedArea).toBeCloseTo(10 + 20, 9);
    expect(whole.depositArea).toBeCloseTo(50, 9);
    expect(whole.dilution).toBeCloseTo(37.5, 9);
    for (const name of ['cap', 'fusionA', 'fusionB'] as const)
      for (const area of areas) expect(read({ [name]: [] })).not.toHaveProperty(area);
    for (const name of ['edgeA', 'edgeB'] as const) {
      expect(read({ [name]: [] }).weldArea).toBeCloseTo(80, 9);
      for (const area of areas.slice(1)) expect(read({ [name]: [] })).not.toHaveProperty(area);
    }
    expect([whole.sidewallA, whole.sidewallB]).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(2, 9),
    ]);
    expect(read({ fusionA: [] })).not.toHaveProperty('sidewallA');
    expect(read({ fusionB: [] })).not.toHaveProperty('sidewallB');
  });
  it('holds strip metal under its back only where it lies on one, in a mirror too', () => {
    const below: Point[] = [
      [-2, -1],
      [0, -1],
      [2, -1],
    ];
    for (const mirror of [1, -1]) {
      const turned = Object.fromEntries(
        Object.entries({ ...marks, rootBead: below }).map(([name, value]) => {
          if (typeof value === 'boolean') return [name, value];
          const flip = ([x, y]: Point): Point => [mirror * x, y];
          return [
            name,
            typeof value[0] === 'number'
              ? flip(value as Point)
              : (value as readonly Point[]).map(flip),
          ];
        }),
      ) as unknown as GrooveMarks;
      const [without, onStrip] = [false, true].map((strip) =>
        readGroove({ ...turned, onStrip: strip }),
      );
      expect(without?.weldArea).toBeGreaterThan(85);
      expect(onStrip?.weldArea).toBeCloseTo(without?.weldArea ?? 0, 9);
      const under = (without?.weldArea ?? 0) - 80;
      expect(without?.meltedArea).toBeCloseTo(30, 9);
      expect(onStrip?.meltedArea).toBeCloseTo(30 + under, 9);
      expect(onStrip?.depositArea).toBeCloseTo(50, 9);
    }
  });
  it('adds its pieces up by hand: a trapezoid between straight edges', () => {
    const outline = {
      front: [
        [-3, 4],
        [3, 4],
      ] as [Point, Point],
      back: [
        [-2, 0],
        [2, 0],
      ] as [Point, Point],
      cap: [
        [-3, 4],
        [3, 4],
      ] as Outline,
      root: [
        [-2, 0],
        [2, 0],
      ] as Outline,
      fusionA: [
        [-3, 4],
        [-2, 0],
      ] as Outline,
      fusionB: [
        [3, 4],
        [2, 0],
      ] as Outline,
      edgeA: [
        [-2, 4],
        [-1, 0],
      ] as Outline,
      edgeB: [
        [2, 4],
        [2, 0],
      ] as Outline,
    };
    // 10/2 · 4; one wide beside edge A, and a triangle of 1 by 4 beside edge B.
    expect(grooveAreas(false, outline)).toEqual({
      weldArea: expect.closeTo(20, 9),
      meltedArea: expect.closeTo(4 + 2, 9),
      depositArea: expect.closeTo(14, 9),
      dilution: expect.closeTo(30, 9),
    });
  });
});
