/**
 * Readings of an etched fillet in millimeters, each with its uncertainty. For the calculation and
 * for a page that measures on a photograph.
 */
import { type FilletMarks, type FilletReadings, readFillet } from '../geometry/etched-fillet.ts';
import { filletUncertainty } from '../geometry/fillet-uncertainty.ts';
import { coverage, type Measured } from './measured.ts';

export interface PictureScale {
  /** Millimeters in one unit of the picture. */
  scale: number;
  /** Standard uncertainty of the scale, as a share of it. */
  scaleError: number;
  /** Standard error of each coordinate of a mark, in units of the picture. */
  markingError: number;
}

export type MeasuredFillet = { [Name in keyof FilletReadings]: Measured };

/** The power of the scale in a reading. */
const powers: Readonly<Record<keyof FilletReadings, 0 | 1 | 2>> = {
  legA: 1,
  legB: 1,
  angle: 0,
  faceWidth: 1,
  throat: 1,
  actualThroat: 1,
  rise: 1,
  hollow: 1,
  penetration: 1,
  fusionA: 1,
  fusionB: 1,
  undercutA: 1,
  undercutB: 1,
  depositArea: 2,
  meltedArea: 2,
  dilution: 0,
};

/** Lengths in millimeters, areas in square millimeters, angles in degrees, dilution in percent. */
export function measuredFillet(marks: FilletMarks, picture: PictureScale): MeasuredFillet {
  const readings = readFillet(marks);
  const moves = filletUncertainty(marks, picture.markingError);
  const entries = (Object.keys(readings) as (keyof FilletReadings)[]).map((name) => {
    const power = powers[name];
    const value = (readings[name] as number) * picture.scale ** power;
    const fromMarks = (moves[name] ?? 0) * picture.scale ** power;
    const fromScale = value * power * picture.scaleError;
    return [name, { value, uncertainty: coverage * Math.hypot(fromMarks, fromScale) }];
  });
  return Object.fromEntries(entries);
}
