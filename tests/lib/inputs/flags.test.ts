/** A flag says yes by standing there: whoever asks looks only for the name, so none may stand there and say no. */
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

const falseFlags = (value: unknown, path: string): string[] => {
  if (value === false) return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => falseFlags(part, `${path}.${name}`));
};

describe.each(calculationIds())('%s', (id) => {
  it('describes inputs and outputs with no flag that says no', async () => {
    const { inputs, outputs } = await loadCalculation(id);
    expect(falseFlags({ inputs, outputs }, id)).toEqual([]);
  });
});
