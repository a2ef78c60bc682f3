/** What a power source's rating plate says, as the duty cycle calculations ask for it. */
import type { QuantityInput } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';

export const ratedCurrent = {
  label: 'Rated current on the plate',
  symbol: 'I_r',
  unit: 'A',
  limits: { min: 5, max: 2000, why: 'no stick machine is rated lower or higher' },
  example: '300',
  obtain:
    'Rating plate, row I₂, for the stick process. Take the column nearest to the current you weld with.',
} as const satisfies QuantityInput;

export const ratedDutyCycle = {
  label: 'Duty cycle at that current, in percent',
  symbol: 'X_r',
  unit: 'percent',
  limits: { min: 5, max: 100, why: 'plates state 5 % to 100 %' },
  example: '60',
  obtain: 'Rating plate, row X, in the same column.',
} as const satisfies QuantityInput;

export const maximumCurrent = {
  label: 'Highest current on the plate, where it is above the rated one',
  symbol: 'I_max',
  unit: 'A',
  limits: { min: 5, max: 2000, why: 'no stick machine gives less or more' },
  optional: true,
  example: '400',
  obtain: 'Rating plate: the end of the output range. Leave it out if the plate has one column.',
} as const satisfies QuantityInput;

/** The square law says nothing above the plate: a machine is not built or tested there. */
export function refuseAbovePlate(
  current: number,
  { ratedCurrent, maximumCurrent }: { ratedCurrent: number; maximumCurrent: number | undefined },
  field: string,
): void {
  if (maximumCurrent !== undefined && maximumCurrent < ratedCurrent)
    throw new NoAnswer(
      'The highest current on the plate cannot lie below the rated one',
      'maximumCurrent',
    );
  const highest = maximumCurrent ?? ratedCurrent;
  if (current > highest)
    throw new NoAnswer(
      `That is {${shown(current)} A}, above the plate’s highest current of {${shown(highest)} A}: the machine is not rated there, at any duty cycle`,
      field,
    );
}

const shown = (current: number): string => String(Number(current.toPrecision(4)));
