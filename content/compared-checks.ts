/** Every published value beside the computed one: one list for the check page and the audit. */
import { answer } from '../lib/answer.ts';
import { loadCalculation } from '../lib/calculations.ts';
import { type Compared, compare } from '../lib/check.ts';
import { type Reported, reportedAt } from '../lib/text/reported.ts';
import { type Check, readChecks } from './read-checks.ts';

export interface ComparedCheck extends Compared {
  check: Check;
  /** Undefined where the calculation refuses, as it should or should not. */
  computed?: Reported;
}

export const comparedChecks = (): Promise<ComparedCheck[]> =>
  Promise.all(readChecks().map(compared));

async function compared(check: Check): Promise<ComparedCheck> {
  const calculation = await loadCalculation(check.calculation);
  const answered = answer(calculation, check.inputs);
  if (!answered.ok)
    return { check, agrees: answered.problems.some(({ field }) => field === check.refuses) };
  if (check.output === undefined || check.printed === undefined) return { check, agrees: false };
  const computed = reportedAt(
    calculation,
    answered.results,
    check.output,
    check.in ? { unit: check.in } : {},
  );
  return { check, computed, ...compare(check.printed, computed.value, check.tolerance?.is) };
}
