/** Formulas of a line or two, each undone or said another way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import arcTime from '../../../lib/calculations/arc-time.ts';
import bendStrain from '../../../lib/calculations/bend-strain.ts';
import clockTravel from '../../../lib/calculations/clock-travel.ts';
import deposit from '../../../lib/calculations/deposit.ts';
import filletWeight from '../../../lib/calculations/fillet-weight.ts';

const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('arc-time', () => {
  it('lays by its rate in the arc time, which is its share of the clock time', () => {
    fc.assert(
      fc.property(some(0.1, 100), some(0.5, 6), some(0.05, 1), (mass, depositionRate, share) => {
        const found = arcTime.compute({ mass, depositionRate, operatingFactor: share });
        expect(found.arcHours * depositionRate).toBeCloseTo(mass, 9);
        expect(found.clockHours * share).toBeCloseTo(found.arcHours, 9);
      }),
    );
  });
});

describe('bend-strain', () => {
  // The middle of the strip keeps its length; outside it lies half a thickness farther out.
  it('is how much longer the outer arc is than the one in the middle', () => {
    fc.assert(
      fc.property(some(0.05, 1), some(0.1, 5), (thickness, mandrelDiameter) => {
        const middle = Math.PI * (mandrelDiameter / 2 + thickness / 2);
        const outer = Math.PI * (mandrelDiameter / 2 + thickness);
        const { strain } = bendStrain.compute({ thickness, mandrelDiameter });
        expect(strain).toBeCloseTo(100 * (outer / middle - 1), 9);
      }),
    );
  });
  // ASME IX QW-466.1 (read): 20 % for a mandrel of four thicknesses.
  it('is 20 % round a mandrel of four thicknesses', () => {
    expect(bendStrain.compute({ thickness: 0.375, mandrelDiameter: 1.5 }).strain).toBeCloseTo(
      20,
      12,
    );
  });
});

describe('clock-travel', () => {
  it('goes round in twelve hours of the clock, each of its length and time', () => {
    fc.assert(
      fc.property(some(1, 30), some(2, 20), some(2, 20), (outsideDiameter, travelSpeed, runOut) => {
        const found = clockTravel.compute({ outsideDiameter, travelSpeed, runOut });
        expect(found.circumference).toBeCloseTo(2 * Math.PI * (outsideDiameter / 2), 9);
        expect(12 * found.hourLength).toBeCloseTo(found.circumference, 9);
        expect((found.hourTime / 60) * travelSpeed).toBeCloseTo(found.hourLength, 9);
        expect(found.hoursPerElectrode * found.electrodes).toBeCloseTo(12, 9);
        expect(found.electrodes * runOut).toBeCloseTo(found.circumference, 9);
      }),
    );
  });
});

describe('deposit', () => {
  it('weighs twelve times as much a foot as an inch, and its length as a whole', () => {
    fc.assert(
      fc.property(some(0.01, 2), some(1, 100), some(0.1, 0.3), (area, length, density) => {
        const found = deposit.compute({ area, length, density });
        expect(found.massPerLength / 12).toBeCloseTo(area * density, 9);
        expect((found.massPerLength * length) / 12).toBeCloseTo(found.mass, 9);
      }),
    );
  });
});

describe('fillet-weight', () => {
  it('is half a square and its bulge, at the weight of steel, over the yield', () => {
    fc.assert(
      fc.property(some(0.1, 1), some(0, 30), some(0.3, 1), (leg, bulgeShare, electrodeYield) => {
        const found = filletWeight.compute({ leg, bulgeShare, density: 0.2836, electrodeYield });
        const triangle = (leg * leg) / 2;
        expect(found.area / triangle).toBeCloseTo(1 + bulgeShare / 100, 9);
        expect(found.massPerLength).toBeCloseTo(found.area * 12 * 0.2836, 9);
        expect(found.electrodeMassPerLength * electrodeYield).toBeCloseTo(found.massPerLength, 9);
      }),
    );
  });
});
