import { expect, it } from 'vitest';
import { stem } from '../../../components/Search/index-options.ts';

it.each([
  ['weld', ['welds', 'welded', 'welding', 'welder', 'welders']],
  ['undercut', ['undercuts', 'undercutting', 'undercutt']],
  ['pass', ['passes']],
  ['preheat', ['preheated', 'preheating']],
  ['groove', ['grooves', 'grooved']],
  ['assembly', ['assemblies']],
  ['grind', ['grinding', 'grinder']],
])('%s has one stem with its other forms', (word, forms) => {
  expect(forms.map(stem)).toEqual(forms.map(() => stem(word)));
});

it.each(['6g', 'e7018', '3/8', 'arc', 'gas', 'pass'])('%s stays as it is, or nearly', (word) => {
  expect(stem(word)).toBe(word === 'pass' ? 'pas' : word);
});
