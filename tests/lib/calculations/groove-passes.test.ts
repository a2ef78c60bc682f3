/**
 * The plan of a groove against polygon libraries and plain geometry.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import calculation from '../../../lib/calculations/groove-passes.ts';
import type { Outline, Point } from '../../../lib/geometry/outline.ts';
import type { PassMap } from '../../../lib/geometry/pass-map.ts';
import { NoAnswer } from '../../../lib/no-answer.ts';
import { expectToFill } from '../geometry/holds-together.ts';

const inch = 25.4;
const positions = ['flat', 'horizontal', 'vertical', 'overhead'] as const;
type Asked = Parameters<typeof calculation.compute>[0];

/** 3/8 in plate, 45°, 1/4 in opening on a strip, 1/16 in cap, 1/8 in E7018 as the demo shop burns it. */
const usual: Asked = {
  thickness: 0.375,
  rootOpening: 0.25,
  includedAngle: 45,
  rootFace: 0,
  capHeight: 0.0625,
  backing: 'strip',
  position: 'flat',
  passArea: undefined,
  diameter: 0.125,
  electrodeLength: 14,
  stub: 2,
  coatingFraction: 0.3,
  recovery: 0.7,
  density: 0.2836,
  runOut: 4.5,
  rootPassThickness: 0.125,
  fillPassThickness: 0.125,
};
const plan = (asked: Partial<Asked> = {}) => calculation.compute({ ...usual, ...asked });
const mapOf = (asked: Partial<Asked> = {}) => plan(asked).map as PassMap;

/** The groove with its cap, as it lies in the position. */
function joint(asked: Partial<Asked>): Outline {
  const {
    thickness: t,
    rootOpening: g,
    includedAngle,
    rootFace: f,
    capHeight,
    position,
  } = {
    ...usual,
    ...asked,
  };
  const face = g / 2 + (t - f) * Math.tan((includedAngle * Math.PI) / 360);
  const cap: Point[] = [];
  for (let i = 0; i <= 400; i++) {
    const x = face * (1 - i / 200);
    cap.push([x, t + capHeight * (1 - (x / face) ** 2)]);
  }
  const root: Point[] =
    g > 0
      ? [
          [-g / 2, f],
          [-g / 2, 0],
          [g / 2, 0],
          [g / 2, f],
        ]
      : [[0, f]];
  const lying: Record<(typeof positions)[number], (point: Point) => Point> = {
    flat: (point) => point,
    vertical: (point) => point,
    horizontal: ([x, y]) => [y, x],
    overhead: ([x, y]) => [x, -y],
  };
  return [...root, ...cap]
    .filter(([x, y], i, all) => x !== all.at(i - 1)?.[0] || y !== all.at(i - 1)?.[1])
    .map(([x, y]) => lying[position]([x * inch, y * inch]));
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Nothing, or from a millionth of an inch up; what lies between is held to nothing further down. */
const orNone = (max: number) => fc.oneof(fc.constant(0), number(1e-6, max));
const anyGroove = fc.record({
  thickness: number(0.06, 2),
  rootOpening: orNone(1),
  includedAngle: fc.oneof(fc.constantFrom(0, 45, 60, 75), number(0, 120)),
  rootFace: orNone(0.25),
  capHeight: orNone(0.25),
  backing: fc.constantFrom('strip' as const, 'open root' as const),
  position: fc.constantFrom(...positions),
  passArea: number(0.02, 0.5),
  rootPassThickness: number(0.03, 0.5),
  fillPassThickness: number(0.03, 0.5),
});

/** Only what has an answer; the rest must be a NoAnswer. */
function planned(asked: Partial<Asked>): ReturnType<typeof plan> {
  try {
    return plan(asked);
  } catch (thrown) {
    fc.pre(!(thrown instanceof NoAnswer));
    throw thrown;
  }
}

describe('a groove filled with passes', () => {
  it.each(['rootOpening', 'rootFace', 'capHeight'] as const)(
    'is planned alike with no %s and with one that vanishes',
    (size) => {
      // Closed root faces are no part of the groove; open ones are, however narrow. So the opening
      // vanishes between sharp edges.
      const rootFace = size === 'rootOpening' ? 0 : 0.0625;
      const groove = { thickness: 0.5, rootOpening: 0.125, rootFace, capHeight: 0.0625 };
      const areas = (value: number) => {
        const { map } = plan({ ...groove, includedAngle: 75, [size]: value });
        return (map as PassMap).passes.map(({ area }) => area);
      };
      for (const tiny of [1.5e-323, 1e-300, 1e-12, 1e-9]) {
        expect(areas(tiny)).toHaveLength(areas(0).length);
        for (const [index, area] of areas(tiny).entries())
          expect(area).toBeCloseTo(areas(0)[index] as number, 5);
      }
    },
  );

  it('is filled without gap or overlap, over the whole range of grooves', () => {
    fc.assert(
      fc.property(anyGroove, (asked) => {
        const found = planned(asked);
        fc.pre(found.passes <= 60);
        expectToFill(found.map as PassMap, joint(asked));
      }),
      { numRuns: 80 },
    );
  }, 60_000);

  it('is filled where beads stand beside the top of a root face', () => {
    for (const includedAngle of [60, 90, 120]) {
      const asked = {
        thickness: 0.75,
        rootOpening: 0.5,
        rootFace: 0.1,
        includedAngle,
        rootPassThickness: 0.3125,
        passArea: 0.02,
      };
      expectToFill(mapOf(asked), joint(asked));
    }
  });

  it('begins where closed root faces end', () => {
    const asked = { thickness: 0.5, rootOpening: 0, rootFace: 0.25 };
    const { layers, plan: passes } = plan(asked);
    expect(layers).toBe(2);
    for (const { area } of passes) expect(area).toBeGreaterThan(0);
    expectToFill(mapOf(asked), joint(asked));
  });

  it('adds up to the groove and its cap', () => {
    fc.assert(
      fc.property(anyGroove, (asked) => {
        const found = planned(asked);
        const { thickness: t, rootOpening: g, rootFace: f, includedAngle, capHeight } = asked;
        const tangent = Math.tan((includedAngle * Math.PI) / 360);
        const exact =
          g * t + (t - f) ** 2 * tangent + (2 / 3) * (g + 2 * (t - f) * tangent) * capHeight;
        const sum = found.plan.reduce((total, { area = 0 }) => total + area, 0);
        expect(sum / exact).toBeCloseTo(1, 7);
        expect(found.jointArea / exact).toBeCloseTo(1, 7);
      }),
    );
  });

  it('keeps root and fill layers within the limits of the position, measured on the drawing', () => {
    const rootLimit = { flat: 10, horizontal: 8, vertical: 12.7, overhead: 8 };
    fc.assert(
      fc.property(anyGroove, (asked) => {
        const found = planned({ ...asked, capHeight: 0 });
        const axis = asked.position === 'horizontal' ? 0 : 1;
        const tops: number[] = [];
        const feet: number[] = [];
        for (const { layer, outline } of (found.map as PassMap).passes)
          for (const point of outline) {
            const up = Math.abs(point[axis]);
            tops[layer - 1] = Math.max(tops[layer - 1] ?? 0, up);
            feet[layer - 1] = Math.min(feet[layer - 1] ?? Infinity, up);
          }
        for (const [index, top] of tops.entries()) {
          const limit = index === 0 ? rootLimit[asked.position] : 5;
          expect(top - (feet[index] as number)).toBeLessThanOrEqual(limit + 1e-6);
        }
      }),
    );
  });

  it.each(['thickness', 'rootOpening', 'includedAngle', 'capHeight'] as const)(
    'never needs fewer passes or layers with more %s',
    (name) => {
      const range = { thickness: 2, rootOpening: 1, includedAngle: 120, capHeight: 0.25 };
      fc.assert(
        fc.property(anyGroove, number(0, 1), (asked, share) => {
          const more = { ...asked, [name]: asked[name] + share * (range[name] - asked[name]) };
          const [small, large] = [planned(asked), planned(more)];
          expect(large.layers).toBeGreaterThanOrEqual(small.layers);
          if (asked.backing === 'strip') expect(large.passes).toBeGreaterThanOrEqual(small.passes);
        }),
      );
    },
  );

  it.skipIf(process.env.STRYKER_MUTATOR_WORKER)('takes at most 5 ms for its largest plan', () => {
    const large = { thickness: 2, rootOpening: 0.5, includedAngle: 60, passArea: 0.0125 };
    expect(plan(large).passes).toBeGreaterThan(250);
    const times = Array.from({ length: 20 }, () => {
      const start = performance.now();
      plan(large);
      return performance.now() - start;
    });
    expect(Math.min(...times)).toBeLessThan(5);
  });
});

describe('the order of passes (common practice, no source)', () => {
  it('goes from the root out, kind by kind, and from the lower plate up in a horizontal groove', () => {
    const { plan: passes, map } = plan({ position: 'horizontal' });
    expect(passes.map(({ kind }) => kind)).toEqual([
      'root',
      'fill',
      'fill',
      'cover',
      'cover',
      'cover',
    ]);
    const heights = (map as PassMap).passes.map(({ layer, outline }) => ({
      layer,
      up: outline.reduce((sum, [, y]) => sum + y, 0) / outline.length,
    }));
    for (let i = 1; i < heights.length; i++)
      if (heights[i]?.layer === heights[i - 1]?.layer)
        expect(heights[i]?.up).toBeGreaterThan(heights[i - 1]?.up as number);
  });

  it('plans 3/8 in plate in three layers and four to six passes', () => {
    const { layers, passes } = plan();
    expect(layers).toBe(3);
    expect(passes).toBeGreaterThanOrEqual(4);
    expect(passes).toBeLessThanOrEqual(6);
  });

  it('plans 1 in plate in about as many passes as electrodes: 35 of 1/8 in for 7 in of joint', () => {
    const { passes, runOutEach, layers } = plan({ thickness: 1, capHeight: 3 / 32 });
    expect(layers).toBe(8);
    expect((passes * 7) / (runOutEach as number)).toBeCloseTo(35, -0.5);
  });

  it('tells the depth left under flush after each layer, nothing after the cover', () => {
    const left = plan().plan.map(({ depthLeft }) => depthLeft);
    expect(left).toEqual([0.25, 0.125, 0.125, 0, 0, 0]);
  });

  it('adds in each layer, bead by bead, the width of the groove at its face', () => {
    const { plan: passes } = plan({ capHeight: 0, thickness: 0.75 });
    const widths = new Map<number, number>();
    for (const { layer = 0, step = 0 } of passes)
      widths.set(layer, (widths.get(layer) ?? 0) + step);
    for (const { layer = 0, depthLeft } of passes)
      expect(widths.get(layer)).toBeCloseTo(
        0.25 + 2 * (0.75 - (depthLeft ?? 0)) * Math.tan(Math.PI / 8),
        6,
      );
  });

  it('covers all of a pass with the one pass above it, between upright walls', () => {
    const { plan: passes } = plan({ includedAngle: 0, thickness: 0.25, passArea: 0.1 });
    expect(passes).toMatchObject([{ kind: 'root' }, { over: 'pass 1', covers: 100 }]);
  });

  it('says that a single pass is root and cover in one', () => {
    expect(plan({ thickness: 0.125, includedAngle: 60, rootOpening: 0.0625 }).plan).toMatchObject([
      { kind: 'root and cover' },
    ]);
  });
});

describe('an open root', () => {
  it('takes a single root pass and no strip', () => {
    const asked = {
      backing: 'open root',
      rootOpening: 0.125,
      rootFace: 0.09375,
      includedAngle: 75,
      passArea: 0.005,
      rootPassThickness: 0.25,
    } as const;
    const { plan: passes, map, because } = plan(asked);
    expect(passes.filter(({ layer }) => layer === 1)).toHaveLength(1);
    expect((map as PassMap).base.map(({ part }) => part)).toEqual(['plate', 'plate']);
    expect(because.some(({ text }) => text.includes('single root pass'))).toBe(true);
    expect(mapOf().base.map(({ part }) => part)).toEqual(['plate', 'plate', 'backing strip']);
  });
});

describe('refusals and cautions', () => {
  const fieldRefused = (typed: Record<string, string>) => {
    const all = { thickness: '3/8 in', rootOpening: '1/4 in', includedAngle: '45', ...typed };
    const answered = answer(calculation, all);
    return answered.ok ? undefined : answered.problems[0]?.field;
  };
  it.each([
    [{ rootFace: '1/2 in' }, 'rootFace'],
    [{ capHeight: '3/8 in' }, 'capHeight'],
    [{ rootOpening: '1/32 in', includedAngle: '0', capHeight: '1/16 in' }, 'capHeight'],
    [{ rootOpening: '0', includedAngle: '0' }, 'rootOpening'],
    [{ passArea: '0.001 in2', thickness: '2 in' }, 'passArea'],
    [{ thickness: '12 in' }, 'thickness'],
    [{ stub: '14 in' }, 'stub'],
  ])('refuses %j', (typed, field) => {
    expect(fieldRefused(typed)).toBe(field);
  });

  it('takes the limit instead of a thicker layer, and says so', () => {
    const { because, plan: passes } = plan({ thickness: 1, fillPassThickness: 0.25 });
    expect(because.some(({ kind }) => kind === 'caution')).toBe(true);
    expect((passes[0]?.depthLeft ?? 0) - (passes[1]?.depthLeft ?? 0)).toBeLessThanOrEqual(5 / inch);
    expect(plan().because.some(({ kind }) => kind === 'caution')).toBe(false);
  });
});
