import { expect, it } from 'vitest';
import { calculationIds } from '../../../components/Calculator/calculation-ids.ts';
import { stepsOver } from '../../../components/CalculatorPage/steps-over.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';
import { convert, unitFor } from '../../../lib/units.ts';

const input = (unit: 'in' | 'mm' | 'V' | '1', min: number, max: number, whole = false) => ({
  label: 'Size',
  symbol: 's',
  unit,
  limits: { why: 'any' },
  usual: { min, max, why: 'usual' },
  ...(whole && { whole }),
  example: '1',
  obtain: 'read',
});

it.each([
  ['a leg', 'in', 1 / 8, 1, 'us', ['1/8 in', '3/8 in', '9/16 in', '13/16 in', '1 in']],
  ['a leg', 'in', 1 / 8, 1, 'metric', ['4 mm', '9 mm', '14 mm', '20 mm', '25 mm']],
  ['a core wire', 'mm', 2, 6.5, 'us', ['3/32 in', '1/8 in', '5/32 in', '7/32 in', '1/4 in']],
  ['a core wire', 'mm', 2, 6.5, 'metric', ['2 mm', '3 mm', '4.5 mm', '5.5 mm', '6.5 mm']],
  ['a gap', 'in', 0.09, 0.16, 'us', ['3/32 in', '7/64 in', '1/8 in', '9/64 in', '5/32 in']],
  ['an electrode', 'in', 3, 16, 'metric', ['80 mm', '160 mm', '240 mm', '320 mm', '400 mm']],
  ['volts', 'V', 16, 40, 'us', ['16 V', '22 V', '28 V', '34 V', '40 V']],
] as const)('%s from %s %d to %d is stepped as a reader of %s would', (...args) => {
  const [, unit, min, max, system, steps] = args;
  expect(stepsOver(input(unit, min, max), system)).toEqual(steps);
});

it('counts whole things in whole ones', () => {
  expect(stepsOver(input('1', 1, 6, true), 'us')).toEqual(['1', '2', '4', '5', '6']);
});

it('stays within what is usual, for every calculation and in both systems', async () => {
  let seen = 0;
  for (const id of calculationIds) {
    const { inputs } = await loadCalculation(id);
    for (const one of Object.values(inputs)) {
      if (!('unit' in one) || one.usual?.min === undefined || one.usual.max === undefined) continue;
      for (const system of ['us', 'metric'] as const) {
        for (const text of stepsOver(one, system)) {
          const read = readQuantity(text, unitFor(one.unit, system));
          if ('problem' in read) throw new Error(`${id}: ${text} ${read.problem}`);
          const value = convert(read.value, read.unit, one.unit);
          const bit = 1e-9 * Math.max(1, Math.abs(value));
          expect(value).toBeGreaterThanOrEqual(one.usual.min - bit);
          expect(value).toBeLessThanOrEqual(one.usual.max + bit);
          seen += 1;
        }
      }
    }
  }
  expect(seen).toBeGreaterThan(200);
});
