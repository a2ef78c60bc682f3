import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { covered, skillRows } from '../../../lib/curriculum/coverage.ts';
import { footing } from '../../../lib/curriculum/footing.ts';
import { bead, sound, tryGroove, withChanges } from './sound-course.ts';

describe('covered', () => {
  it('has one row for each position, joint and electrode that come together', () => {
    const course = withChanges([], [{ ...tryGroove, position: ['flat', 'vertical'] }]);
    expect(covered(course).map(({ position, joint }) => `${position} ${joint}`)).toEqual([
      'flat bead',
      'flat groove',
      'vertical groove',
    ]);
  });
  it('of the course names each exercise that welds', async () => {
    const course = await readCurriculum();
    const named = new Set(covered(course).flatMap(({ exercises }) => exercises.map((e) => e.slug)));
    const welds = course.exercises.filter(
      ({ electrodes, position }) => electrodes.length > 0 && position.length > 0,
    );
    expect([...named].sort()).toEqual(welds.map(({ slug }) => slug).sort());
  });
});

describe('skillRows', () => {
  it('say where a skill is introduced, practiced, assessed and needed', () => {
    expect(skillRows(sound)[1]).toEqual({
      skill: 'do-bead',
      sentence: 'Do bead',
      introduced: 'bead',
      practised: ['bead', 'groove'],
      assessed: ['bead'],
      needed: ['groove'],
    });
  });
});

describe('footing', () => {
  it('lists each statement of lessons, acceptance points and calculations once', async () => {
    const course = await readCurriculum();
    const count =
      course.lessons.reduce((sum, { sources }) => sum + sources.length, 0) +
      course.exercises.reduce((sum, { grading }) => sum + grading.length, 0) +
      course.calculations.reduce((sum, { sources }) => sum + sources.length, 0);
    expect(footing(course).length).toBe(count);
  });
});

describe('of a small course', () => {
  it('an exercise stands once in a row, though it has an electrode twice', () => {
    const [rod] = tryGroove.electrodes;
    if (!rod) throw new Error();
    const course = withChanges([], [{ ...tryGroove, joint: ['bead'], electrodes: [rod, rod] }]);
    expect(covered(course).map(({ exercises }) => exercises.map(({ slug }) => slug))).toEqual([
      ['try-bead', 'try-groove'],
    ]);
  });

  it('the footing of each statement is named with its place', () => {
    const course = {
      ...withChanges([
        { ...bead, sources: [{ source: 'book', at: 'p. 2', known: 'memory', for: 'Beads' }] },
      ]),
      calculations: [
        {
          id: 'sum',
          title: 'Sum',
          forTeaching: false,
          sources: [{ source: 'book', at: 'p. 9', known: 'derived' as const }],
        },
      ],
    };
    const at = (page: string, id: string, title: string) => ({ page, id, title });
    const point = { known: 'read', says: 'undercut', source: 'book', clause: undefined };
    expect(footing(course)).toEqual([
      {
        known: 'memory',
        at: at('lesson', 'bead', 'bead'),
        says: 'Beads',
        source: 'book',
        clause: 'p. 2',
      },
      { ...point, at: at('exercise', 'try-gate', 'gate') },
      { ...point, at: at('exercise', 'try-bead', 'bead') },
      { ...point, at: at('exercise', 'try-groove', 'groove') },
      {
        known: 'derived',
        at: at('calculation', 'sum', 'Sum'),
        says: 'Sum',
        source: 'book',
        clause: 'p. 9',
      },
    ]);
  });
});
