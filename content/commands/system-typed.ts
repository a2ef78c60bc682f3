import type { Answer } from '../../lib/answer.ts';
import type { System } from '../../lib/units.ts';

/** Printed figures and sentences answer in the system in which the sizes were typed. */
export const systemTyped = (given: Answer['given']): System =>
  Object.values(given).some((one) => !Array.isArray(one) && one.system === 'metric')
    ? 'metric'
    : 'us';
