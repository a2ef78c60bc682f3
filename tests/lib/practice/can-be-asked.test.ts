import { expect, it } from 'vitest';
import type { Output } from '../../../lib/calculation.ts';
import { canBeAsked } from '../../../lib/practice/can-be-asked.ts';

it.each<[string, Output, boolean]>([
  ['a size', { label: 'Leg', unit: 'in' }, true],
  ['a printed figure', { label: 'Leg', printed: { us: 'in', metric: 'mm' } }, true],
  ['a word', { label: 'Position', words: ['flat'] }, true],
  ['yes or no', { label: 'Fits', yes: true }, true],
  ['a text', { label: 'Why', text: true }, false],
  ['rows', { label: 'Plan', list: {} }, false],
  ['a shape', { label: 'Map', shape: true }, false],
])('%s has one answer that can be asked for: %s', (_, output, one) => {
  expect(canBeAsked(output)).toBe(one);
});
