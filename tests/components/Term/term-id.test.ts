import { expect, it } from 'vitest';
import { termId } from '../../../components/Term/term-id.ts';

it.each([
  ['weld pool', 'weld-pool'],
  ['F-number', 'f-number'],
  ['E7018 H4R', 'e7018-h4r'],
  ['undercut (toe)', 'undercut-toe'],
])('turns %s into %s', (term, id) => {
  expect(termId(term)).toBe(id);
});
