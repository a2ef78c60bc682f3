/** What is printed on an electrode, in two parts: the classification, and what may follow it. */
import type { Inputs } from '../calculation.ts';
import { classifications } from '../tables/classifications.ts';

/**
 * What may follow a classification of AWS A5.1: R for a moisture test, H and a figure for hydrogen.
 */
export const designators = ['none', 'R', 'H4', 'H4R', 'H8', 'H8R', 'H16', 'H16R'] as const;

export const printedOnElectrode = {
  classification: {
    label: 'Classification',
    choices: classifications,
    example: 'E7018',
    obtain:
      'Printed near the grip end of each electrode and on the box: E and four digits, then perhaps -1 or M.',
  },
  designator: {
    label: 'Designator after it',
    choices: designators,
    example: 'H4R',
    default: 'none',
    obtain: 'What follows the classification, such as H4R in E7018 H4R. Nothing follows: none.',
  },
} as const satisfies Inputs;
