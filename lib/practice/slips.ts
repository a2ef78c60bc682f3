/**
 * Which slip fits a wrong number. Some show by working the problem again with the mistake in it;
 * others by the factor that a usual mistake leaves behind.
 */
import { answer, type Typed } from '../answer.ts';
import type { Calculation, Input, Output } from '../calculation.ts';
import { readQuantity } from '../text/quantity-text.ts';
import { convert, sameKind, type Unit, unitFor, unitSign } from '../units.ts';

/** A wrong value, in the unit of the asked output, and the sentence that helps. */
export interface Slip {
  value: number;
  text: string;
}

const factors: readonly [number, string][] = [
  [25.4, '25.4 times too much: inches and millimeters were mixed'],
  [1 / 25.4, '25.4 times too little: inches and millimeters were mixed'],
  [25.4 ** 2, '645 times too much: square inches and square millimeters were mixed'],
  [25.4 ** -2, '645 times too little: square inches and square millimeters were mixed'],
  [10, 'ten times too much: look at the decimal point'],
  [1 / 10, 'ten times too little: look at the decimal point'],
  [1000, 'a thousand times too much: kilo got lost'],
  [1 / 1000, 'a thousand times too little: kilo got lost'],
  [60, 'sixty times too much: seconds and minutes, or minutes and hours, were mixed'],
  [1 / 60, 'sixty times too little: seconds and minutes, or minutes and hours, were mixed'],
  [1 / 2.20462, 'pounds and kilograms mixed: there are 2.2 pounds in a kilogram'],
  [2.20462, 'pounds and kilograms mixed: there are 2.2 pounds in a kilogram'],
  [Math.SQRT2, 'the leg where the throat is asked: they differ by the root of two'],
  [Math.SQRT1_2, 'the throat where the leg is asked: they differ by the root of two'],
  [2, 'twice too much: a diameter for a radius, or both sides for one'],
  [1 / 2, 'half: a radius for a diameter, or one side for two'],
  [4, 'four times too much: a diameter was squared where its radius belongs'],
  [1 / 4, 'a quarter: a radius was squared where the diameter belongs'],
  [1 / 0.8, 'the answer without the arc efficiency: the metal keeps 0.8 of the energy'],
  [0.8, 'the answer with the arc efficiency in it, and here it does not belong'],
  [100, 'a hundred times too much: a share and a percentage were mixed'],
  [1 / 100, 'a hundred times too little: a share and a percentage were mixed'],
];

/** The slips that leave their factor behind. */
export const slipsByFactor = (computed: number): Slip[] =>
  factors.map(([factor, text]) => ({ value: computed * factor, text: `That is ${text}.` }));

/** Everything that can be told from the problem itself, the likeliest first. */
export function slipsOf(calculation: Calculation, typed: Typed, want: string): Slip[] {
  const found = answer(calculation, typed);
  const output = calculation.outputs[want] as Output;
  if (!found.ok || !('unit' in output)) return [];
  return [
    ...neighbors(calculation, found.results, found.values, want, output.unit),
    ...workedWrongly(calculation, typed, want),
  ];
}

/** Another figure of the same kind was given instead: the heat for the arc energy, the leg for the throat. */
function neighbors(
  { inputs, outputs }: Calculation,
  results: Record<string, unknown>,
  values: Record<string, unknown>,
  want: string,
  unit: Unit,
): Slip[] {
  const asked = (outputs[want] as Output).label;
  const slips: Slip[] = [];
  const add = (value: unknown, from: Input | Output, given: string) => {
    if (typeof value !== 'number' || !('unit' in from) || !sameKind(from.unit, unit)) return;
    const text = `That is ${quotedLabel(from)}${given}. Asked is ${quotedLabel({ label: asked })}.`;
    slips.push({ value: convert(value, from.unit, unit), text });
  };
  for (const [name, other] of Object.entries<Output>(outputs))
    if (name !== want) add(results[name], other, '');
  for (const [name, input] of Object.entries<Input>(inputs))
    if (unit !== '1') add(values[name], input, ', as given');
  return slips;
}

/** The same problem with one given value misread. */
function workedWrongly(calculation: Calculation, typed: Typed, want: string): Slip[] {
  const slips: Slip[] = [];
  const again = (change: Typed, text: string) => {
    const other = answer(calculation, { ...typed, ...change });
    const value = other.ok ? other.results[want] : undefined;
    if (typeof value === 'number') slips.push({ value, text });
  };
  for (const [name, input] of Object.entries<Input>(calculation.inputs)) {
    if (!('unit' in input)) continue;
    const text = typed[name] ?? input.default;
    const reading = readQuantity(String(text ?? ''), input.unit);
    if ('problem' in reading) continue;
    const { value, unit } = reading;
    const called = quotedLabel(input);
    if (name === 'efficiency')
      again({ [name]: '1' }, 'That leaves the arc efficiency out: the metal keeps only a part.');
    if (/diameter/i.test(name)) {
      again(
        { [name]: `${value / 2} ${unit}` },
        `That fits the radius; ${called} goes in as the diameter.`,
      );
      again(
        { [name]: `${value * 2} ${unit}` },
        `That fits twice ${called}: look which goes in, radius or diameter.`,
      );
    }
    if (typed[name] === undefined) continue;
    for (const system of ['us', 'metric'] as const) {
      const taken = unitFor(unit, system);
      if (taken !== unit)
        again(
          { [name]: `${value} ${taken}` },
          `That fits ${called} in ${unitSign(taken)}, and it is given in ${unitSign(unit)}.`,
        );
    }
  }
  return slips;
}

/** A label in running text: up to its first comma, colon or bracket, with a small letter. */
export function quotedLabel({ label }: { label: string }): string {
  const [short = label] = label.split(/[,:(]/);
  const text = short.trim();
  return `“${/^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text}”`;
}
