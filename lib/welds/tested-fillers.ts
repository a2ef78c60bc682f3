/**
 * Which fillers a welder's test covers, deposit by deposit: its own reach, and that of the others
 * that cover it. ASME IX QW-404.30, QW-433 and QW-452.1(b); under AWS D1.1 the coupon alone counts.
 */
import type { Printed } from '../calculation.ts';
import type { Classification } from '../tables/classifications.ts';
import { fNumbers, readDigits } from '../tables/electrodes-a5.1.ts';
import { depositReach } from '../tables/qualified-sizes-ix.ts';
import type { Code } from '../tables/test-positions.ts';
import { type Backing, covers, type FNumber } from './filler-cover.ts';

/** What one filler laid in the coupon. */
interface Laid {
  classification: Classification;
  thickness: Printed;
  layers: number | undefined;
  backing: Backing;
  progression: string | undefined;
}

export interface Deposit extends Laid {
  fNumber: FNumber;
}

/** The listed deposits; where none is listed, one filler made the whole coupon. */
export function depositsOf({
  deposits,
  ...whole
}: Laid & { deposits: Laid[] | undefined }): Deposit[] {
  const laid = deposits && deposits.length > 0 ? deposits : [whole];
  return laid.map((one) => ({ ...one, fNumber: readDigits(one.classification).covering.fNumber }));
}

/** A deposit and what it covers; reaches in inches, undefined where they are unlimited or do not count. */
export function fillerRow(one: Deposit, all: readonly Deposit[], code: Code) {
  const lower = fNumbers.filter((group) => group < one.fNumber);
  const shared = {
    classification: one.classification,
    fNumber: one.fNumber,
    backing: one.backing,
    progression: one.progression ?? 'none',
  };
  if (code === 'AWS D1.1')
    return {
      ...shared,
      own: undefined,
      together: undefined,
      reach: 'by the coupon',
      covers: lower.join(', ') || 'no other group',
    };
  const own = inchesOf(one);
  const together = all
    .filter((other) => covers(other, one) || covers(other, { ...one, backing: 'with backing' }))
    .reduce((sum, other) => sum + inchesOf(other), 0);
  return {
    ...shared,
    own: limited(own),
    together: limited(together),
    reach: reachText(own, together),
    covers: lower.length > 0 ? `${lower.join(', ')} with backing` : 'no other group',
  };
}

function inchesOf({ thickness, layers }: Deposit): number {
  const reach = depositReach(thickness, layers);
  return reach === 'unlimited' ? Number.POSITIVE_INFINITY : reach.us;
}

const limited = (inches: number): number | undefined =>
  Number.isFinite(inches) ? inches : undefined;

function reachText(own: number, together: number): string {
  if (!Number.isFinite(own)) return 'any thickness';
  return Number.isFinite(together) ? 'twice its deposit' : 'any, over its own root';
}
