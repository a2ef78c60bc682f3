/** Run-out factors as BS 5135 and EN 1011 print them (from memory). */
import { expect, it } from 'vitest';
import { runOutFactorOf, runOutFactors } from '../../../lib/tables/run-out-factors.ts';

const at = (efficiency: number) =>
  runOutFactors.find(({ over, upTo }) => efficiency > over && efficiency <= upTo)?.factor;

it.each([
  [90, 0.0368],
  [95, 0.0368],
  [96, 0.0408],
  [110, 0.0408],
  [111, 0.0472],
  [130, 0.0472],
  [131, 0.0608],
  [200, 0.0608],
])('an electrode of %s %% efficiency has a factor of %s', (efficiency, factor) => {
  expect(at(efficiency)).toBe(factor);
});

// E7018 carries iron powder, about 115 %; cellulose electrodes none, under 95 % (common practice).
it.each([
  ['E7018', 115],
  ['E6010', 90],
  ['E6011', 90],
] as const)('%s has the factor of its class', (classification, efficiency) => {
  expect(runOutFactorOf[classification]).toBe(at(efficiency));
});

it('leaves no efficiency out and names none twice', () => {
  for (const [index, row] of runOutFactors.slice(1).entries())
    expect(row.over).toBe(runOutFactors[index]?.upTo);
});
