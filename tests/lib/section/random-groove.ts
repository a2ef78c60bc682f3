/** Made-up groove sections whose true sizes are known, for tests of what is read from their marks. */
import type { GrooveMarks } from '../../../lib/geometry/groove-marks.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { areaOf } from '../geometry/polygon-oracle.ts';

const lists = [
  'cap',
  'rootBead',
  'fusionA',
  'fusionB',
  'edgeA',
  'edgeB',
  'frontA',
  'frontB',
  'backA',
  'backB',
  'undercutA',
  'undercutB',
] as const;
const singles = ['toeA', 'toeB', 'rootA', 'rootB'] as const;

export const mappedGroove = (marks: GrooveMarks, place: (point: Point) => Point): GrooveMarks => ({
  ...marks,
  ...Object.fromEntries(singles.map((name) => [name, place(marks[name])])),
  ...Object.fromEntries(lists.map((name) => [name, marks[name].map(place)])),
});

const inside = (count: number) => Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));

/** A parabola over the straight line from a to b, rising by `rise` toward `up`. */
const bow =
  (a: Point, b: Point, rise: number, up: 1 | -1) =>
  (share: number): Point => [
    a[0] + share * (b[0] - a[0]),
    a[1] + share * (b[1] - a[1]) + up * 4 * rise * share * (1 - share),
  ];

/**
 * A V groove with a land: front at y = thickness, back at y = 0, plate A on the left. Cap and root bead
 * are parabolas, the edges of the melted metal cubic Bézier curves. Marks without error, and the truth.
 */
export function randomGroove(random: () => number, onStrip = random() < 0.5) {
  const between = (low: number, high: number) => low + (high - low) * random();
  const thickness = between(250, 500);
  const half = between(30, 60);
  const land = random() < 0.5 ? 0 : between(0.08, 0.2) * thickness;
  const edge = (side: 1 | -1): Point[] => {
    const lean = Math.tan((between(20, 35) * Math.PI) / 180);
    const points: Point[] = [
      [side * (half + lean * (thickness - land)), thickness],
      [side * half, land],
    ];
    return land > 0 ? [...points, [side * half, 0]] : points;
  };
  const [edgeA, edgeB] = [edge(-1), edge(1)];
  const fused = (corners: readonly Point[], side: 1 | -1) => {
    const toe: Point = [(corners[0] as Point)[0] + side * between(8, 50), thickness];
    const root: Point = [side * (half + between(5, 40)), 0];
    const control = (share: number): Point => [
      toe[0] + share * (root[0] - toe[0]) + side * between(-30, 40),
      thickness * (1 - share),
    ];
    const [first, second] = [control(1 / 3), control(2 / 3)];
    const at = (t: number): Point => {
      const u = 1 - t;
      const mix = (axis: 0 | 1) =>
        u ** 3 * toe[axis] +
        3 * u * u * t * first[axis] +
        3 * u * t * t * second[axis] +
        t ** 3 * root[axis];
      return [mix(0), mix(1)];
    };
    return { toe, root, at };
  };
  const [a, b] = [fused(edgeA, -1), fused(edgeB, 1)];
  const capWidth = b.toe[0] - a.toe[0];
  const rootWidth = b.root[0] - a.root[0];
  const bulge = capWidth * between(-0.06, 0.1);
  const drop = rootWidth * (onStrip ? between(0.05, 0.3) : between(-0.2, 0.3));
  const capAt = bow(a.toe, b.toe, bulge, 1);
  const rootAt = bow(a.root, b.root, drop, -1);
  const flat = (side: 1 | -1, from: number, y: number): Point[] =>
    [30, 140, 260].map((reach) => [from + side * reach, y]);
  const marks: GrooveMarks = {
    toeA: a.toe,
    toeB: b.toe,
    rootA: a.root,
    rootB: b.root,
    cap: inside(5).map(capAt),
    rootBead: inside(3).map(rootAt),
    fusionA: inside(5).map(a.at),
    fusionB: inside(5).map(b.at),
    edgeA,
    edgeB,
    frontA: flat(-1, a.toe[0], thickness),
    frontB: flat(1, b.toe[0], thickness),
    backA: flat(-1, a.root[0], 0),
    backB: flat(1, b.root[0], 0),
    undercutA: [],
    undercutB: [],
    onStrip,
  };
  const fine = inside(150);
  const curve = (from: Point, at: (t: number) => Point, to: Point) => [from, ...fine.map(at), to];
  const cap = curve(a.toe, capAt, b.toe);
  const root = curve(a.root, rootAt, b.root);
  const [sideA, sideB] = [curve(a.toe, a.at, a.root), curve(b.toe, b.at, b.root)];
  const weldArea = areaOf([...cap, ...sideB, ...root.toReversed(), ...sideA.toReversed()]);
  const prepared = areaOf([...edgeA, ...edgeB.toReversed()]);
  // Where fusion stays inside the prepared edge somewhere, outlines cross: signed shoelaces, by hand.
  const shoelace = (points: readonly Point[]) =>
    points.reduce((sum, [x, y], i) => {
      const [u, v] = points[(i + 1) % points.length] as Point;
      return sum + (x * v - u * y) / 2;
    }, 0);
  const meltedA = shoelace([...sideA, ...edgeA.toReversed()]);
  const meltedB = -shoelace([...sideB, ...edgeB.toReversed()]);
  const strip = onStrip ? areaOf(root) : 0;
  const meltedArea = meltedA + meltedB + strip;
  const leastApart = (one: readonly Point[], other: readonly Point[]) =>
    Math.min(
      ...one.map(([x, y]) =>
        Math.sqrt(
          other.reduce((least, [u, v]) => Math.min(least, (x - u) ** 2 + (y - v) ** 2), 1e9),
        ),
      ),
    );
  const lowered = cap.map(([x, y]): Point => [x, Math.min(y, thickness)]);
  const raised = root.map(([x, y]): Point => [x, Math.max(y, 0)]);
  const truth: Record<string, number> = {
    capWidth,
    rootWidth,
    capHeight: Math.max(0, bulge),
    underfill: Math.max(0, -bulge),
    rootHeight: Math.max(0, drop),
    rootHollow: Math.max(0, -drop),
    thickness,
    throat: leastApart(raised, lowered),
    ...(onStrip ? {} : { wholeThickness: leastApart(root, cap) }),
    ...sidewall('A', sideA, edgeA, -1),
    ...sidewall('B', sideB, edgeB, 1),
    weldArea,
    meltedArea,
    depositArea: weldArea - meltedArea,
    dilution: (100 * meltedArea) / weldArea,
  };
  return { marks, truth, prepared };
}

/**
 * Of all places beside the edge, how far into the plate the melted metal reaches, point by point along
 * a fine curve. Beside means: not past the line across either end of the edge.
 */
function sidewall(plate: string, fusion: readonly Point[], edge: readonly Point[], side: 1 | -1) {
  const ends = [
    [edge[0], edge[1]],
    [edge.at(-1), edge.at(-2)],
  ] as [Point, Point][];
  const isPast = (point: Point) =>
    ends.some(
      ([end, next]) =>
        (next[0] - end[0]) * (point[0] - end[0]) + (next[1] - end[1]) * (point[1] - end[1]) < 0,
    );
  const depths = fusion
    .filter((point) => !isPast(point))
    .map(([x, y]) => {
      const perPiece = edge.slice(1).map(([bx, by], i) => {
        const [ax, ay] = edge[i] as Point;
        const length = Math.hypot(bx - ax, by - ay);
        const along = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length;
        const across = (side * ((x - ax) * (ay - by) + (y - ay) * (bx - ax))) / length;
        const over = along < 0 ? along : Math.max(0, along - length);
        return { away: Math.hypot(across, over), inPlate: across > 0 };
      });
      const near = perPiece.reduce((best, one) => (one.away < best.away ? one : best));
      return near.inPlate ? near.away : -near.away;
    });
  return {
    [`sidewall${plate}`]: Math.min(...depths),
    [`sidewallMost${plate}`]: Math.max(...depths),
  };
}
