/** The sense of every limit in the course, against a list read by hand from the exercises. */
import { describe, expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';
import type { SheetPoint } from '../../../lib/booth/exercise-sheet.ts';
import { limitSense } from '../../../lib/grading/limit-sense.ts';

/** Points whose figure is no reading that one gauge gives, by exercise and item. */
const byEye = new Set([
  'booth-set-up: holder lead',
  'bend-straps: plunger',
  'e6010-stringers: ripples',
  'fillet-3f-stringers: limits',
  'grind-and-bevel: bench grinder',
  'groove-3g-one-inch: plate',
  'groove-4g-one-inch: plate',
  'lap-and-corner: upper edge',
  'larger-electrode-vertical: electrode limit',
  'long-arc-trial: recovery',
  'open-root-flat-and-horizontal: fit-up',
  'open-root-overhead: fit-up',
  'open-root-vertical: fit-up',
  'pipe-fit-up: root face',
  'pipe-fit-up: root opening',
  'tack-and-fit-up: root opening',
  'thick-plate-tee: measuring point',
  'thick-plate-tee: warm zone',
]);
/** Items of which more is better; of all other readings, less is. */
const more = new Set(['size', 'lap size', 'bright metal', 'minimum size', 'holding oven', 'scale']);

const points = readExercises().flatMap(({ slug, grading }) =>
  grading.flatMap(({ item, limit, amount, metric, known }) => {
    if (!amount) return [];
    const braced = metric ? `{${amount}|${metric}}` : `{${amount}}`;
    const point: SheetPoint = { item, limit: limit.replace(amount, braced), amount, known };
    if (metric) point.metric = metric;
    return [[`${slug}: ${item}`, point] as const];
  }),
);

describe('the sense of a limit', () => {
  it.each(points)('%s', (name, point) => {
    const legs = name === 'cut-and-etch: legs';
    const expected = byEye.has(name)
      ? undefined
      : more.has(point.item) || legs
        ? 'at least'
        : 'at most';
    expect(limitSense(point)).toBe(expected);
  });
  it('is that of the words around the figure, wherever in the sentence they stand', () => {
    const sense = (limit: string) =>
      limitSense({ item: 'x', limit, amount: '1/8 in', known: 'practice' });
    expect(sense('{1/8 in} at most, anywhere')).toBe('at most');
    expect(sense('{1/8 in} or more, at every point')).toBe('at least');
    expect(sense('Ground back to no more than {1/8 in}')).toBe('at most');
    expect(sense('Back to no more than {1/8 in}')).toBeUndefined();
    expect(sense('Legs at least {1/8 in} long')).toBe('at least');
    for (const words of ['no deeper than', 'No wider than', 'within', 'over', 'more than'])
      expect(sense(`${words} {1/8 in}`)).toBe('at most');
    expect(sense('About {1/8 in}')).toBeUndefined();
  });
  it('is none where the sentence does not hold the figure', () => {
    const point = { item: 'x', amount: '1/8 in', known: 'practice' } as const;
    expect(limitSense({ ...point, limit: 'At least' })).toBeUndefined();
    expect(limitSense({ ...point, limit: 'As the drawing says' })).toBeUndefined();
    expect(limitSense({ ...point, limit: 'At most {1/8 in|3 mm}' })).toBeUndefined();
    expect(limitSense({ ...point, limit: 'At most {1/8 in|3 mm}', metric: '3 mm' })).toBe(
      'at most',
    );
  });
  it('is none where no figure stands', () => {
    expect(limitSense({ item: 'cracks', limit: 'None, of any length', known: 'memory' })).toBe(
      undefined,
    );
  });
});
