import { expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { citations } from '../../../lib/curriculum/citations.ts';
import { bead, sound, tryBead, withChanges } from './sound-course.ts';

it('names each place once, with its clauses', () => {
  const course = withChanges(
    [
      {
        ...bead,
        sources: [
          { source: 'book', at: 'p. 1', known: 'read', for: 'one' },
          { source: 'book', at: 'p. 2', known: 'memory', for: 'two' },
          { source: 'book', at: 'p. 1', known: 'read', for: 'three' },
        ],
      },
    ],
    [{ ...tryBead, grading: [{ item: 'looks', limit: 'Good', known: 'practice' }] }],
  );
  expect(citations(course).get('book')).toEqual([
    {
      page: 'lesson',
      id: 'bead',
      title: 'bead',
      clauses: [
        { at: 'p. 1', known: 'read' },
        { at: 'p. 2', known: 'memory' },
      ],
    },
    { page: 'exercise', id: 'try-gate', title: 'gate', clauses: [{ at: '', known: 'read' }] },
    { page: 'exercise', id: 'try-groove', title: 'groove', clauses: [{ at: '', known: 'read' }] },
  ]);
  expect(sound.sources).toEqual(['book']);
});

it('keeps apart two places of one name, and two ways to know one clause', () => {
  const course = {
    ...sound,
    lessons: [
      {
        ...bead,
        slug: 'same',
        sources: [
          { source: 'book', at: 'p. 1', known: 'read' as const, for: 'a' },
          { source: 'book', at: 'p. 1', known: 'memory' as const, for: 'b' },
        ],
      },
    ],
    exercises: [],
    calculations: [
      {
        id: 'same',
        title: 'Sum',
        forTeaching: false,
        sources: [{ source: 'book', known: 'derived' as const }],
      },
    ],
  };
  expect(citations(course).get('book')).toEqual([
    {
      page: 'lesson',
      id: 'same',
      title: 'bead',
      clauses: [
        { at: 'p. 1', known: 'read' },
        { at: 'p. 1', known: 'memory' },
      ],
    },
    { page: 'calculation', id: 'same', title: 'Sum', clauses: [{ at: '', known: 'derived' }] },
  ]);
});

it('finds every citation of the course', async () => {
  const course = await readCurriculum();
  const cited = new Set([
    ...course.lessons.flatMap(({ sources }) => sources.map(({ source }) => source)),
    ...course.exercises.flatMap(({ grading }) => grading.flatMap(({ source }) => source ?? [])),
    ...course.calculations.flatMap(({ sources }) => sources.map(({ source }) => source)),
  ]);
  expect(new Set(citations(course).keys())).toEqual(cited);
});
