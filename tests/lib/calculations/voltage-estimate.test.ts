import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import heatInput from '../../../lib/calculations/heat-input.ts';
import runOutHeat from '../../../lib/calculations/run-out-heat.ts';
import voltageEstimate from '../../../lib/calculations/voltage-estimate.ts';

const eighth = { classification: 'E7018', coreDiameter: '1/8 in' };

describe('voltage-estimate', () => {
  it('makes heat by volts and amperes equal to heat by run-out, whatever the bead’s length', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 110, max: 140, noNaN: true }),
        fc.double({ min: 55, max: 75, noNaN: true }),
        fc.double({ min: 100, max: 300, noNaN: true }),
        (current, arcTime, runOut) => {
          const burned = { coreDiameter: 3.175, consumedLength: 304.8 };
          const { voltage } = voltageEstimate.compute({
            classification: 'E7018',
            ...burned,
            arcTime,
            current,
            meterVoltage: undefined,
            cableDrop: 0,
          });
          const byRule = runOutHeat.compute({ ...burned, runOut, factor: 0.0472 });
          const byMeter = heatInput.compute({
            voltage,
            current,
            travelSpeed: ((runOut / arcTime) * 60) / 25.4,
            efficiency: 0.8,
          });
          expect(byMeter.heatInput / 25.4).toBeCloseTo(byRule.heatInput, 9);
          expect(byMeter.arcEnergy / 25.4).toBeCloseTo(byRule.arcEnergy, 9);
        },
      ),
    );
  });

  it.each([
    [
      { consumedLength: '12 in', arcTime: '65', current: '125', meterVoltage: '24' },
      'run-out of a whole electrode',
    ],
    [{ consumedLength: '12 in', current: '125', meterVoltage: '24' }, 'meter'],
    [{ consumedLength: '12 in', current: '125' }, 'guess'],
  ])('goes by the first way that %j allows', (given, way) => {
    expect(answer(voltageEstimate, { ...eighth, ...given })).toMatchObject({
      ok: true,
      results: { way },
    });
  });

  // OD 1651, p. 29: 20 V for 3/32 in, 30 V for 3/8 in; 22 V for 1/8 in is common practice, no source.
  it.each([
    ['3/32 in', 20],
    ['1/8 in', 22],
    ['5/32 in', 20 + (10 * 2) / 9],
    ['1/4 in', 20 + (10 * 5) / 9],
  ])('guesses for %s on the line between the two printed points', (coreDiameter, volts) => {
    const found = answer(voltageEstimate, { classification: 'E7018', coreDiameter });
    expect(found.ok && found.results.voltage).toBeCloseTo(volts, 9);
  });

  it('refuses a watch that gives an arc nobody can hold', () => {
    const answered = answer(voltageEstimate, {
      ...eighth,
      consumedLength: '12 in',
      arcTime: '20',
      current: '125',
    });
    expect(answered.ok || answered.problems[0]?.text).toContain('check the watch');
  });

  it('keeps its answer between its own ends, wider for a guess than for a meter', () => {
    const width = (given: object) => {
      const answered = answer(voltageEstimate, { ...eighth, ...given });
      if (!answered.ok) throw new Error(answered.problems[0]?.text);
      const { low, voltage, high } = answered.results as Record<string, number>;
      expect(low).toBeLessThan(voltage as number);
      expect(high).toBeGreaterThan(voltage as number);
      return (high as number) - (low as number);
    };
    expect(width({})).toBeGreaterThan(width({ meterVoltage: '24' }));
  });

  const ends = (given: Record<string, string>) => {
    const answered = answer(voltageEstimate, { ...eighth, ...given });
    if (!answered.ok) throw new Error(answered.problems[0]?.text);
    const { low, voltage, high } = answered.results as Record<string, number>;
    return [low, voltage, high].map((volts) => Number(volts?.toFixed(3)));
  };
  const timed = { consumedLength: '12 in', arcTime: '65', current: '125' };

  it('says how far off each way may be (common practice, no source)', () => {
    expect(ends({})).toEqual([20, 22, 24]);
    expect(ends({ coreDiameter: '3/32 in' })).toEqual([17, 20, 23]);
    expect(ends({ meterVoltage: '24', cableDrop: '1.5' })).toEqual([21.5, 22.5, 23.5]);
    // 47.2 J/mm³ × 3.175² × 304.8 = 145 026 J, over 0.8 × 125 × 65: 22.312 V. Its doubt is the root of
    // 5 %² + 8 %² + (1/65)² + (3/304.8)², 9.609 %: 2.144 V.
    expect(ends(timed)).toEqual([20.168, 22.312, 24.456]);
  });

  it.each(['consumedLength', 'arcTime', 'current'])('needs %s for the first way', (name) => {
    expect(ends({ ...timed, [name]: '' })).toEqual([20, 22, 24]);
  });

  it('guesses for a box that says 3.2 mm as for 1/8 in', () => {
    expect(ends({ coreDiameter: '3.2 mm' })).toEqual([20, 22, 24]);
  });

  it('guesses for a core of no trade size on the line as well', () => {
    // 4.3 mm: 20 + 10 (4.3/25.4 − 3/32) / (9/32) = 22.686 V.
    expect(ends({ coreDiameter: '4.3 mm' })[1]).toBe(22.686);
  });

  // 145 026 J over 0.8 × 125 A: 14 V in 103.59 s, 45 V in 32.23 s.
  it.each([
    ['103.5', true],
    ['103.7', false],
    ['32.3', true],
    ['32.2', false],
  ])('believes a watch that says %s s: %s', (arcTime, ok) => {
    expect(answer(voltageEstimate, { ...eighth, ...timed, arcTime }).ok).toBe(ok);
  });

  it('cautions where less than 200 mm of an electrode burned', () => {
    const cautions = (consumedLength: string) => {
      const given = { ...eighth, consumedLength, arcTime: '45', current: '125' };
      const answered = answer(voltageEstimate, given);
      return (
        answered.ok && answered.because.filter(({ text }) => /less than a whole/.test(text)).length
      );
    };
    expect([cautions('200 mm'), cautions('199.9 mm')]).toEqual([0, 1]);
  });
});
