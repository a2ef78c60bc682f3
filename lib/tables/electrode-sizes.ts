/**
 * Electrode sizes as boxes name them. The same electrode is sold as 5/32 in and as 4.0 mm, which
 * are not quite the same length; tables in inches mean both. Common practice, no source.
 */
const inch = 25.4;

const sizes: ReadonlyArray<{ inches: number; millimeters: readonly number[] }> = [
  { inches: 1 / 16, millimeters: [1.6] },
  { inches: 5 / 64, millimeters: [2] },
  { inches: 3 / 32, millimeters: [2.4, 2.5] },
  { inches: 1 / 8, millimeters: [3.15, 3.2, 3.25] },
  { inches: 5 / 32, millimeters: [4] },
  { inches: 3 / 16, millimeters: [4.8, 5] },
  { inches: 7 / 32, millimeters: [5.6] },
  { inches: 1 / 4, millimeters: [6, 6.4] },
  { inches: 5 / 16, millimeters: [8] },
  { inches: 3 / 8, millimeters: [9.5, 10] },
];

/** A box that names a size in either way lies within this of it, in millimeters. */
const close = 0.03;

/** The size in inches that a box with this diameter (in inches) belongs to, if it is a trade size. */
export const tradeSize = (diameter: number): number | undefined =>
  sizes.find(({ inches, millimeters }) =>
    [inches * inch, ...millimeters].some((size) => Math.abs(diameter * inch - size) < close),
  )?.inches;
