import { fitBooth } from '../../lib/booth/fit-booth.ts';
import type { Inputs } from '../../lib/calculation.ts';
import { boothHere } from './booth-here.ts';

/** What the booth in the address gives to a calculation. */
export const boothGiven = (id: string, inputs: Inputs): Record<string, string> =>
  fitBooth(id, inputs, boothHere().booth.numbers);
