/**
 * Which of two printed texts was typed? An example prints each given value for both readers, and the
 * one in the other system is converted and rounded. The typed one is the one that gives the other
 * when it is printed for that reader; where both do, the rounder.
 */
import { printStated, readQuantity } from '../text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';

/** @param declared the unit of the input, which gives a bare number its unit */
export function typedText(shown: Record<System, string>, declared: Unit): string {
  const { us, metric } = shown;
  if (us === metric) return us;
  const gives = (text: string, other: string, system: System) => {
    const reading = readQuantity(text, declared);
    if ('problem' in reading) return false;
    const to = unitFor(reading.unit, system);
    return printStated(convert(reading.value, reading.unit, to), to) === other;
  };
  const both = [gives(us, metric, 'metric'), gives(metric, us, 'us')] as const;
  if (both[0] !== both[1]) return both[0] ? us : metric;
  return digits(metric) < digits(us) ? metric : us;
}

/** Significant digits; a point is one more, and a fraction of an inch is as round as one digit. */
const digits = (text: string): number =>
  /\d\/\d/.test(text)
    ? 1
    : text.replace(/\D/g, '').replace(/^0+|0+$/g, '').length + (text.includes('.') ? 1 : 0);
