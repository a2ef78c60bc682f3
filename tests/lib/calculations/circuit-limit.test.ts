import { describe, expect, it } from 'vitest';
import circuitLimit from '../../../lib/calculations/circuit-limit.ts';

/** 29 CFR 1910.254(b)(3)(ii) and (iii): manual AC machines 80 V, manual DC machines 100 V. */
describe.each([
  ['AC', 80, 'DC'],
  ['DC', 100, 'AC'],
] as const)('circuit-limit, %s', (currentKind, limit, other) => {
  const ask = (openCircuitVoltage: number) =>
    circuitLimit.compute({ currentKind, openCircuitVoltage });

  it(`is ${limit} V, and a machine at it is within it`, () => {
    expect(ask(limit)).toMatchObject({ within: true, limit });
    expect(ask(limit - 0.1)).toMatchObject({ within: true, limit });
    expect(ask(limit + 0.1)).toMatchObject({ within: false, limit });
  });

  it('keeps a machine over it off, and only such a one', () => {
    const cautions = (volts: number) =>
      ask(volts).because.filter(({ kind }) => kind === 'caution').length;
    expect([cautions(limit), cautions(limit + 0.1)]).toEqual([0, 1]);
  });

  it('shows the row used and the two that were not', () => {
    const texts = ask(75).because.map(({ kind, text }) => `${kind}: ${text}`);
    expect(texts).toHaveLength(3);
    expect(texts[0]).toBe(`row: Manual ${currentKind} machines idle at no more than {${limit} V}.`);
    expect(texts[1]).toContain(`passed: Not used: manual ${other} machines, {${180 - limit} V}`);
    // IEC 60974-1 (from memory): 113 V peak for DC, 48 V effective where the danger of shock is greater.
    expect(texts[2]).toMatch(/^passed: .*\{113 V\} peak for DC.*only \{48 V\} effective/);
  });
});
