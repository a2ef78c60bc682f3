/** A calculation as data: what it asks, what it answers, where it stops. Documents the library. */
import type { Calculation, Input, Output } from '../../lib/calculation.ts';
import { speak } from '../../lib/text/say.ts';

export const described = (id: string, calculation: Calculation): object => ({
  id,
  kind: calculation.kind,
  title: calculation.title,
  summary: say(calculation.summary),
  inputs: mapValues(calculation.inputs as Record<string, Input>, describeInput),
  outputs: mapValues(calculation.outputs as Record<string, Output>, describeOutput),
  ...(calculation.kind === 'formula' &&
    calculation.constants && { constants: calculation.constants }),
  beware: (calculation.beware ?? []).map(say),
  sources: calculation.cite,
});

function describeInput(input: Input): object {
  const { label, obtain, optional } = input;
  const shared = {
    label,
    obtain: say(obtain),
    ...(optional && { optional }),
    example: input.example,
  };
  if ('list' in input) return { ...shared, rows: mapValues(input.list, describeInput) };
  if ('choices' in input)
    return { ...shared, choices: input.choices, ...(input.default && { default: input.default }) };
  if ('date' in input) return { ...shared, date: true };
  const unit = 'printed' in input ? input.printed.us : input.unit;
  return {
    ...shared,
    symbol: input.symbol,
    unit,
    ...('printed' in input && { printed: input.printed }),
    limits: { ...input.limits, why: say(input.limits.why) },
    ...('usual' in input &&
      input.usual && { usual: { ...input.usual, why: say(input.usual.why) } }),
    ...('default' in input && input.default && { default: input.default }),
    ...('whole' in input && input.whole && { whole: true }),
  };
}

function describeOutput(output: Output): object {
  if ('list' in output) return { ...output, list: mapValues(output.list, (column) => column) };
  return { ...output };
}

const say = (text: string): string => speak(text, 'us');

function mapValues<T>(record: Record<string, T>, change: (value: T) => unknown): object {
  return Object.fromEntries(Object.entries(record).map(([name, value]) => [name, change(value)]));
}
