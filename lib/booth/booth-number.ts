/** One number of a booth: read as it stands in a link or a box, written short, shown to both readers. */
import { printFraction, ruleOf } from '../text/inches.ts';
import { printStated, readQuantity } from '../text/quantity-text.ts';
import { quoted } from '../text/quoted.ts';
import { convert, type System, unitFor, unitOf, unitSign } from '../units.ts';
import { type BoothWordInLink, boothQuantity } from './booth-quantities.ts';

export type BoothNumberRead = { ok: true; text: string } | { ok: false; problem: string };

const longest = 24;

/**
 * Reads what was typed. A bare number stands in the unit that a reader of `system` is shown; the
 * text that comes back carries its unit, without a blank, as a link likes it: `1-1/2in`, `130A`.
 */
export function readBoothNumber(
  word: BoothWordInLink,
  typed: string,
  system: System = 'us',
): BoothNumberRead {
  const it = boothQuantity(word);
  const refuse = (problem: string) => ({ ok: false, problem: `${it.label} ${problem}` }) as const;
  if (typed.length > longest) return refuse(`is too long: ${quoted(typed, 12)}`);
  if ('choices' in it) {
    const found = it.choices.find((one) => one.toLowerCase() === typed.trim().toLowerCase());
    return found
      ? { ok: true, text: found }
      : refuse(`${quoted(typed)} is not known here; there are ${it.choices.join(', ')}`);
  }
  const reading = readQuantity(typed, unitFor(it.unit, system));
  if ('problem' in reading) return refuse(reading.problem);
  const value = convert(reading.value, reading.unit, it.unit);
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY, why } = it.limits;
  if (value < min || value > max) {
    const bound = value < min ? min : max;
    return refuse(
      `must be at ${value < min ? 'least' : 'most'} {${written(bound, it.unit)}}: ${why}`,
    );
  }
  const unit = reading.unit === 'percent' ? '' : reading.unit;
  return { ok: true, text: `${numberOf(typed).replace(/\s+/g, '-')}${unit}` };
}

/** The number at the beginning of a text that was read, without its unit. */
const numberOf = (text: string): string =>
  text.replace(/^([\s+\-−\d.,/½¼¾⅛⅜⅝⅞]+(?:[eE][+-]?\d+)?).*$/s, '$1').trim();

const written = (value: number, unit: string): string => {
  const rule = unit === 'in' ? ruleOf(value) : undefined;
  return `${rule === undefined ? value : printFraction(value, rule)} ${unit}`;
};

/** A number of a link as each reader sees it: as typed in its own system, converted in the other. */
export function shownBoothNumber(word: BoothWordInLink, text: string): Record<System, string> {
  const it = boothQuantity(word);
  if ('choices' in it) return { us: text, metric: text };
  const reading = readQuantity(text, it.unit);
  if ('problem' in reading) return { us: text, metric: text };
  const { value, unit } = reading;
  const own = unitOf(unit).system;
  const inSystem = (system: System) => {
    if (own === undefined || own === system) return `${numberOf(text)}\u00a0${unitSign(unit)}`;
    const to = unitFor(unit, system);
    return printStated(convert(value, unit, to), to);
  };
  return { us: inSystem('us'), metric: inSystem('metric') };
}
