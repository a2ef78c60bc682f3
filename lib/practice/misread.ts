/** The same problem worked with one given value misread, left out, or put in the wrong place. */
import { answer, type Typed } from '../answer.ts';
import type { Input } from '../calculation.ts';
import { readQuantity } from '../text/quantity-text.ts';
import { convert, sameKind, type Unit, unitFor, unitSign } from '../units.ts';
import { type Asked, numberOf, outputOf } from './asked.ts';
import { quotedLabel } from './quoted-label.ts';
import type { Slip } from './slips.ts';

interface Value {
  name: string;
  called: string;
  value: number;
  unit: Unit;
  /** Stands in the problem, and is no standard value of the form. */
  given: boolean;
}

/** Wrong values in `unit`, the unit of the answer, each with the sentence that helps. */
export function misread(asked: Asked, computed: number, unit: Unit): Slip[] {
  const { calculation, typed, want } = asked;
  const slips: Slip[] = [];
  const again = (change: Typed, text: string) => {
    const other = answer(calculation, { ...typed, ...change });
    const value = other.ok ? numberOf(outputOf(asked), other.results[want], unit) : undefined;
    // What makes no difference is no slip.
    if (value !== undefined && Math.abs(value - computed) > 1e-9 * Math.abs(computed))
      slips.push({ value, text });
  };
  const values = Object.entries<Input>(calculation.inputs).flatMap(([name, input]) =>
    readValue(name, input, typed),
  );
  for (const value of values) inOne(value, again);
  for (const { value, called, unit: own, name } of values) {
    if (own !== '1' || value <= 0 || value >= 1) continue;
    const share = name === 'efficiency' ? 'the arc efficiency' : called;
    slips.push(
      {
        value: computed * value * value,
        text: `That multiplies by ${share} where the rule divides.`,
      },
      {
        value: computed / value / value,
        text: `That divides by ${share} where the rule multiplies.`,
      },
    );
  }
  const given = values.filter((value) => value.given);
  for (const { value, unit: own, called } of given)
    if (calculation.kind === 'formula' && unit !== '1' && sameKind(own, unit) && value !== 0)
      slips.push({
        value: convert(value, own, unit) ** 2 / computed,
        text: `That goes from ${called} the wrong way: multiplied where the rule divides, or the other way round.`,
      });
  for (const [place, one] of given.entries())
    for (const two of given.slice(place + 1)) inTwo(one, two, again);
  return slips;
}

function readValue(name: string, input: Input, typed: Typed): Value[] {
  if (!('unit' in input || 'printed' in input)) return [];
  const declared = 'printed' in input ? input.printed.us : input.unit;
  const text = typed[name] ?? ('default' in input ? input.default : undefined);
  const reading = readQuantity(String(text ?? ''), declared);
  if ('problem' in reading) return [];
  return [{ ...reading, name, called: quotedLabel(input), given: typed[name] !== undefined }];
}

/** What is left of a whole, without the last bits: 0.3 of 1 less 0.7. */
const without = (part: number, whole: number): number => Number((whole - part).toPrecision(12));

type Again = (change: Typed, text: string) => void;

function inOne({ name, called, value, unit, given }: Value, again: Again): void {
  const put = (number: number, text: string, as: Unit = unit) =>
    again({ [name]: `${number} ${as === '1' ? '' : as}`.trim() }, text);
  if (name === 'efficiency')
    put(1, 'That leaves the arc efficiency out: the metal keeps only a part.');
  else if (given && unit === '1' && value > 0 && value < 1) {
    put(1, `That leaves ${called} out.`);
    const rest = without(value, 1);
    put(rest, `That takes the rest of ${called}: ${rest} instead of ${value}.`);
  }
  if (given && unit === 'percent') {
    put(0, `That leaves ${called} out.`);
    const rest = without(value, 100);
    put(rest, `That takes the rest of ${called}: ${rest} % instead of ${value} %.`);
  }
  if (/diameter/i.test(name)) {
    put(value / 2, `That fits the radius; ${called} goes in as the diameter.`);
    put(value * 2, `That fits twice ${called}: look which goes in, radius or diameter.`);
  }
  if (!given) return;
  if (unit === 'deg') {
    put(
      value / 2,
      `That fits half of ${called}: look whether half the angle goes in, or the whole.`,
    );
    put(value * 2, `That fits twice ${called}: look whether half the angle goes in, or the whole.`);
  }
  if (unit === 's')
    put(
      value * 0.6,
      `That fits ${value} s taken as ${value / 100} min. A minute has sixty seconds.`,
    );
  for (const system of ['us', 'metric'] as const) {
    const taken = unitFor(unit, system);
    if (taken !== unit)
      put(
        value,
        `That fits ${called} in ${unitSign(taken)}, and it is given in ${unitSign(unit)}.`,
        taken,
      );
  }
  if (unit !== '1' && unit !== 'percent' && value !== 0) put(0, `That leaves ${called} out.`);
}

function inTwo(one: Value, two: Value, again: Again): void {
  const text = ({ value, unit: own }: Value) => `${value} ${own === '1' ? '' : own}`.trim();
  if (one.unit !== two.unit || one.value === two.value) return;
  again({ [two.name]: text(one) }, `That takes ${one.called} for ${two.called} too.`);
  again({ [one.name]: text(two) }, `That takes ${two.called} for ${one.called} too.`);
  again(
    { [one.name]: text(two), [two.name]: text(one) },
    `That exchanges ${one.called} and ${two.called}.`,
  );
}
