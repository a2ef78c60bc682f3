import { Point, Polygon, Segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import filletThroat from '../../../lib/calculations/fillet-throat.ts';

/** Root at the origin, one plate along x, the other at the angle. */
function drawn(legA: number, legB: number, angle: number) {
  const turned = (angle * Math.PI) / 180;
  const root = new Point(0, 0);
  const toeA = new Point(legA, 0);
  const toeB = new Point(legB * Math.cos(turned), legB * Math.sin(turned));
  return { face: new Segment(toeA, toeB), triangle: new Polygon([root, toeA, toeB]), root };
}

const size = fc.double({ min: 0.05, max: 4, noNaN: true });
const angle = fc.double({ min: 15, max: 165, noNaN: true });

describe('fillet-throat', () => {
  it('has the face, throat and area of the triangle as drawn', () => {
    fc.assert(
      fc.property(size, size, angle, (legA, legB, between) => {
        const { face, triangle, root } = drawn(legA, legB, between);
        const found = filletThroat.compute({ legA, legB, angle: between });
        expect(found.faceWidth).toBeCloseTo(face.length, 6);
        expect(found.throat).toBeCloseTo(root.distanceTo(face)[0], 6);
        expect(found.area).toBeCloseTo(Math.abs(triangle.area()), 6);
      }),
    );
  });

  it('does not care which plate is named first', () => {
    fc.assert(
      fc.property(size, size, angle, (legA, legB, between) => {
        const one = filletThroat.compute({ legA, legB, angle: between });
        const other = filletThroat.compute({ legA: legB, legB: legA, angle: between });
        expect(one.throat).toBeCloseTo(other.throat, 10);
      }),
    );
  });

  it('warns of unequal legs, and only of those', () => {
    const warned = (legA: number, legB: number) =>
      filletThroat.notes?.({ legA, legB, angle: 90 }, { faceWidth: 0, throat: 0, area: 0 }).length;
    expect(warned(0.25, 0.25)).toBe(0);
    expect(warned(0.25, 0.3125)).toBe(0);
    expect(warned(0.25, 0.375)).toBe(1);
    expect(warned(0.375, 0.25)).toBe(1);
  });
});
