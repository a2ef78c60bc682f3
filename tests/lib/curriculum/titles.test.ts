import { expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { audit } from '../../../lib/curriculum/rules.ts';
import { titlesIn } from '../../../lib/curriculum/titles.ts';
import { sound } from './sound-course.ts';

const course = await readCurriculum();
const name = titlesIn(course);

it('tells a lesson from the exercise that shares its id', () => {
  const { title: lesson } = course.lessons.find(({ slug }) => slug === 'cut-and-etch') ?? {};
  const { title: exercise } = course.exercises.find(({ slug }) => slug === 'cut-and-etch') ?? {};
  expect(lesson).not.toBe(exercise);
  expect(name('lesson', 'cut-and-etch')).toBe(`“${lesson}”`);
  expect(name('exercise', 'cut-and-etch')).toBe(`“${exercise}”`);
});

it('says skills and hazards in words, and publications as they are cited', () => {
  expect(name('skill', 'walk-the-booth')).toBe('“walk the booth”');
  expect(name('hazard', 'arc-rays')).toBe('arc rays');
  expect(name('source', 'aws-d1.1')).toBe('AWS D1.1');
});

it('keeps the id of what the course does not have', () => {
  expect(titlesIn(sound)('lesson', 'ghost')).toBe('ghost');
});

it('leaves no id in what the audit of this course tells its reader', () => {
  const ids = new Set([
    ...course.lessons.map(({ slug }) => slug),
    ...course.exercises.map(({ slug }) => slug),
    ...course.calculations.map(({ id }) => id),
    ...course.lessons.flatMap(({ skills, hazards }) => [...Object.keys(skills), ...hazards]),
  ]);
  const told = audit(course, name).flatMap(({ findings }) => findings.map(({ says }) => says));
  const left = told
    .flatMap((says) => says.match(/[a-z0-9]+(?:-[a-z0-9.]+)+/g) ?? [])
    .filter((word) => ids.has(word));
  expect(told.length).toBeGreaterThan(1000);
  expect(left).toEqual([]);
});
