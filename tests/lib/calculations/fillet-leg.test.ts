import { Line, Point, Polygon, Segment, Vector } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import filletLeg from '../../../lib/calculations/fillet-leg.ts';
import filletThroat from '../../../lib/calculations/fillet-throat.ts';

const throat = fc.double({ min: 0.05, max: 3, noNaN: true });
const angle = fc.double({ min: 15, max: 165, noNaN: true });

describe('fillet-leg', () => {
  it('draws a triangle with that throat, face and area, and a toe that far from the other plate', () => {
    fc.assert(
      fc.property(throat, angle, (wanted, between) => {
        const found = filletLeg.compute({ throat: wanted, angle: between });
        const turned = (between * Math.PI) / 180;
        const root = new Point(0, 0);
        const toeA = new Point(found.leg, 0);
        const toeB = new Point(found.leg * Math.cos(turned), found.leg * Math.sin(turned));
        const face = new Segment(toeA, toeB);
        const otherPlate = new Line(root, new Vector(-Math.sin(turned), Math.cos(turned)));
        expect(root.distanceTo(face)[0]).toBeCloseTo(wanted, 6);
        expect(found.faceWidth).toBeCloseTo(face.length, 6);
        expect(found.area).toBeCloseTo(Math.abs(new Polygon([root, toeA, toeB]).area()), 6);
        expect(found.codeSize).toBeCloseTo(toeA.distanceTo(otherPlate)[0], 6);
      }),
    );
  });

  // AWS D1.1, annex on skewed tees (from memory): 0.71, 1.00, 1.31 at 60°, 90° and 135°.
  it.each([
    [60, 0.71],
    [90, 1],
    [135, 1.31],
  ])(
    'measures a code leg at %d° as %d of a square one with the same throat',
    (between, printed) => {
      for (const wanted of [0.2, 0.5]) {
        const found = filletLeg.compute({ throat: wanted, angle: between });
        expect(found.sizeFactor).toBeCloseTo(printed, 2);
        expect(found.codeSize / (Math.SQRT2 * wanted)).toBeCloseTo(found.sizeFactor, 12);
      }
    },
  );

  it('is undone by the throat of two such legs', () => {
    fc.assert(
      fc.property(throat, angle, (wanted, between) => {
        const { leg } = filletLeg.compute({ throat: wanted, angle: between });
        const back = filletThroat.compute({ legA: leg, legB: leg, angle: between });
        expect(back.throat).toBeCloseTo(wanted, 8);
      }),
    );
  });
});
