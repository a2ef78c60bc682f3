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

  it('warns of a weld shorter than four legs', () => {
    const warned = (length: number) => {
      const given = { leg: 0.25, length, welds: 1, electrodeStrength: 70, loadAngle: 0 };
      return filletStrength.notes?.(given, filletStrength.compute(given)).length;
    };
    expect(warned(1)).toBe(0);
    expect(warned(0.99)).toBe(1);
  });
});
