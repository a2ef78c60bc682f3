/** The readings of a section in the order and under the names in which they are shown. */
import type { FilletReadings } from '../geometry/etched-fillet.ts';
import type { Unit } from '../units.ts';
import type { Measured } from './measured.ts';
import type { MeasuredFillet } from './measured-fillet.ts';

export interface NamedReading<Name extends string = string> extends Measured {
  name: Name;
  label: string;
  /** Millimeters, square millimeters, degrees or percent. */
  unit: Unit;
}

const named: readonly (readonly [keyof FilletReadings, string, Unit])[] = [
  ['legA', 'Leg on plate A', 'mm'],
  ['legB', 'Leg on plate B', 'mm'],
  ['angle', 'Angle between the plates', 'deg'],
  ['faceWidth', 'Width of the face, toe to toe', 'mm'],
  ['throat', 'Theoretical throat', 'mm'],
  ['actualThroat', 'Actual throat, penetration included', 'mm'],
  ['rise', 'Convexity', 'mm'],
  ['hollow', 'Concavity', 'mm'],
  ['penetration', 'Penetration beyond the root', 'mm'],
  ['fusionA', 'Depth of fusion into plate A, toward the toe', 'mm'],
  ['fusionB', 'Depth of fusion into plate B, toward the toe', 'mm'],
  ['undercutA', 'Undercut at toe A', 'mm'],
  ['undercutB', 'Undercut at toe B', 'mm'],
  ['depositArea', 'Area of deposit', 'mm2'],
  ['meltedArea', 'Area of melted base metal', 'mm2'],
  ['dilution', 'Dilution', 'percent'],
];

/** A face that is not hollow has no concavity: such readings are none, not below none. */
const neverBelowZero: ReadonlySet<string> = new Set([
  'rise',
  'hollow',
  'undercutA',
  'undercutB',
  'meltedArea',
]);

/** A reading that was not taken is left out. */
export const filletReadings = (found: MeasuredFillet): NamedReading<keyof FilletReadings>[] =>
  named.flatMap(([name, label, unit]) => {
    const reading = found[name];
    if (!reading) return [];
    const value = neverBelowZero.has(name) ? Math.max(0, reading.value) : reading.value;
    return [{ name, label, unit, value, uncertainty: reading.uncertainty }];
  });
