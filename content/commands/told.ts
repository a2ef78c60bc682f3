/**
 * An answer as lines of text for a terminal: what was given, the working or the results, why, what to
 * beware of, the limits and the sources.
 */
import type { Answer, Typed } from '../../lib/answer.ts';
import type { Calculation, Citation, Output, Reason } from '../../lib/calculation.ts';
import { sourceOf } from '../../lib/sources.ts';
import { printQuantity, printStated } from '../../lib/text/quantity-text.ts';
import { type Reported, reported } from '../../lib/text/reported.ts';
import { speak } from '../../lib/text/say.ts';
import { practical, shownPrinted } from '../../lib/text/shown.ts';
import { workedLines } from '../../lib/text/worked-lines.ts';
import { convert, type System, unitFor } from '../../lib/units.ts';
import { systemTyped } from './system-typed.ts';

export function told(id: string, calculation: Calculation, typed: Typed, found: Answer): string {
  const system = systemTyped(calculation, typed);
  const lines = [`${calculation.title} (${id})`, ''];
  for (const [name, given] of Object.entries(found.given))
    lines.push(`  ${name} = ${Array.isArray(given) ? `${given.length} rows` : given.text}`);
  lines.push('', ...results(calculation, found, system));
  if (found.because.length > 0) lines.push('');
  for (const reason of found.because) lines.push(`  ${reasonText(reason, system)}`);
  const { beware = [] } = calculation;
  if (beware.length > 0)
    lines.push('', 'Beware', ...beware.map((text) => `  ${speak(text, system)}`));
  const bounds = limits(calculation, system);
  if (bounds.length > 0) lines.push('', 'Limits', ...bounds);
  lines.push('', 'Sources', ...calculation.cite.map((cite) => `  ${citation(cite)}`));
  return lines.join('\n');
}

/** Symbols, numbers and answer of a formula; the outputs of a procedure, one by one. */
function results(calculation: Calculation, found: Answer, system: System): string[] {
  if (calculation.kind === 'formula')
    return workedLines(calculation, found).flatMap(({ name, symbols, numbers, answer }) => {
      const size = practical(calculation.outputs[name] as Output, found.results[name], system);
      return [
        `  ${symbols}`,
        `    = ${numbers}`,
        `    = ${answer}${size ? `, so ${size}` : ''} (${name}: ${calculation.outputs[name]?.label})`,
      ];
    });
  return Object.entries<Output>(calculation.outputs).flatMap(([name, output]) => {
    const wish = 'printed' in output ? { system } : {};
    return shown(name, output, reported(output, found.results[name], wish));
  });
}

const reasonText = ({ kind, text, cite }: Reason, system: System): string =>
  `${kind === 'caution' ? 'Caution: ' : ''}${speak(text, system)}${cite ? ` [${citation(cite)}]` : ''}`;

function shown(name: string, output: Output, { value, unit }: Reported): string[] {
  const lead = `  ${name} (${output.label}): `;
  if (typeof value === 'number' && unit && 'printed' in output)
    return [lead + shownPrinted(output, value, unit)];
  if (typeof value === 'number' && unit)
    return [
      lead + printQuantity(value, unit, { digits: ('digits' in output && output.digits) || 3 }),
    ];
  if ('shape' in output) return [];
  if (!Array.isArray(value) || !('list' in output)) return [lead + plainText(value)];
  const heads = Object.values(output.list).map(({ label }) => label);
  const rows = value.map((row) => Object.values(row as Record<string, Reported>).map(cell));
  return [lead, ...[heads, ...rows].map((line) => `    ${line.join(' · ')}`)];
}

function plainText(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === null ? 'none' : String(value);
}

const cell = ({ value, unit }: Reported): string =>
  typeof value === 'number' && unit ? printQuantity(value, unit) : String(value ?? '–');

function limits(calculation: Calculation, system: System): string[] {
  return Object.entries(calculation.inputs).flatMap(([name, input]) => {
    if (!('limits' in input)) return [];
    const { min, max, why } = input.limits;
    const declared = 'printed' in input ? input.printed.us : input.unit;
    const own = 'printed' in input ? input.printed[system] : unitFor(declared, system);
    const bound = (value: number | undefined) =>
      value === undefined ? '…' : printStated(convert(value, declared, own), own);
    return [`  ${name}: ${bound(min)} to ${bound(max)}: ${speak(why, system)}`];
  });
}

const citation = ({ source, at, known }: Citation): string =>
  `${sourceOf(source).title}${at ? `, ${at}` : ''} (${known})`;
