import type { Answer, Typed } from '../../lib/answer.ts';
import type { System } from '../../lib/units.ts';

/** Printed figures and sentences answer in the system in which the sizes were typed. */
export const systemTyped = (given: Answer['given'], typed: Typed): System =>
  Object.entries(given).some(
    ([name, one]) => typed[name] !== undefined && !Array.isArray(one) && one.system === 'metric',
  )
    ? 'metric'
    : 'us';
