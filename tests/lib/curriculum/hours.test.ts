import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import {
  hoursByLesson,
  hoursByPosition,
  hoursByUnit,
  hoursOfExercise,
  sumOf,
  total,
} from '../../../lib/curriculum/hours.ts';
import { sound } from './sound-course.ts';

describe('hours', () => {
  it('count the last attempt as graded and those before it as practice', () => {
    const [, bead] = hoursByLesson(sound);
    expect(bead?.hours).toEqual({ reading: 20 / 60, practice: 2, graded: 1, side: 0 });
  });
  it('run on from lesson to lesson', () => {
    expect(hoursByLesson(sound).map(({ running }) => Math.round(running * 60))).toEqual([
      80, 280, 480,
    ]);
  });
  it('share an exercise in two positions equally', () => {
    const [gate, bead, groove] = sound.exercises;
    const course = {
      ...sound,
      exercises: [
        gate,
        bead,
        { ...groove, position: ['flat', 'vertical'] },
      ] as typeof sound.exercises,
    };
    expect(hoursByPosition(course).map(({ position, hours }) => [position, hours])).toEqual([
      ['flat', 4.5],
      ['vertical', 1.5],
    ]);
  });
});

describe('hours of a small course', () => {
  it('of the side station are no hours at the booth', () => {
    const [gate, bead, groove] = sound.exercises;
    if (!gate || !bead || !groove) throw new Error();
    const side = { ...bead, station: 'side' as const, minutes: 40 };
    const course = { ...sound, exercises: [gate, side, groove] };
    expect(hoursOfExercise(side)).toEqual({ reading: 0, practice: 0, graded: 0, side: 2 });
    // What is welded at the side station counts for no position.
    expect(hoursByPosition(course)).toEqual([
      { position: 'flat', hours: 3, exercises: [side, groove] },
    ]);
    // Where nothing burns no position is welded in.
    const cold = { ...sound, exercises: [{ ...gate, position: ['flat'] }] };
    expect(hoursByPosition(cold)).toEqual([]);
  });
  it('by unit are none where no lesson stands in it', () => {
    const units = [...sound.units, { id: 'more', title: 'More', lessons: [] }];
    const none = { reading: 0, practice: 0, graded: 0, side: 0 };
    const [all, more] = hoursByUnit({ ...sound, units });
    expect(more).toEqual({ id: 'more', title: 'More', hours: none, running: 0 });
    // An hour of reading, one at the gate, three each for bead and groove.
    expect([all?.id, all?.title, all?.running]).toEqual(['all', 'All', 8]);
    expect(all && total(all.hours)).toBe(8);
  });
});

describe('the hours of the course', async () => {
  const course = await readCurriculum();
  it('are the same by lesson, by unit and at the end of the running total', () => {
    const lessons = hoursByLesson(course);
    const byLesson = total(sumOf(lessons.map(({ hours }) => hours)));
    const byUnit = total(sumOf(hoursByUnit(course).map(({ hours }) => hours)));
    expect(byUnit).toBeCloseTo(byLesson, 9);
    expect(lessons.at(-1)?.running).toBeCloseTo(byLesson, 9);
    expect(hoursByUnit(course).at(-1)?.running).toBeCloseTo(byLesson, 9);
  });
  it('are, counted again from the files, reading plus minutes times attempts', () => {
    const reading = course.lessons.reduce((sum, { minutes }) => sum + minutes, 0);
    const stations = course.exercises.reduce((sum, one) => sum + one.minutes * one.attempts, 0);
    expect(hoursByLesson(course).at(-1)?.running).toBeCloseTo((reading + stations) / 60, 9);
  });
  it('by position are all the hours at which something burns in a position', () => {
    const burning = course.exercises
      .filter(({ electrodes, position }) => electrodes.length > 0 && position.length > 0)
      .reduce((sum, { minutes, attempts }) => sum + (minutes * attempts) / 60, 0);
    const rows = hoursByPosition(course);
    expect(rows.reduce((sum, { hours }) => sum + hours, 0)).toBeCloseTo(burning, 9);
  });
});
