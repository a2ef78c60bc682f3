/** Every published value agrees with what is computed. */
import { describe, expect, it } from 'vitest';
import { comparedChecks } from '../content/compared-checks.ts';

describe.each(await comparedChecks())('$check.calculation: $check.claim', (one) => {
  const { check, computed, agrees, within } = one;
  it(`agrees with ${check.source}, ${check.at} (${check.known})`, () => {
    const expected = check.refuses
      ? `a refusal of ${check.refuses}`
      : `${check.printed}, within ${within}`;
    expect(agrees, `expected ${expected}; computed ${JSON.stringify(computed)}`).toBe(true);
  });
});
