/** The numbers of a booth as a calculation takes them: by the name of the input and its kind. */
import type { Input, Inputs } from '../calculation.ts';
import type { Classification } from '../tables/classifications.ts';
import { readDigits } from '../tables/electrodes-a5.1.ts';
import { sameKind } from '../units.ts';
import type { Booth } from './booth-link.ts';
import { type BoothWordInLink, boothQuantities } from './booth-quantities.ts';

/** The inputs that take a quantity, by name; an input of another kind is left alone. */
const feeds: Readonly<Record<BoothWordInLink, readonly string[]>> = {
  rootclass: [],
  rootelectrode: [],
  rootcurrent: [],
  class: ['classification', 'electrodeKind'],
  electrode: ['diameter', 'coreDiameter'],
  current: ['current', 'wanted'],
  voltage: ['voltage'],
  thickness: ['thickness', 'thinner', 'thicker'],
  leg: ['leg', 'legA', 'legB', 'filletSize'],
  opening: ['rootOpening'],
  width: ['width'],
  overlap: ['overlap'],
  runout: ['runOut'],
};

/** Inputs that share a name with a quantity of the booth and mean something else. */
const meansOtherwise: Readonly<Record<string, readonly string[]>> = {
  // The strip that is bent, which is thinner than the plate in a side bend.
  'bend-strain': ['thickness'],
  // What a gauge or a meter read on a finished bead: no setting can stand for it.
  'visual-check': ['leg'],
  'procedure-check': ['voltage'],
  'run-out-heat': ['runOut'],
  'fillet-profile': ['leg'],
};

/**
 * What the booth gives to the calculation `id`: input names and texts as a reader would type them.
 * @param given what the calculation is asked with, where that tells whether it is about a root
 */
export function fitBooth(
  id: string,
  inputs: Inputs,
  numbers: Booth['numbers'],
  given: Readonly<Record<string, unknown>> = {},
): Record<string, string> {
  const ofThis = id === 'root-fit-up' || given.use === 'open root' ? forRoot(numbers) : numbers;
  const fitted: Record<string, string> = {};
  for (const [word, text] of Object.entries(ofThis) as [BoothWordInLink, string][])
    for (const name of feeds[word]) {
      if (!Object.hasOwn(inputs, name) || meansOtherwise[id]?.includes(name)) continue;
      const value = valueFor(inputs[name] as Input, word, text);
      if (value !== undefined) fitted[name] = value;
    }
  return fitted;
}

/** The numbers as the root has them. Where none is its own, the booth has one electrode for all. */
function forRoot(numbers: Booth['numbers']): Booth['numbers'] {
  const { rootclass, rootelectrode, rootcurrent, ...others } = numbers;
  if (!rootclass && !rootelectrode && !rootcurrent) return others;
  const { class: _, electrode: __, current: ___, ...rest } = others;
  return {
    ...rest,
    ...(rootclass && { class: rootclass }),
    ...(rootelectrode && { electrode: rootelectrode }),
    ...(rootcurrent && { current: rootcurrent }),
  };
}

function valueFor(input: Input, word: BoothWordInLink, text: string): string | undefined {
  const quantity = boothQuantities[word];
  if ('list' in input) return undefined;
  if ('choices' in input) {
    if (!('choices' in quantity)) return undefined;
    const kind = readDigits(text as Classification).covering.lowHydrogen
      ? 'low-hydrogen'
      : 'not low-hydrogen';
    return [text, kind].find((one) => input.choices.includes(one));
  }
  if ('choices' in quantity || 'date' in input) return undefined;
  const declared = 'printed' in input ? input.printed.us : input.unit;
  return sameKind(declared, quantity.unit) ? text : undefined;
}
