/**
 * How long a qualification lives by use. AWS D1.1 ends it after a time without the process
 * “exceeding” six months, ASME IX after six months “or more”: the same months, one day apart.
 */
import { addDays, addMonths } from './calendar.ts';

export type ContinuityCode = 'AWS D1.1' | 'ASME IX';
/**
 * Months without use after which both codes end a qualification: AWS D1.1:2020 clause 6.2.3.1, ASME
 * IX QW-322.1 (from memory).
 */
export const monthsAllowed = 6;

/** The last day on which a welder who last used the process on `day` may weld under the test. */
export function goodUntil(code: ContinuityCode, day: string): string {
  const months = addMonths(day, monthsAllowed);
  return code === 'AWS D1.1' ? months : addDays(months, -1);
}

export interface Life {
  /** The use or test that counts last. */
  last: string;
  until: string;
  /** The first use that came too late, if one did: it revives nothing. */
  tooLate?: string;
}

/** Follows the uses from the test on, each of which must come while the test is still alive. */
export function follow(code: ContinuityCode, tested: string, uses: readonly string[]): Life {
  let last = tested;
  for (const use of [...uses].sort()) {
    if (use <= last) continue;
    const until = goodUntil(code, last);
    if (use > until) return { last, until, tooLate: use };
    last = use;
  }
  return { last, until: goodUntil(code, last) };
}
