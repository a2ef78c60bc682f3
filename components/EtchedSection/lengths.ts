import type { QuantityInput } from '../../lib/calculation.ts';
import { readQuantity } from '../../lib/text/quantity-text.ts';
import { speak } from '../../lib/text/say.ts';
import { convert, type System, unitFor } from '../../lib/units.ts';
import { boxText } from '../Calculator/entries.ts';

/** The lengths that are typed, in the order they are asked for. */
export type LengthName = 'length' | 'width' | 'height' | 'lengthError' | 'size';

/** What was typed, and in which system; the units switch never changes it. */
export interface LengthEntry {
  text: string;
  system: System;
}

interface LengthField {
  label: string;
  hint: string;
  /** In millimeters. */
  min: number;
  max: number;
  range: string;
}

export const lengthFields: Readonly<Record<LengthName, LengthField>> = {
  length: {
    label: 'Distance between the two points',
    hint: 'What the ruler says, or the caliper on the plate.',
    min: 1,
    max: 1000,
    range: '{1/16 in|1 mm} to {40 in|1000 mm}',
  },
  width: {
    label: 'First side of the rectangle',
    hint: 'From the first corner to the second.',
    min: 1,
    max: 1000,
    range: '{1/16 in|1 mm} to {40 in|1000 mm}',
  },
  height: {
    label: 'Second side of the rectangle',
    hint: 'From the second corner to the third.',
    min: 1,
    max: 1000,
    range: '{1/16 in|1 mm} to {40 in|1000 mm}',
  },
  lengthError: {
    label: 'Give or take, of that length',
    hint: 'A steel rule is good to about {0.004 in|0.1 mm} (common practice, no source). Plate is seldom as thick as its name: measure it.',
    min: 0,
    max: 10,
    range: '0 to {3/8 in|10 mm}',
  },
  size: {
    label: 'Size on the drawing',
    hint: 'Leave it empty to judge only by the code.',
    min: 1,
    max: 75,
    range: '{1/16 in|1 mm} to {3 in|75 mm}',
  },
};

const unit = (system: System) => unitFor('mm', system);

/** The text of the box for a reader of `system`. */
export const lengthText = ({ text, system: typed }: LengthEntry, system: System): string =>
  boxText({ unit: 'mm' } as QuantityInput, text, typed, system);

/**
 * The length in millimeters with the number and system it was typed in; nothing for an empty box; or a
 * phrase that begins with the field's name.
 */
export function readLength(name: LengthName, { text, system }: LengthEntry) {
  const { label, min, max, range } = lengthFields[name];
  if (text.trim() === '') return undefined;
  const reading = readQuantity(text, unit(system));
  if ('problem' in reading) return { problem: `${label} ${reading.problem}` };
  const mm = convert(reading.value, reading.unit, 'mm');
  // A sixteenth counts as the millimeter that it stands for.
  if (mm < min || mm > max) return { problem: `${label} must be ${speak(range, system)}` };
  const typedIn: System = reading.unit === 'in' || reading.unit === 'ft' ? 'us' : 'metric';
  return { mm, typed: { value: convert(mm, 'mm', unit(typedIn)), system: typedIn } };
}
