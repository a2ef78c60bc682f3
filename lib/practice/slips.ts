/**
 * Which slip fits a wrong number. Some show by working the problem again with the mistake in it;
 * others by the factor that a usual mistake leaves behind, where the problem has what it mixes up.
 */
import { answer } from '../answer.ts';
import type { Input, Output } from '../calculation.ts';
import { printStated } from '../text/quantity-text.ts';
import { convert, sameKind, type Unit, unitFor, unitSign, units } from '../units.ts';
import { type Asked, numberOf, outputOf, tolerance } from './asked.ts';
import { misread } from './misread.ts';
import { quotedLabel } from './quoted-label.ts';
import { slipsByFactor } from './slips-by-factor.ts';

/** A wrong value, in the unit of the answer, and the sentence that helps. */
export interface Slip {
  value: number;
  text: string;
}

/** Neighbors are other figures of the same problem; the others are mistakes on the way. */
export function slipsOf(
  asked: Asked,
  computed: number,
  unit: Unit,
): { neighbors: Slip[]; others: Slip[] } {
  return {
    neighbors: [...otherUnit(asked, computed, unit), ...figures(asked, unit)],
    others: [
      ...misread(asked, computed, unit),
      ...slipsByFactor(asked, computed, unit),
      ...upsideDown(asked, computed, unit),
    ],
  };
}

/** The right answer in another unit of its kind, which was not written. */
function otherUnit(asked: Asked, computed: number, unit: Unit): Slip[] {
  const output = outputOf(asked);
  return (Object.keys(units) as Unit[])
    .filter((other) => other !== unit && sameKind(other, unit))
    .map((other) => ({
      value:
        'printed' in output && Object.values(output.printed).includes(other)
          ? (numberOf(output, asked.results[asked.want], other) as number)
          : convert(computed, unit, other),
      text: `That is right in ${unitSign(other)}, but asked is ${unitSign(unit)}. Write the unit, or convert it.`,
    }));
}

/** Another figure of the same kind was given instead: the heat for the arc energy, the leg for the throat. */
function figures(asked: Asked, unit: Unit): Slip[] {
  const { calculation, results, typed, want, system } = asked;
  const label = quotedLabel(outputOf(asked));
  const slips: Slip[] = [];
  for (const [name, other] of Object.entries<Output>(calculation.outputs)) {
    if (name === want || !fits(other, unit)) continue;
    const value = numberOf(other, results[name], unit);
    const text = `That is ${quotedLabel(other)}. Asked is ${label}.`;
    if (value !== undefined) slips.push({ value, text });
  }
  const found = answer(calculation, typed);
  if (!found.ok || unit === '1') return slips;
  for (const [name, input] of Object.entries<Input>(calculation.inputs)) {
    const given = found.given[name];
    if (!fits(input, unit) || !given || Array.isArray(given) || given.value === undefined) continue;
    const value = convert(given.value, given.unit as Unit, unit);
    const said = `${quotedLabel(input)}, ${printStated(value, unitFor(unit, system))} as given`;
    slips.push({ value, text: `That is ${said}. Asked is ${label}.` });
  }
  return slips;
}

const fits = (part: Input | Output, unit: Unit): boolean =>
  ('unit' in part && sameKind(part.unit, unit)) ||
  ('printed' in part && sameKind(part.printed.us, unit));

/** A rate is one given value divided by another: here the wrong way round, or with units forgotten. */
function upsideDown(asked: Asked, computed: number, unit: Unit): Slip[] {
  const found = answer(asked.calculation, asked.typed);
  if (!found.ok || !unit.includes('/')) return [];
  const given = Object.entries(found.given).flatMap(([name, one]) =>
    asked.typed[name] !== undefined && !Array.isArray(one) && one.value && one.unit
      ? [{ value: one.value, unit: one.unit }]
      : [],
  );
  return given.flatMap((over) =>
    given
      .filter((under) => !sameKind(over.unit, under.unit))
      .map((under) => ({
        value: over.value / under.value,
        text: `That is ${printStated(over.value, over.unit)} divided by ${printStated(under.value, under.unit)}. The hint shows which way the rule goes, and its units.`,
      }))
      .filter(({ value }) => Math.abs(value / computed - 1) > tolerance),
  );
}
