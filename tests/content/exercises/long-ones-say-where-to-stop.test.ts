/** An evening of the demo shop has 165 minutes from first arc to last; what takes longer needs a place to stop. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';

const evening = 165;
const long = readExercises().filter(({ minutes }) => minutes > evening);

it('there are exercises longer than an evening', () => {
  expect(long.length).toBeGreaterThan(0);
});

it.each(long)('$slug says in its steps where to stop for the night', ({ steps }) => {
  expect(steps.join(' ')).toMatch(/for the night|both evenings/);
});

it.each(long)('the lesson of $slug plans more than one evening', ({ lesson }) => {
  expect(readFileSync(`content/lessons/${lesson}.mdx`, 'utf8')).toMatch(
    /two evenings|take two|plan two/i,
  );
});
