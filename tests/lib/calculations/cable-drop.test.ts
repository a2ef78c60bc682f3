import { describe, expect, it } from 'vitest';
import cableDrop from '../../../lib/calculations/cable-drop.ts';
import { type Gauge, gauges, ohmsPerMeter } from '../../../lib/tables/cable-resistance.ts';

/** Copper: 1.7241e-8 Ω·m at 20 °C (IEC 60028), 0.00393 more for each degree. */
const copper = (celsius: number) => 1.7241e-8 * (1 + 0.00393 * (celsius - 20));

/** Square meters: by the law of the gauge (ASTM B258), or as the name says. */
function area(gauge: Gauge): number {
  const metric = /^(\d+) mm2$/.exec(gauge);
  if (metric) return Number(metric[1]) * 1e-6;
  const [, digits = '', zeros] = /^(\d+)(\/0)? AWG$/.exec(gauge) ?? [];
  const number = zeros ? 1 - Number(digits) : Number(digits);
  const diameter = 0.127e-3 * 92 ** ((36 - number) / 39);
  return (Math.PI / 4) * diameter ** 2;
}

describe('cable-drop', () => {
  it.each(gauges)('has a resistance for %s that copper of that size can have', (gauge) => {
    const solid = copper(gauge.endsWith('AWG') ? 75 : 20) / area(gauge);
    const ratio = ohmsPerMeter(gauge) / solid;
    // Stranding makes a wire two percent longer than its cable; metric sizes are nominal.
    const [least, most] = gauge.endsWith('AWG') ? [1.015, 1.025] : [1.1, 1.14];
    expect(ratio).toBeGreaterThan(least);
    expect(ratio).toBeLessThan(most);
  });

  // IEC 60228, table of class 5 conductors, plain wires, ohms in a kilometer at 20 °C (from memory).
  it.each([
    ['16 mm2', 1.21],
    ['25 mm2', 0.78],
    ['35 mm2', 0.554],
    ['50 mm2', 0.386],
    ['70 mm2', 0.272],
    ['95 mm2', 0.206],
  ] as const)('has what the standard prints for %s', (gauge, ohms) => {
    expect(1000 * ohmsPerMeter(gauge)).toBeCloseTo(ohms, 9);
  });

  it('loses as power what it loses as voltage, times the current', () => {
    const { drop, powerLost } = cableDrop.compute({ gauge: '2 AWG', length: 100, current: 125 });
    expect(powerLost).toBeCloseTo(drop * 125, 9);
  });

  it('loses exactly four volts over the longest cable it allows', () => {
    for (const gauge of gauges) {
      const { longest } = cableDrop.compute({ gauge, length: 100, current: 140 });
      expect(cableDrop.compute({ gauge, length: longest, current: 140 }).drop).toBeCloseTo(4, 9);
    }
  });

  it('warns above four volts and only there', () => {
    const warned = (length: number) =>
      cableDrop
        .compute({ gauge: '2 AWG', length, current: 125 })
        .because.some(({ kind }) => kind === 'caution');
    expect(warned(160)).toBe(false);
    expect(warned(170)).toBe(true);
  });

  it('puts up with four volts to the last bit', () => {
    const given = { gauge: '4 AWG', current: 125 } as const;
    const { longest } = cableDrop.compute({ ...given, length: 1 });
    const { drop, because } = cableDrop.compute({ ...given, length: longest });
    expect(drop).toBe(4);
    expect(because.map(({ kind }) => kind)).toEqual(['row']);
  });

  // Ohm's law: U = R·I, out and back; 0.386 Ω in a kilometer of 50 mm² (IEC 60228, from memory).
  it('is the resistance of its length in feet, times the current', () => {
    const { drop, longest } = cableDrop.compute({ gauge: '50 mm2', length: 200, current: 250 });
    expect(drop).toBeCloseTo((0.386 / 1000) * 200 * 0.3048 * 250, 9);
    expect(longest).toBeCloseTo(4 / ((0.386 / 1000) * 250) / 0.3048, 9);
  });

  it('tells which row it took, and how warm its copper is', () => {
    const said = (gauge: Gauge) => cableDrop.compute({ gauge, length: 10, current: 100 }).because;
    expect(said('50 mm2')).toMatchObject([
      {
        kind: 'row',
        text: expect.stringMatching(/^50 mm² copper has 0\.386 Ω in \{1000 m\} at \{20 degC\}/),
      },
    ]);
    for (const gauge of gauges.filter((one) => one.endsWith('AWG'))) {
      const [row] = said(gauge);
      const [, ohms = ''] =
        /^\S+ AWG copper has (\S+) Ω in \{1000 ft\}, warm/.exec(row?.text ?? '') ?? [];
      expect(Number(ohms) / 304.8).toBeCloseTo(ohmsPerMeter(gauge), 12);
    }
  });
});
