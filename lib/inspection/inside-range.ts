/** A reading beside the range that a welding procedure gives for it. */
import { NoAnswer } from '../no-answer.ts';

export const insideVerdicts = ['yes', 'no, too low', 'no, too high', 'not checked'] as const;
export type InsideVerdict = (typeof insideVerdicts)[number];

/** Room for the last bits of a reading that was converted from another unit. */
const bits = 1e-9;

/**
 * Ends count as inside; one end alone is enough. Not checked without a reading or without an end.
 * Throws NoAnswer, at `field`, for a range that ends below its start.
 */
export function insideRange(
  reading: number | undefined,
  from: number | undefined,
  to: number | undefined,
  field: string,
): InsideVerdict {
  const [least, most] = [from ?? -Infinity, to ?? Infinity];
  if (least > most) throw new NoAnswer('The range ends below its start', field);
  if (reading === undefined || (from === undefined && to === undefined)) return 'not checked';
  if (reading < least - bits * Math.abs(least)) return 'no, too low';
  if (reading > most + bits * Math.abs(most)) return 'no, too high';
  return 'yes';
}
