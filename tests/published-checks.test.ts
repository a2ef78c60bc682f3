import { describe, expect, it } from 'vitest';
import { readChecks } from '../content/read-checks.ts';
import { answer } from '../lib/answer.ts';
import { loadCalculation } from '../lib/calculations.ts';
import { compare } from '../lib/check.ts';
import { reportedAt } from '../lib/reported.ts';

describe.each(readChecks())('$calculation: $claim', (check) => {
  it(`agrees with ${check.source}, ${check.at} (${check.known})`, async () => {
    const calculation = await loadCalculation(check.calculation);
    const answered = answer(calculation, check.inputs);
    if (check.refuses !== undefined) {
      expect(answered.ok, 'an answer was given').toBe(false);
      if (!answered.ok)
        expect(answered.problems.map((problem) => problem.field)).toContain(check.refuses);
      return;
    }
    if (!answered.ok) expect.fail(answered.problems.map((problem) => problem.text).join('; '));
    const wish = check.in ? { unit: check.in } : {};
    const { value } = reportedAt(calculation, answered.results, check.output ?? '', wish);
    const { agrees, within } = compare(check.printed ?? '', value, check.tolerance?.is);
    expect(agrees, `printed ${check.printed}, computed ${value}, within ${within}`).toBe(true);
  });
});
