/** Booth settings against the starting currents of the library (a shop's rows: common practice). */
import { describe, expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';
import { answer } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';

/** The plate positions that the clock of a fixed pipe goes through. */
const goesThrough: Record<string, string[]> = {
  'pipe 2G': ['horizontal'],
  'pipe 5G': ['overhead', 'vertical', 'flat'],
  'pipe 6G': ['overhead', 'vertical', 'horizontal'],
};

const settings = readExercises().flatMap(({ slug, position, joint, procedure, electrodes }) =>
  procedure
    ? electrodes.map(({ classification, diameter, current, currentRange }) => ({
        slug,
        positions: position.flatMap((it) => goesThrough[it] ?? [it]),
        use:
          classification === 'E6010' && joint.some((it) => it.includes('groove'))
            ? 'open root'
            : 'fill and fillet',
        classification,
        diameter,
        current: amps(current ?? procedure.current),
        range: (currentRange ?? procedure.currentRange).map(amps) as [number, number],
      }))
    : [],
);

function amps(text: string): number {
  const read = readQuantity(text, 'A');
  if ('problem' in read) throw new Error(`${text} ${read.problem}`);
  return read.value;
}

describe.each(settings)('$slug, $classification $diameter', (setting) => {
  const { positions, use, classification, diameter, current, range } = setting;

  it('starts within the range of every position it goes through', async () => {
    const calculation = await loadCalculation('starting-current');
    const rows = positions.map((position) => {
      const answered = answer(calculation, { classification, diameter, position, use });
      if (!answered.ok) throw new Error(answered.problems.map(({ text }) => text).join('; '));
      return { low: Number(answered.results.low), high: Number(answered.results.high) };
    });
    for (const { low, high } of rows) {
      expect(current).toBeGreaterThanOrEqual(low);
      expect(current).toBeLessThanOrEqual(high);
    }
    expect(range[0]).toBeGreaterThanOrEqual(Math.min(...rows.map(({ low }) => low)));
    expect(range[1]).toBeLessThanOrEqual(Math.max(...rows.map(({ high }) => high)));
  });
});
