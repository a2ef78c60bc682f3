/** What a calculation asks for, as lines for a terminal: each input with an example that can be typed. */
import type { Calculation, Input } from '../../lib/calculation.ts';
import { speak } from '../../lib/text/say.ts';

export const asked = ({ summary, inputs }: Calculation): string[] => [
  speak(summary, 'us'),
  'It asks for:',
  ...Object.entries<Input>(inputs).map(
    ([name, input]) => `  ${name}=${example(input)}  ${input.label}${words(input)}${mark(input)}`,
  ),
];

function example(input: Input): string {
  if ('list' in input) return `'${JSON.stringify(input.example)}'`;
  const { example: typed } = input;
  const text = typeof typed === 'string' ? typed : typed.us;
  const needsUnit = 'unit' in input ? input.unit !== '1' : 'printed' in input;
  const unit = 'printed' in input ? input.printed.us : 'unit' in input ? input.unit : '';
  const full = needsUnit && /^[\d./-]+$/.test(text) ? `${text} ${unit}` : text;
  return /[^\w./-]/.test(full) ? `"${full}"` : full;
}

const words = (input: Input): string => ('choices' in input ? `: ${input.choices.join(', ')}` : '');

function mark(input: Input): string {
  if ('default' in input && input.default !== undefined) return ` (${input.default} if left out)`;
  return input.optional ? ' (may be left out)' : '';
}
