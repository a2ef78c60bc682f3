/** What is drawn over a section: against nearest points found by looking, and areas by the rule of a trapezoid. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FilletMarks } from '../../../lib/geometry/etched-fillet.ts';
import type { GrooveMarks } from '../../../lib/geometry/groove-marks.ts';
import { type Homography, mapped } from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import {
  type DrawnSection,
  flat,
  footOn,
  inPicture,
  movedDrawing,
} from '../../../lib/section/drawn-section.ts';
import { drawnFillet, filletLines } from '../../../lib/section/fillet-lines.ts';
import { grooveLines } from '../../../lib/section/groove-lines.ts';
import { scaleBar } from '../../../lib/section/scale-bar.ts';
import { areaOf } from '../geometry/polygon-oracle.ts';

const coordinate = fc.integer({ min: -50, max: 50 });
const point = fc.tuple(coordinate, coordinate);
const apart = ([ax, ay]: Point, [bx, by]: Point) => Math.hypot(ax - bx, ay - by);
/** Twice as large, and moved. */
const doubled: Homography = [
  [2, 0, 7],
  [0, 2, -3],
  [0, 0, 1],
];
/** Points with x of 10 or more lie beyond its horizon. */
const horizon: Homography = [
  [1, 0, 0],
  [0, 1, 0],
  [-0.1, 0, 1],
];

describe('footOn', () => {
  it('is nearer than any other place of the line, ends included', () => {
    fc.assert(
      fc.property(point, point, point, (from, a, b) => {
        const foot = footOn(from, a, b);
        const looked = Array.from({ length: 101 }, (_, i): Point => {
          const share = i / 100;
          return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
        });
        for (const place of looked)
          expect(apart(from, foot)).toBeLessThanOrEqual(apart(from, place) + 1e-9);
        expect(apart(a, foot) + apart(foot, b)).toBeCloseTo(apart(a, b), 9);
      }),
      { numRuns: 60 },
    );
    expect(footOn([3, 4], [1, 1], [1, 1])).toEqual([1, 1]);
  });
});

describe('movedDrawing', () => {
  const drawing = (corner: Point): DrawnSection => ({
    areas: [{ of: 'deposit', points: [[0, 0], [1, 0], corner] }],
    lines: [
      {
        as: 'plate',
        points: [
          [0, 0],
          [2, 5],
        ],
      },
    ],
    labels: [
      {
        text: 'A',
        reading: 'legA',
        between: [
          [0, 0],
          [4, 4],
        ],
        awayFrom: [1, 2],
      },
      {
        text: 'B',
        reading: 'legB',
        between: [
          [1, 1],
          [4, 4],
        ],
      },
    ],
  });

  it('moves every point of it, and nothing else', () => {
    const moved = movedDrawing(drawing([1, 1]), doubled);
    expect(moved?.areas).toEqual([
      {
        of: 'deposit',
        points: [
          [7, -3],
          [9, -3],
          [9, -1],
        ],
      },
    ]);
    expect(moved?.lines).toEqual([
      {
        as: 'plate',
        points: [
          [7, -3],
          [11, 7],
        ],
      },
    ]);
    expect(moved?.labels).toEqual([
      {
        text: 'A',
        reading: 'legA',
        between: [
          [7, -3],
          [15, 5],
        ],
        awayFrom: [9, 1],
      },
      {
        text: 'B',
        reading: 'legB',
        between: [
          [9, -1],
          [15, 5],
        ],
      },
    ]);
    expect(movedDrawing(drawing([1, 1]), flat)).toEqual(drawing([1, 1]));
  });

  it('is undone by going back into the picture', () => {
    const moved = movedDrawing(drawing([1, 1]), doubled) as DrawnSection;
    expect(inPicture(moved, doubled)).toEqual(drawing([1, 1]));
  });

  it('draws nothing where a point has no place', () => {
    expect(movedDrawing(drawing([12, 1]), horizon)).toBeUndefined();
    expect(movedDrawing(drawing([1, 1]), horizon)).toBeDefined();
  });
});

describe('filletLines', () => {
  const marks: FilletMarks = {
    root: [0, 0],
    toeA: [8, 0],
    toeB: [0, 6],
    face: [],
    fusion: [],
    plateA: [],
    plateB: [],
    undercutA: [],
    undercutB: [],
  };

  it('of bare toes is the triangle of 6, 8 and 10 with its height of 4.8', () => {
    const lines = filletLines(marks);
    if (!lines) throw new Error('no lines');
    expect(lines.chord).toEqual([
      [8, 0],
      [0, 6],
    ]);
    expect(lines.deposit).toEqual([
      [0, 0],
      [8, 0],
      [0, 6],
    ]);
    expect(lines.face).toEqual([]);
    expect(lines.melted).toEqual([]);
    const [from, to] = lines.throat as [Point, Point];
    expect(apart(from, to)).toBeCloseTo(4.8, 12);
    const drawn = drawnFillet(lines);
    expect(drawn.areas.map(({ of }) => of)).toEqual(['deposit']);
    expect(drawn.lines[0]).toEqual({
      as: 'plate',
      points: [
        [8, 0],
        [0, 0],
        [0, 6],
      ],
    });
    expect(drawn.labels.map(({ between }) => between)).toEqual([
      [
        [0, 0],
        [8, 0],
      ],
      [
        [0, 0],
        [0, 6],
      ],
      lines.throat,
    ]);
  });

  it('with a straight face and a fusion line has their areas, whichever order they were marked in', () => {
    const face: Point[] = [
      [2, 4.5],
      [6, 1.5],
      [4, 3],
    ];
    const fusion: Point[] = [
      [-1, 3],
      [-1, -1],
      [4, -1],
    ];
    const lines = filletLines({ ...marks, face, fusion });
    if (!lines) throw new Error('no lines');
    expect(areaOf([...lines.deposit])).toBeCloseTo(24, 6);
    expect(lines.face[0]).toEqual([8, 0]);
    expect(lines.face.at(-1)).toEqual([0, 6]);
    expect(lines.melted[0]).toEqual([0, 0]);
    // More than the bent line through the marks, which its curve goes round.
    expect(areaOf([...lines.melted])).toBeGreaterThan(10);
    expect(drawnFillet(lines).areas.map(({ of }) => of)).toEqual(['deposit', 'melted']);
  });

  it('draws in the picture what was found on the squared-up section', () => {
    const lines = filletLines(marks, doubled);
    expect(lines?.chord).toEqual([
      [8, 0],
      [0, 6],
    ]);
  });

  it('draws nothing where root or a toe has no place', () => {
    for (const change of [{ root: [12, 0] }, { toeA: [12, 0] }, { toeB: [12, 0] }] as const)
      expect(filletLines({ ...marks, ...change }, horizon)).toBeUndefined();
    expect(filletLines(marks, horizon)).toBeDefined();
  });
});

describe('grooveLines', () => {
  /** A slot 4 wide through a plate of 10, square edges 1 inside, straight all round. */
  const marks: GrooveMarks = {
    toeA: [0, 10],
    toeB: [6, 10],
    rootA: [0, 0],
    rootB: [6, 0],
    cap: [[3, 12]],
    rootBead: [[3, -1]],
    fusionA: [
      [0, 7],
      [0, 5],
      [0, 2],
    ],
    fusionB: [
      [6, 7],
      [6, 5],
      [6, 2],
    ],
    edgeA: [
      [1, 10],
      [1, 0],
    ],
    edgeB: [
      [5, 10],
      [5, 0],
    ],
    frontA: [],
    frontB: [],
    backA: [],
    backB: [],
    undercutA: [],
    undercutB: [],
    onStrip: false,
  };
  const kinds = (change: Partial<GrooveMarks>, map?: Homography) => {
    const drawn = grooveLines({ ...marks, ...change }, map);
    return (
      drawn && {
        areas: drawn.areas.map(({ of }) => of),
        lines: drawn.lines.map(({ as }) => as),
      }
    );
  };
  const all = ['chord', 'chord', 'throat', 'plate', 'plate', 'face', 'face', 'fusion', 'fusion'];

  it('have the areas of the slot, and of what melted beside it', () => {
    const drawn = grooveLines({ ...marks, cap: [[3, 10]], rootBead: [[3, 0]] });
    if (!drawn) throw new Error('nothing drawn');
    expect(drawn.areas.map(({ points }) => Number(areaOf([...points]).toFixed(9)))).toEqual([
      60, 10, 10,
    ]);
    const throat = drawn.lines.find(({ as }) => as === 'throat')?.points;
    expect(throat).toEqual([
      [3, 0],
      [3, 10],
    ]);
  });

  it('show each line only where it was marked', () => {
    expect(kinds({})).toEqual({ areas: ['deposit', 'melted', 'melted'], lines: all });
    expect(kinds({ cap: [] })?.lines).toEqual(all.toSpliced(5, 1));
    expect(kinds({ rootBead: [] })?.lines).toEqual(all.toSpliced(6, 1));
    expect(kinds({ fusionA: [] })).toEqual({ areas: ['deposit'], lines: all.slice(0, -1) });
    expect(kinds({ fusionB: [] })).toEqual({ areas: ['deposit'], lines: all.slice(0, -1) });
    expect(kinds({ edgeA: [[1, 10]] })?.areas).toEqual(['deposit']);
    expect(kinds({ edgeB: [] })?.areas).toEqual(['deposit']);
  });

  it('show the root in a strip as fusion, which melts the strip', () => {
    expect(kinds({ onStrip: true })).toEqual({
      areas: ['deposit', 'melted', 'melted', 'melted'],
      lines: all.with(6, 'fusion'),
    });
    expect(kinds({ onStrip: true, rootBead: [] })?.areas).toEqual(['deposit', 'melted', 'melted']);
  });

  it('label the highest place of the cap and the lowest of the root', () => {
    const labels = grooveLines(marks)?.labels ?? [];
    const between = (name: string) => labels.find(({ reading }) => reading === name)?.between;
    expect(between('capHeight')).toEqual([
      [0, 10],
      [3, 12],
    ]);
    expect(between('rootHeight')).toEqual([
      [3, -1],
      [3, -1],
    ]);
    expect(between('sidewallA')?.[0]).toEqual([0, 10]);
    expect(between('sidewallA')?.[1][1]).toBeCloseTo(5, 0);
    expect(between('sidewallB')?.[0]).toEqual([6, 10]);
  });

  it('draw nothing where a mark has no place, and the same in a picture twice as large', () => {
    expect(kinds({ cap: [[12, 12]] }, horizon)).toBeUndefined();
    expect(kinds({ rootB: [12, 0] }, horizon)).toBeUndefined();
    const [plain, moved] = [grooveLines(marks), grooveLines(marks, doubled)];
    const round = (drawn: DrawnSection | undefined) =>
      drawn?.lines.flatMap(({ points }) => points.flat().map((one) => Number(one.toFixed(6))));
    expect(round(moved)).toEqual(round(plain));
  });
});

describe('scaleBar', () => {
  const picture = { width: 200, height: 100 };

  it('is the longest that fits a quarter of the width, and begins in the upper right', () => {
    const bar = (lengths: number[]) => scaleBar(flat, picture, lengths);
    expect(bar([1, 20, 10])?.ends).toEqual([
      [140, 8],
      [160, 8],
    ]);
    expect(bar([10, 50])?.length).toBe(50);
    expect(bar([10, 50.1])?.length).toBe(10);
    expect(bar([51])).toBeUndefined();
    expect(bar([])).toBeUndefined();
  });

  it('is as long on the section as it says, however the picture is tilted or turned', () => {
    for (const map of [
      doubled,
      [
        [0.1, 0.02, 3],
        [-0.03, 0.12, -50],
        [0.0004, 0.0002, 1],
      ],
      [
        [0, -0.1, 0],
        [0.1, 0, 90],
        [0, 0, 1],
      ],
    ] as Homography[]) {
      const bar = scaleBar(map, picture, [1, 2, 5]);
      if (!bar) throw new Error('no bar');
      const [from, to] = bar.ends.map((end) => mapped(map, end)) as [Point, Point];
      expect(apart(from, to)).toBeCloseTo(bar.length, 9);
      expect(bar.ends[0]).toEqual([140, 8]);
      expect(bar.ends[1][0]).toBeGreaterThan(140);
    }
  });

  it('is not drawn beyond the horizon', () => {
    expect(scaleBar(horizon, picture, [1])).toBeUndefined();
  });
});
