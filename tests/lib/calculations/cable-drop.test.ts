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
    // Stranding makes cable a few percent longer in the wire; metric sizes are nominal.
    expect(ratio).toBeGreaterThan(0.98);
    expect(ratio).toBeLessThan(1.15);
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
});
