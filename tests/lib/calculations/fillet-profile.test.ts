import { Arc, Point, Polygon, Segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import filletProfile from '../../../lib/calculations/fillet-profile.ts';

/** The section as drawn: two legs, and an arc from toe to toe through the middle of the face. */
function drawn(leg: number, bulge: number): Polygon {
  const toeA = new Point(leg, 0);
  const toeB = new Point(0, leg);
  const half = leg / Math.SQRT2;
  const radius = (half ** 2 + bulge ** 2) / (2 * Math.abs(bulge));
  const out = half + bulge;
  const centerOut = bulge > 0 ? out - radius : out + radius;
  const center = new Point(centerOut / Math.SQRT2, centerOut / Math.SQRT2);
  const angleTo = (p: Point) => Math.atan2(p.y - center.y, p.x - center.x);
  const face = new Arc(center, radius, angleTo(toeA), angleTo(toeB), bulge > 0);
  return new Polygon([
    new Segment(new Point(0, 0), toeA),
    face,
    new Segment(toeB, new Point(0, 0)),
  ]);
}

const leg = fc.double({ min: 0.1, max: 1.5, noNaN: true });
const area = (given: { leg: number; bulge: number }) => filletProfile.compute(given).area;

describe('fillet-profile', () => {
  it.each([
    ['convex', 0.01, 0.7],
    ['concave', -0.29, -0.01],
  ])('has the area of the %s section as drawn with an arc', (_, min, max) => {
    fc.assert(
      fc.property(leg, fc.double({ min, max, noNaN: true }), (size, share) => {
        const bulge = share * size;
        expect(area({ leg: size, bulge })).toBeCloseTo(Math.abs(drawn(size, bulge).area()), 6);
      }),
    );
  });

  it('passes smoothly through the flat face', () => {
    const around = [-1e-3, -2e-4, -1e-5, 0, 1e-5, 2e-4, 1e-3].map((bulge) =>
      area({ leg: 0.5, bulge }),
    );
    expect(around[3]).toBe(0.125);
    for (const [index, bulge] of [-1e-3, -2e-4, -1e-5, 0, 1e-5, 2e-4, 1e-3].entries())
      expect(around[index]).toBeCloseTo(0.125 + (2 / 3) * 0.5 * Math.SQRT2 * bulge, 8);
  });

  it('never counts more than the leg, and counts every hollow', () => {
    fc.assert(
      fc.property(leg, fc.double({ min: -0.29, max: 0.7, noNaN: true }), (size, share) => {
        const found = filletProfile.compute({ leg: size, bulge: share * size });
        expect(found.effectiveSize).toBeLessThanOrEqual(size);
        if (share < 0) expect(found.effectiveSize / Math.SQRT2).toBeCloseTo(found.actualThroat, 10);
      }),
    );
  });

  it('judges a bulge by the width of the face, and a hollow not at all', () => {
    const said = (size: number, bulge: number) => {
      const given = { leg: size, bulge };
      return filletProfile
        .notes?.(given, filletProfile.compute(given))
        .map(({ text }) => text)
        .join(' ');
    };
    expect(said(0.22, 0.0625)).toContain('{1/16 in|2 mm}');
    expect(said(0.22, 0.0625)).not.toContain('more than that');
    expect(said(0.22, 0.08)).toContain('more than that');
    expect(said(0.3125, 0.125)).toContain('{1/8 in|3 mm}');
    expect(said(0.3125, 0.125)).not.toContain('more than that');
    expect(said(0.3125, 0.13)).toContain('more than that');
    expect(said(1, 0.19)).toContain('{3/16 in|5 mm}');
    expect(said(1, 0.19)).not.toContain('more than that');
    expect(said(1, 0.2)).toContain('more than that');
    expect(said(0.3125, -0.03)).toContain('no convexity');
    expect(said(0.3125, 0)).not.toContain('no convexity');
  });

  it('ends at a half circle, and at the quarter circle that touches both plates', () => {
    // Chord √2 of a leg of 1: its half is the radius; the hollow arc about the far corner dips 1 − 1/√2.
    expect(area({ leg: 1, bulge: Math.SQRT2 / 2 })).toBeCloseTo(0.5 + Math.PI / 4, 9);
    expect(area({ leg: 1, bulge: Math.SQRT1_2 - 1 })).toBeCloseTo(1 - Math.PI / 4, 9);
    for (const bulge of [Math.SQRT2 / 2 + 1e-9, Math.SQRT1_2 - 1 - 1e-9])
      expect(() => area({ leg: 1, bulge })).toThrow(/^A face/);
  });
});
