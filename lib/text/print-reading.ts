import type { Unit } from '../units.ts';
import { printQuantity, printStated, readQuantity } from './quantity-text.ts';

/**
 * A measured value as simple as it was meant, yet with as many figures as it takes to stand on its
 * own side of `limit`, which is in the same unit: 0.8 mm is 0.031 in, and 0.0315 in beside 1/32 in.
 */
export function printReading(value: number, unit: Unit, limit: number): string {
  const plain = printStated(value, unit);
  const texts = [plain, ...[3, 4, 5, 6].map((digits) => printQuantity(value, unit, { digits }))];
  return texts.find((text) => side(printed(text, unit), limit) === side(value, limit)) ?? plain;
}

function printed(text: string, unit: Unit): number {
  const reading = readQuantity(text, unit);
  return 'value' in reading ? reading.value : Number.NaN;
}

/** A billionth is no side. */
const side = (value: number, limit: number): number =>
  Math.abs(value - limit) <= 1e-9 * Math.max(1, Math.abs(limit)) ? 0 : Math.sign(value - limit);
