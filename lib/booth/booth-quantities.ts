/** What an instructor can set for one booth, and where the calculations ask for it. */
import type { Bounds } from '../calculation.ts';
import { classifications } from '../tables/electrodes-a5.1.ts';
import type { Unit } from '../units.ts';

interface Named {
  label: string;
  /** The inputs that take it, by name; an input of another kind is left alone. */
  feeds: readonly string[];
}
export interface BoothSize extends Named {
  unit: Unit;
  limits: Bounds;
}
export interface BoothWord extends Named {
  choices: readonly string[];
}
export type BoothQuantity = BoothSize | BoothWord;

/** By the word that stands in the link. A word is never given another meaning. */
export const boothQuantities = {
  class: {
    label: 'Classification',
    choices: classifications,
    feeds: ['classification', 'electrodeKind'],
  },
  electrode: {
    label: 'Electrode diameter',
    unit: 'in',
    limits: {
      min: 0.04,
      max: 0.3125,
      why: 'covered electrodes are made from {1/16 in} to {5/16 in}',
    },
    feeds: ['diameter', 'coreDiameter'],
  },
  current: {
    label: 'Current',
    unit: 'A',
    limits: { min: 20, max: 550, why: 'covered electrodes run between {20 A} and {550 A}' },
    feeds: ['current', 'wanted'],
  },
  voltage: {
    label: 'Arc voltage',
    unit: 'V',
    limits: { min: 14, max: 50, why: 'outside this no covered electrode burns' },
    feeds: ['voltage'],
  },
  thickness: {
    label: 'Thickness of the metal',
    unit: 'in',
    limits: { min: 0.06, max: 4, why: 'booth coupons lie between {1/16 in} and {4 in}' },
    feeds: ['thickness', 'thinner', 'thicker'],
  },
  leg: {
    label: 'Fillet leg to reach',
    unit: 'in',
    limits: { min: 0.06, max: 2, why: 'fillets at a booth are {1/16 in} to {2 in}' },
    feeds: ['leg', 'legA', 'legB', 'filletSize'],
  },
  opening: {
    label: 'Root opening',
    unit: 'in',
    limits: { min: 0, max: 1, why: 'a wider opening is no joint for a booth' },
    feeds: ['rootOpening'],
  },
  width: {
    label: 'Bead width',
    unit: 'in',
    limits: { min: 0.05, max: 2, why: 'no bead is narrower or wider' },
    feeds: ['width'],
  },
  overlap: {
    label: 'Bead overlap (step-over)',
    unit: 'percent',
    limits: {
      min: 0,
      max: 95,
      why: 'below 0 beads do not touch, above 95 they lie on top of each other',
    },
    feeds: ['overlap'],
  },
  runout: {
    label: 'Bead length from one electrode',
    unit: 'in',
    limits: { min: 1, max: 40, why: 'no electrode lays less or more' },
    feeds: ['runOut'],
  },
} as const satisfies Record<string, BoothQuantity>;

export type BoothWordInLink = keyof typeof boothQuantities;

export const boothQuantity = (word: BoothWordInLink): BoothQuantity => boothQuantities[word];

export const isBoothWord = (word: string): word is BoothWordInLink =>
  Object.hasOwn(boothQuantities, word);
