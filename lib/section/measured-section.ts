/**
 * Readings of an etched section in millimeters, each with its uncertainty. For the calculation and
 * for a page that measures on a photograph.
 */
import {
  readSection,
  type SectionMarks,
  type SectionReadings,
} from '../geometry/fillet-section.ts';
import { sectionUncertainty } from '../geometry/section-uncertainty.ts';

export interface PictureScale {
  /** Millimeters in one unit of the picture. */
  scale: number;
  /** Standard uncertainty of the scale, as a share of it. */
  scaleError: number;
  /** Standard error of each coordinate of a mark, in units of the picture. */
  markingError: number;
}

export interface Measured {
  /** Millimeters, square millimeters, degrees or percent. */
  value: number;
  /** The true value lies within this of the reading in at least 95 of 100 sections. */
  uncertainty: number;
}

export type MeasuredSection = { [Name in keyof SectionReadings]: Measured };

/** The power of the scale in a reading. */
const powers: Readonly<Record<keyof SectionReadings, 0 | 1 | 2>> = {
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

/**
 * Two standard uncertainties hold 95 of 100 when readings follow their marks in straight lines. The
 * greatest and the least of several noisy marks do not, so a little more is taken.
 */
export const coverage = 2.25;

/** Lengths in millimeters, areas in square millimeters, angles in degrees, dilution in percent. */
export function measuredSection(marks: SectionMarks, picture: PictureScale): MeasuredSection {
  const readings = readSection(marks);
  const moves = sectionUncertainty(marks, picture.markingError);
  const entries = (Object.keys(readings) as (keyof SectionReadings)[]).map((name) => {
    const power = powers[name];
    const value = (readings[name] as number) * picture.scale ** power;
    const fromMarks = (moves[name] ?? 0) * picture.scale ** power;
    const fromScale = value * power * picture.scaleError;
    return [name, { value, uncertainty: coverage * Math.hypot(fromMarks, fromScale) }];
  });
  return Object.fromEntries(entries);
}
