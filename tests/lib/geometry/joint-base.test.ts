/** The plates and the strip that the passes are drawn on: they carry the weld and never cover it. */
import { describe, expect, it } from 'vitest';
import { filletPasses } from '../../../lib/geometry/fillet-passes.ts';
import { groovePasses } from '../../../lib/geometry/groove-passes.ts';
import type { GrooveSection } from '../../../lib/geometry/groove-section.ts';
import { type Outline, type Point, signedArea } from '../../../lib/geometry/outline.ts';
import { areaShared } from './polygon-oracle.ts';

const positions = ['flat', 'horizontal', 'vertical', 'overhead'] as const;
type Position = (typeof positions)[number];
const half = Math.SQRT1_2;
/** From each position back to the joint as it stands on the bench. */
const onBench: Record<Position, (point: Point) => Point> = {
  horizontal: (point) => point,
  vertical: (point) => point,
  flat: ([x, y]) => [(y - x) * half, (x + y) * half],
  overhead: ([x, y]) => [-y, x],
};
const spans = (outline: Outline) => {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    low: Math.min(...ys),
    high: Math.max(...ys),
  };
};

describe.each(positions)('a fillet in position %s', (position) => {
  const leg = 8;
  const { map } = filletPasses(leg, 0.5, [1, 2], position);
  const [lower, upper] = map.base.map(({ outline }) => outline.map(onBench[position]));

  it('lies in the corner of two plates as thick as its leg, one standing on the other', () => {
    const down = spans(lower as Outline);
    expect(down.high).toBeCloseTo(0, 9);
    expect(down.low).toBeCloseTo(-leg, 9);
    expect(down.right).toBeCloseTo(-down.left, 9);
    expect(down.right).toBeGreaterThan(1.5 * leg);
    const up = spans(upper as Outline);
    expect(up.low).toBeCloseTo(0, 9);
    expect(up.right).toBeCloseTo(0, 9);
    expect(up.left).toBeCloseTo(-leg, 9);
    expect(up.high).toBeCloseTo(down.right, 9);
    expect(lower).toHaveLength(4);
    expect(upper).toHaveLength(4);
  });

  it('covers no plate', () => {
    for (const { outline } of map.base)
      for (const pass of map.passes) expect(areaShared(outline, pass.outline)).toBeLessThan(1e-6);
  });

  it('shows the whole of it', () => {
    const all = [...map.base, ...map.passes].flatMap(({ outline }) => outline);
    const { left, right, low, high } = spans(all);
    expect(map.bounds).toEqual({ left, right, bottom: low, top: high });
  });
});

describe('gravity', () => {
  const facing = (position: Position) => {
    const { map } = filletPasses(8, 0, [1], position);
    const points = map.passes.flatMap(({ outline }) => outline);
    return points.reduce(([x, y], [px, py]): Point => [x + px, y + py], [0, 0] as Point);
  };
  it('has a flat fillet look up, a horizontal one rest on its lower plate, an overhead one hang', () => {
    const [x, y] = facing('flat');
    expect(x).toBeCloseTo(0, 9);
    expect(y).toBeGreaterThan(0);
    expect(facing('horizontal').every((sum) => sum > 0)).toBe(true);
    const [out, down] = facing('overhead');
    expect(out).toBeGreaterThan(0);
    expect(down).toBeLessThan(0);
  });
});

const groove: GrooveSection = {
  thickness: 12,
  rootOpening: 3,
  includedAngle: 60,
  rootFace: 2,
  capHeight: 1,
};
const joint = (change: Partial<GrooveSection>, strip: boolean, position: Position = 'flat') =>
  groovePasses({ ...groove, ...change }, [4, 12], [1, 2], strip, position).map;

describe('a groove', () => {
  it('has bevels that rise from the root face at half the groove angle', () => {
    const [left, right] = joint({}, false).base.map(({ outline }) => outline);
    // 10 mm above the root face, tan 30° to each side.
    const face = 1.5 + 10 * Math.tan(Math.PI / 6);
    for (const corner of [
      [1.5, 0],
      [1.5, 2],
      [face, 12],
    ] as const) {
      const at = (outline: Outline | undefined, [x, y]: readonly [number, number]) =>
        outline?.some(([px, py]) => Math.hypot(px - x, py - y) < 1e-9);
      expect(at(right, corner), `${corner}`).toBe(true);
      expect(at(left, [-corner[0], corner[1]]), `${corner}`).toBe(true);
    }
    expect(spans(right as Outline)).toMatchObject({ low: 0, high: 12, left: 1.5 });
    expect(spans(left as Outline)).toMatchObject({ low: 0, high: 12, right: -1.5 });
    expect(spans(right as Outline).right).toBeGreaterThan(face + 11);
  });

  it('has no corner at a root face where there is none, or nothing else', () => {
    expect(joint({ rootFace: 0 }, false).base[1]?.outline).toHaveLength(4);
    expect(joint({ rootFace: 2 }, false).base[1]?.outline).toHaveLength(5);
    expect(joint({ rootFace: 12 }, false).base[1]?.outline).toHaveLength(4);
  });

  it.each([3, 6.35, 12.7, 25.4])(
    'over an opening of %s mm has a strip of 1/4 in that reaches 1/2 in under each plate',
    (rootOpening) => {
      const { base } = joint({ rootOpening }, true);
      expect(base.map(({ part }) => part)).toEqual(['plate', 'plate', 'backing strip']);
      const strip = spans(base[2]?.outline as Outline);
      expect(strip).toMatchObject({ high: 0, low: -6.35 });
      expect(strip.right).toBeCloseTo(-strip.left, 9);
      expect(strip.right).toBeGreaterThanOrEqual(rootOpening / 2 + 12.7);
      // A strip of 1-1/2 in serves every narrow opening.
      expect(strip.right).toBeCloseTo(Math.max(19.05, rootOpening / 2 + 12.7), 9);
      for (const plate of base.slice(0, 2))
        expect(Math.max(...plate.outline.map(([x]) => Math.abs(x)))).toBeGreaterThan(strip.right);
    },
  );

  it('has no strip without backing', () => {
    expect(joint({}, false).base).toHaveLength(2);
  });

  it.each(positions)('carries its passes without being covered, in position %s', (position) => {
    const { base, passes } = joint({}, true, position);
    for (const { outline } of base)
      for (const pass of passes) expect(areaShared(outline, pass.outline)).toBeLessThan(1e-6);
  });

  it('opens up, to the side or down as the position has it', () => {
    const opening = (position: Position) => {
      const [root, , cover] = joint({}, true, position).passes;
      const middle = (outline: Outline) => {
        const { left, right, low, high } = spans(outline);
        return [(left + right) / 2, (low + high) / 2] as const;
      };
      const [x0, y0] = middle(root?.outline as Outline);
      const [x1, y1] = middle(cover?.outline as Outline);
      return Math.abs(x1 - x0) > Math.abs(y1 - y0) ? 'side' : y1 > y0 ? 'up' : 'down';
    };
    expect(positions.map(opening)).toEqual(['up', 'side', 'up', 'down']);
  });
});

it.each(positions)('every outline runs counterclockwise, in position %s', (position) => {
  const maps = [filletPasses(8, 0.5, [1, 2], position).map, joint({}, true, position)];
  for (const { outline } of maps.flatMap(({ base, passes }) => [...base, ...passes]))
    expect(signedArea(outline)).toBeGreaterThan(0);
});

it('signs an area by the way its corners run', () => {
  const square: Outline = [
    [1, 1],
    [4, 1],
    [4, 3],
    [1, 3],
  ];
  expect(signedArea(square)).toBe(6);
  expect(signedArea(square.toReversed())).toBe(-6);
  expect(signedArea([])).toBe(0);
});
