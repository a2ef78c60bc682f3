import type { Calculation, Input, Output } from '../../lib/calculation.ts';

/** Does a calculation take or give rows? */
export const hasLists = ({ inputs, outputs }: Calculation): boolean =>
  Object.values<Input | Output>({ ...inputs, ...outputs }).some((one) => 'list' in one);
