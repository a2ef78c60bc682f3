import type { Typed } from '../../lib/answer.ts';
import type { Inputs } from '../../lib/calculation.ts';

/**
 * What a calculation's own page opens with beyond what its form does by itself: the example, also
 * where something is taken when nothing is given. A heat of steel of carbon alone shows little.
 */
export const openingNumbers = (inputs: Inputs): Typed =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([name, input]) =>
      'default' in input && input.default !== undefined && typeof input.example === 'string'
        ? [[name, input.example]]
        : [],
    ),
  );
