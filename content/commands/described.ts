/**
 * A calculation as data, so that somebody who reads only this can use it: what it is for, what it
 * asks and in which units, what it answers, where it stops, and from which publications.
 */
import type {
  Calculation,
  Citation,
  Input,
  Output,
  PrintedInput,
  QuantityInput,
} from '../../lib/calculation.ts';
import { sourceOf } from '../../lib/sources.ts';
import { speak } from '../../lib/text/say.ts';
import { sameKind, type Unit, unitFor, units } from '../../lib/units.ts';

export const described = (id: string, calculation: Calculation): object => ({
  id,
  kind: calculation.kind,
  title: calculation.title,
  summary: say(calculation.summary),
  inputs: mapValues(calculation.inputs as Record<string, Input>, describeInput),
  outputs: mapValues(calculation.outputs as Record<string, Output>, describeOutput),
  ...(calculation.kind === 'formula' &&
    calculation.constants && {
      constants: mapValues(calculation.constants, ({ cite, ...constant }) => ({
        ...constant,
        cite: describeCitation(cite),
      })),
    }),
  beware: (calculation.beware ?? []).map(say),
  sources: calculation.cite.map(describeCitation),
});

/** What is asked: in words what it takes, with everything that the words need. */
function describeInput(input: Input): object {
  const { label, obtain, optional } = input;
  const standard = 'default' in input ? input.default : undefined;
  const shared = {
    label,
    obtain: say(obtain),
    required: standard === undefined && !optional,
    ...(optional && { optional }),
    ...(standard !== undefined && { default: standard }),
  };
  if ('list' in input)
    return {
      ...shared,
      takes: 'rows, each with these columns',
      rows: mapValues(input.list, describeInput),
      example: input.example,
    };
  if ('choices' in input)
    return { ...shared, takes: 'one of these', choices: input.choices, example: input.example };
  if ('date' in input)
    return { ...shared, date: true, takes: 'a day, as 2026-03-02', example: input.example };
  const unit = 'printed' in input ? input.printed.us : input.unit;
  const isWhole = 'whole' in input && input.whole;
  return {
    ...shared,
    takes: takesOf(unit, 'printed' in input, isWhole === true),
    symbol: input.symbol,
    unit,
    ...unitsLike(unit),
    ...('printed' in input && { printed: input.printed }),
    ...(isWhole && { whole: true }),
    limits: describeBounds(input.limits, unit),
    ...('usual' in input && input.usual && { usual: describeBounds(input.usual, unit) }),
    example: exampleOf(input),
  };
}

const takesOf = (unit: Unit, isPrinted: boolean, isWhole: boolean): string => {
  if (isPrinted)
    return 'a size with its unit; it is looked up in the figures that are printed in that system';
  if (unit === 'h') return 'hours, or a clock time such as 18:15; a bare number stands in `unit`';
  if (unit !== '1') return 'a quantity; a bare number stands in `unit`';
  return isWhole ? 'a whole number' : 'a number';
};

function describeOutput(output: Output): object {
  if ('list' in output) return { ...output, gives: 'rows', list: mapValues(output.list, column) };
  if ('shape' in output) return { ...output, gives: 'outlines to draw, in millimeters' };
  if ('text' in output) return { ...output, gives: 'a sentence' };
  if ('yes' in output) return { ...output, gives: 'yes or no' };
  const or = 'words' in output && ('unit' in output || 'printed' in output);
  if ('printed' in output)
    return { ...output, gives: `a figure as printed in each system${or ? ', or a word' : ''}` };
  if ('unit' in output)
    return {
      ...output,
      gives: `a ${output.unit === '1' ? 'number' : 'quantity'}${or ? ', or a word' : ''}`,
      ...unitsLike(output.unit),
    };
  return { ...output, gives: 'one of these words' };
}

const column = (one: { label: string }): object => ({
  ...one,
  gives: 'unit' in one ? 'a quantity' : 'a sentence',
});

const describeBounds = (
  { why, cite, ...bounds }: { min?: number; max?: number; why: string; cite?: Citation },
  unit: Unit,
): object => ({ ...bounds, unit, why: say(why), ...(cite && { cite: describeCitation(cite) }) });

const describeCitation = ({ source, ...where }: Citation): object => ({
  source,
  title: sourceOf(source).title,
  ...where,
});

/** Every unit that the quantity may be given or asked for in; a plain number has none. */
const unitsLike = (unit: Unit): object =>
  unit === '1'
    ? {}
    : { units: (Object.keys(units) as Unit[]).filter((one) => sameKind(one, unit)) };

/** The example as it would be typed, with its unit, for a reader of each system. */
function exampleOf({ example, ...input }: QuantityInput | PrintedInput): string | object {
  const { us, metric } =
    'printed' in input
      ? input.printed
      : { us: unitFor(input.unit, 'us'), metric: unitFor(input.unit, 'metric') };
  if (typeof example !== 'string')
    return { us: withUnit(example.us, us), metric: withUnit(example.metric, metric) };
  return withUnit(example, 'printed' in input ? us : input.unit);
}

const withUnit = (text: string, unit: Unit): string =>
  unit !== '1' && /\d$/.test(text) && !text.includes(':') ? `${text} ${unit}` : text;

const say = (text: string): string => speak(text, 'us');

function mapValues<T>(record: Record<string, T>, change: (value: T) => unknown): object {
  return Object.fromEntries(Object.entries(record).map(([name, value]) => [name, change(value)]));
}
