/** A reading of an etched section and how far off it may be. */
export interface Measured {
  /** Millimeters, square millimeters, degrees or percent. */
  value: number;
  /** The true value lies within this of the reading in at least 95 of 100 sections. */
  uncertainty: number;
}

/**
 * Two standard uncertainties hold 95 of 100 when readings follow their marks in straight lines. The
 * greatest and the least of several noisy marks do not, so a little more is taken.
 */
export const coverage = 2.25;
