/** What an instructor can set for one booth. */
import type { Bounds } from '../calculation.ts';
import { classifications } from '../tables/classifications.ts';
import type { Unit } from '../units.ts';

interface Named {
  label: string;
}
export interface BoothSize extends Named {
  unit: Unit;
  limits: Bounds;
}
export interface BoothWord extends Named {
  choices: readonly string[];
}
export type BoothQuantity = BoothSize | BoothWord;

const diameters = {
  unit: 'in',
  limits: {
    min: 0.04,
    max: 0.3125,
    why: 'covered electrodes are made from {1/16 in} to {5/16 in}',
  },
} as const;
const currents = {
  unit: 'A',
  limits: { min: 20, max: 550, why: 'covered electrodes run between {20 A} and {550 A}' },
} as const;

/**
 * By the word that stands in the link. A word is never given another meaning. Those of the root stand
 * beside the others where a joint has an electrode of its own for its root.
 */
export const boothQuantities = {
  rootclass: {
    label: 'Classification, root pass',
    choices: classifications,
  },
  rootelectrode: { label: 'Electrode diameter, root pass', ...diameters },
  rootcurrent: { label: 'Current, root pass', ...currents },
  class: {
    label: 'Classification',
    choices: classifications,
  },
  electrode: { label: 'Electrode diameter', ...diameters },
  current: { label: 'Current', ...currents },
  voltage: {
    label: 'Arc voltage',
    unit: 'V',
    limits: { min: 14, max: 50, why: 'outside this no covered electrode burns' },
  },
  thickness: {
    label: 'Thickness of the metal',
    unit: 'in',
    limits: { min: 0.06, max: 4, why: 'booth coupons lie between {1/16 in} and {4 in}' },
  },
  leg: {
    label: 'Fillet leg to reach',
    unit: 'in',
    limits: { min: 0.06, max: 2, why: 'fillets at a booth are {1/16 in} to {2 in}' },
  },
  opening: {
    label: 'Root opening',
    unit: 'in',
    limits: { min: 0, max: 1, why: 'a wider opening is no joint for a booth' },
  },
  width: {
    label: 'Bead width',
    unit: 'in',
    limits: { min: 0.05, max: 2, why: 'no bead is narrower or wider' },
  },
  overlap: {
    label: 'Bead overlap (step-over)',
    unit: 'percent',
    limits: {
      min: 0,
      max: 95,
      why: 'below 0 beads do not touch, above 95 they lie on top of each other',
    },
  },
  runout: {
    label: 'Bead length from one electrode',
    unit: 'in',
    limits: { min: 1, max: 40, why: 'no electrode lays less or more' },
  },
} as const satisfies Record<string, BoothQuantity>;

export type BoothWordInLink = keyof typeof boothQuantities;

/** What may stand under a word of the link: a size with limits, or one of a few words. */
export const boothQuantity = (word: BoothWordInLink): BoothQuantity => boothQuantities[word];

/** Whether a word of a link is one of ours. */
export const isBoothWord = (word: string): word is BoothWordInLink =>
  Object.hasOwn(boothQuantities, word);

/** What is set for the root alone. */
export const isOfRoot = (word: BoothWordInLink): boolean => word.startsWith('root');
