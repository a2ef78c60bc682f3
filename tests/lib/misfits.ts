import type { Column, Output } from '../../lib/calculation.ts';
import { speak } from '../../lib/text/say.ts';

/** What in the results is not as the outputs are described: a reader would see it wrong or not at all. */
export function misfits(
  outputs: Record<string, Output>,
  results: Record<string, unknown>,
): string[] {
  const strays = Object.keys(results).filter((name) => !Object.hasOwn(outputs, name));
  return [
    ...strays.map((name) => `${name} is no output`),
    ...Object.entries(outputs).flatMap(([name, output]) => misfit(name, output, results[name])),
  ];
}

function misfit(name: string, output: Output, value: unknown): string[] {
  const wrong = [`${name} is ${JSON.stringify(value)}`];
  if (value === undefined) return 'optional' in output && output.optional ? [] : wrong;
  if ('words' in output && typeof value === 'string')
    return output.words?.includes(value) ? [] : wrong;
  if ('yes' in output) return typeof value === 'boolean' ? [] : wrong;
  if ('text' in output) return isText(value) ? [] : wrong;
  if ('shape' in output) return typeof value === 'object' && value !== null ? [] : wrong;
  if ('printed' in output) {
    const { us, metric } = value as Record<string, unknown>;
    return Number.isFinite(us) && Number.isFinite(metric) ? [] : wrong;
  }
  if ('list' in output) {
    if (!Array.isArray(value)) return wrong;
    return value.flatMap((row, i) =>
      [...new Set([...Object.keys(row), ...Object.keys(output.list)])].flatMap((column) =>
        cellFits(output.list[column], row[column])
          ? []
          : [`${name}.${i}.${column}: ${row[column]}`],
      ),
    );
  }
  if (!('unit' in output) || typeof value !== 'number' || !Number.isFinite(value)) return wrong;
  return value < 0 && !('signed' in output && output.signed) ? [`${name} is negative`] : [];
}

function cellFits(column: Column | undefined, cell: unknown): boolean {
  if (cell === undefined) return true;
  if (column === undefined) return false;
  return 'unit' in column ? Number.isFinite(cell) : isText(cell);
}

const isText = (value: unknown): boolean =>
  typeof value === 'string' && speak(value, 'metric').trim() !== '';
