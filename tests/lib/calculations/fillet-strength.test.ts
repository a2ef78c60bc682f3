import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import filletStrength from '../../../lib/calculations/fillet-strength.ts';

const weld = fc.record({
  leg: fc.double({ min: 0.1, max: 1, noNaN: true }),
  length: fc.double({ min: 1, max: 400, noNaN: true }),
  welds: fc.integer({ min: 1, max: 8 }),
  electrodeStrength: fc.double({ min: 60, max: 120, noNaN: true }),
  loadAngle: fc.double({ min: 0, max: 90, noNaN: true }),
});

describe('fillet-strength', () => {
  it('never loses strength with length, and stops gaining at 300 legs', () => {
    fc.assert(
      fc.property(weld, (given) => {
        const longer = { ...given, length: given.length * 1.1 };
        const [one, other] = [filletStrength.compute(given), filletStrength.compute(longer)];
        expect(other.nominal).toBeGreaterThanOrEqual(one.nominal * (1 - 1e-9));
        if (given.length >= 300 * given.leg) expect(other.nominal).toBeCloseTo(one.nominal, 6);
      }),
    );
  });

  it('gains between nothing and half by the direction of the load', () => {
    fc.assert(
      fc.property(weld, (given) => {
        const { directionFactor, design, allowable, nominal } = filletStrength.compute(given);
        expect(directionFactor).toBeGreaterThanOrEqual(1);
        expect(directionFactor).toBeLessThanOrEqual(1.5);
        expect(design / allowable).toBeCloseTo(1.5, 9);
        expect(allowable).toBeLessThan(nominal);
      }),
    );
  });

  // AISC Manual, equations 8-2a and 8-2b (from memory): 1.392 and 0.928 kip for each inch and each
  // sixteenth of leg, E70.
  it('is 1.392 kip by design and 0.928 allowed, for each inch, sixteenth and weld', () => {
    for (const [sixteenths, length, welds] of [
      [3, 10, 1],
      [5, 8, 2],
      [8, 50, 4],
    ] as const) {
      const { design, allowable, effectiveLength } = filletStrength.compute({
        leg: sixteenths / 16,
        length,
        welds,
        electrodeStrength: 70,
        loadAngle: 0,
      });
      expect(effectiveLength).toBe(length);
      expect(design / (sixteenths * length * welds)).toBeCloseTo(1.392, 3);
      expect(allowable / (sixteenths * length * welds)).toBeCloseTo(0.928, 3);
    }
  });

  // AISC 360-05, J2.2b: β = 1.2 − 0.002·l/w ≤ 1; beyond 300 w an effective length of 180 w.
  it.each([
    [99, 99],
    [100, 100],
    [150, 135],
    [200, 160],
    [300, 180],
    [301, 180],
    [1000, 180],
  ])('counts of %d legs of length %d', (legs, counted) => {
    const given = { welds: 1, electrodeStrength: 70, loadAngle: 0 };
    for (const leg of [0.25, 0.5])
      expect(
        filletStrength.compute({ ...given, leg, length: legs * leg }).effectiveLength / leg,
      ).toBeCloseTo(counted, 9);
  });

  // AISC 360-05, J2.4: 1 + 0.50·sin^1.5 θ, at 30° 1 + 0.5·0.5^1.5.
  it.each([
    [0, 1],
    [30, 1.176777],
    [45, 1.297302],
    [90, 1.5],
  ])('gains at %d° the factor %d', (loadAngle, factor) => {
    const given = { leg: 0.25, length: 10, welds: 1, electrodeStrength: 70 };
    const along = filletStrength.compute({ ...given, loadAngle: 0 });
    const turned = filletStrength.compute({ ...given, loadAngle });
    expect(turned.directionFactor).toBeCloseTo(factor, 6);
    expect(turned.nominal / along.nominal).toBeCloseTo(factor, 6);
  });

  it('warns of a weld shorter than four legs', () => {
    const warned = (length: number) => {
      const given = { leg: 0.25, length, welds: 1, electrodeStrength: 70, loadAngle: 0 };
      return filletStrength.notes?.(given, filletStrength.compute(given)).length;
    };
    expect(warned(1)).toBe(0);
    expect(warned(0.99)).toBe(1);
  });
});
