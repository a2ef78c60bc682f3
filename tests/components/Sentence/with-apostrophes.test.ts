import { expect, it } from 'vitest';
import { withApostrophes } from '../../../components/Sentence/with-apostrophes.ts';

it.each([
  ["the learner's bead", 'the learner’s bead'],
  ["learners' beads don't stick", 'learners’ beads don’t stick'],
  [`a bar 2' 6" long and 1/4" thick`, `a bar 2' 6" long and 1/4" thick`],
  ["three o'clock on NPS 6's root", "three o’clock on NPS 6's root"],
])('sets %s', (typed, printed) => {
  expect(withApostrophes(typed)).toBe(printed);
});
