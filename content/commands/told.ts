/** An answer as lines of text for a terminal. */
import type { Answer, Typed } from '../../lib/answer.ts';
import type { Calculation, Citation, Output } from '../../lib/calculation.ts';
import { sourceOf } from '../../lib/sources.ts';
import { printQuantity } from '../../lib/text/quantity-text.ts';
import { type Reported, reported } from '../../lib/text/reported.ts';
import { speak } from '../../lib/text/say.ts';
import { shownPrinted } from '../../lib/text/shown.ts';
import { workedLines } from '../../lib/text/worked-lines.ts';
import type { System } from '../../lib/units.ts';
import { systemTyped } from './system-typed.ts';

export function told(id: string, calculation: Calculation, typed: Typed, found: Answer): string {
  const system = systemTyped(found.given, typed);
  const lines = [`${calculation.title} (${id})`, ''];
  for (const [name, given] of Object.entries(found.given))
    lines.push(`  ${name} = ${Array.isArray(given) ? `${given.length} rows` : given.text}`);
  lines.push('');
  if (calculation.kind === 'formula')
    for (const { symbols, numbers, answer } of workedLines(calculation, found))
      lines.push(`  ${symbols}`, `    = ${numbers}`, `    = ${answer}`);
  else
    for (const [name, output] of Object.entries<Output>(calculation.outputs))
      lines.push(
        ...shown(
          name,
          output,
          reported(output, found.results[name], 'printed' in output ? { system } : {}),
        ),
      );
  if (found.because.length > 0) lines.push('');
  for (const { text, cite } of found.because)
    lines.push(`  ${speak(text, system)}${cite ? ` [${citation(cite)}]` : ''}`);
  lines.push('', 'Limits', ...limits(calculation, system));
  lines.push('', 'Sources', ...calculation.cite.map((cite) => `  ${citation(cite)}`));
  return lines.join('\n');
}

function shown(name: string, output: Output, { value, unit }: Reported): string[] {
  const lead = `  ${name} (${output.label}): `;
  if (typeof value === 'number' && unit && 'printed' in output)
    return [lead + shownPrinted(output, value, unit)];
  if (typeof value === 'number' && unit)
    return [
      lead + printQuantity(value, unit, { digits: ('digits' in output && output.digits) || 3 }),
    ];
  if (!Array.isArray(value))
    return 'shape' in output ? [] : [lead + (value === null ? 'none' : String(value))];
  return [
    lead,
    ...value.map(
      (row) =>
        `    ${Object.values(row as Record<string, Reported>)
          .map(cell)
          .join(' · ')}`,
    ),
  ];
}

const cell = ({ value, unit }: Reported): string =>
  typeof value === 'number' && unit ? printQuantity(value, unit) : String(value ?? '');

function limits(calculation: Calculation, system: System): string[] {
  return Object.entries(calculation.inputs).flatMap(([name, input]) => {
    if (!('limits' in input)) return [];
    const { min, max, why } = input.limits;
    const unit = 'printed' in input ? input.printed.us : input.unit;
    return [
      `  ${name}: ${min ?? '…'} to ${max ?? '…'} ${unit === '1' ? '' : unit}: ${speak(why, system)}`,
    ];
  });
}

const citation = ({ source, at, known }: Citation): string =>
  `${sourceOf(source).title}${at ? `, ${at}` : ''} (${known})`;
