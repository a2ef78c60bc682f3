/** The section area of one pass, in a plan of passes. */
import { NoAnswer } from '../no-answer.ts';
import { depositedVolume, type Electrode } from './electrode-deposit.ts';

interface OnePass extends Electrode {
  /** Rules over the electrode. */
  passArea?: number | undefined;
  runOut: number;
}

/** Section area of one pass, in the square of the unit of the lengths. */
export function passAreaOf({ passArea, runOut, ...electrode }: OnePass): number {
  if (electrode.stub >= electrode.electrodeLength)
    throw new NoAnswer('The stub is as long as the electrode: nothing was melted', 'stub');
  return passArea ?? depositedVolume(electrode) / runOut;
}

/** An area in a sentence. */
export const saidArea = (squareInches: number): string =>
  `{${Number(squareInches.toPrecision(3))} in2}`;
