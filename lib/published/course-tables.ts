/** The course as tables: lessons, skills, coverage, exercises and hours, each in its fixed order. */
import { exercisesInOrder } from '../curriculum/ask.ts';
import { covered, skillRows } from '../curriculum/coverage.ts';
import type { Curriculum } from '../curriculum/curriculum.ts';
import { hoursByLesson } from '../curriculum/hours.ts';
import { speak } from '../text/say.ts';
import { type PublishedTable, publishedTable, several } from './table.ts';

const round = (hours: number): number => Math.round(hours * 1000) / 1000;
const say = (text: string): string => speak(text, 'us');
const rods = (electrodes: readonly { classification: string; diameter: string }[]) =>
  several(electrodes.map(({ classification, diameter }) => `${classification} ${diameter}`));

/** A row for each lesson, in reading order. */
export const lessonsTable = (course: Curriculum): PublishedTable =>
  publishedTable(
    'lessons',
    'The lessons in reading order, with their hours and what they build on.',
    hoursByLesson(course),
    [
      {
        name: 'number',
        holds: 'Place in reading order, from 1.',
        cell: ({ lesson }) => course.lessons.indexOf(lesson) + 1,
      },
      { name: 'lesson', holds: 'Id; its page is /lessons/<id>/.', cell: (row) => row.lesson.slug },
      { name: 'title', holds: 'Title.', cell: (row) => row.lesson.title },
      { name: 'unit', holds: 'Id of the unit.', cell: (row) => row.lesson.unit },
      {
        name: 'positions',
        holds: 'Welding positions.',
        cell: (row) => several(row.lesson.position),
      },
      { name: 'joints', holds: 'Joints welded.', cell: (row) => several(row.lesson.joint) },
      {
        name: 'electrodes',
        holds: 'Classification and core diameter.',
        cell: (row) => rods(row.lesson.electrodes),
      },
      {
        name: 'introduces',
        holds: 'Skill ids.',
        cell: (row) => several(Object.keys(row.lesson.skills)),
      },
      { name: 'needs', holds: 'Skill ids.', cell: (row) => several(row.lesson.needs) },
      {
        name: 'calculations',
        holds: 'Calculation ids.',
        cell: (row) => several(row.lesson.calculations),
      },
      { name: 'exercises', holds: 'Exercise ids.', cell: (row) => several(row.lesson.exercises) },
      {
        name: 'hazards first named',
        holds: 'Hazard ids.',
        cell: (row) => several(row.lesson.hazards),
      },
      { name: 'reading hours', holds: 'Hours.', cell: (row) => round(row.hours.reading) },
      {
        name: 'practice hours',
        holds: 'Booth hours of all attempts but the last.',
        cell: (row) => round(row.hours.practice),
      },
      {
        name: 'graded hours',
        holds: 'Booth hours of the last attempt of each exercise.',
        cell: (row) => round(row.hours.graded),
      },
      {
        name: 'side hours',
        holds: 'Hours at saw, grinder, gauge or paper.',
        cell: (row) => round(row.hours.side),
      },
      {
        name: 'running total',
        holds: 'Hours up to the end of the lesson.',
        cell: (row) => round(row.running),
      },
    ],
  );

/** A row for each skill, in the order in which they are introduced. */
export const skillsTable = (course: Curriculum): PublishedTable =>
  publishedTable(
    'skills',
    'Every skill, and the lessons that introduce, practice, assess and need it.',
    skillRows(course),
    [
      { name: 'skill', holds: 'Id.', cell: ({ skill }) => skill },
      {
        name: 'the learner can',
        holds: 'The skill as a sentence.',
        cell: ({ sentence }) => say(sentence),
      },
      { name: 'introduced in', holds: 'Lesson id.', cell: ({ introduced }) => introduced },
      {
        name: 'practiced in',
        holds: 'Lesson ids of the exercises that practice it.',
        cell: ({ practised }) => several(practised),
      },
      {
        name: 'assessed in',
        holds: 'Lesson ids of the exercises that assess it.',
        cell: ({ assessed }) => several(assessed),
      },
      {
        name: 'needed in',
        holds: 'Ids of the lessons that build on it.',
        cell: ({ needed }) => several(needed),
      },
    ],
  );

/** A row for each position, joint and electrode that occur together. */
export const coverageTable = (course: Curriculum): PublishedTable =>
  publishedTable(
    'coverage',
    'Every position, joint and electrode that an exercise brings together.',
    covered(course),
    [
      { name: 'position', holds: 'Welding position.', cell: ({ position }) => position },
      { name: 'joint', holds: 'Joint.', cell: ({ joint }) => joint },
      {
        name: 'electrode',
        holds: 'Classification.',
        cell: ({ electrode }) => electrode.classification,
      },
      { name: 'diameter', holds: 'Core diameter.', cell: ({ electrode }) => electrode.diameter },
      {
        name: 'exercises',
        holds: 'Exercise ids.',
        cell: ({ exercises }) => several(exercises.map(({ slug }) => slug)),
      },
    ],
  );

/** A row for each point of acceptance, exercise by exercise. */
export const exercisesTable = (course: Curriculum): PublishedTable =>
  publishedTable(
    'exercises',
    'Every acceptance point of every exercise, a row each.',
    exercisesInOrder(course).flatMap((exercise) =>
      exercise.grading.map((point, index) => ({ exercise, point, number: index + 1 })),
    ),
    [
      {
        name: 'exercise',
        holds: 'Id; its page is /exercises/<id>/.',
        cell: ({ exercise }) => exercise.slug,
      },
      { name: 'title', holds: 'Title.', cell: ({ exercise }) => exercise.title },
      { name: 'lesson', holds: 'Id of its lesson.', cell: ({ exercise }) => exercise.lesson },
      { name: 'station', holds: 'booth or side.', cell: ({ exercise }) => exercise.station },
      {
        name: 'positions',
        holds: 'Welding positions.',
        cell: ({ exercise }) => several(exercise.position),
      },
      { name: 'joints', holds: 'Joints.', cell: ({ exercise }) => several(exercise.joint) },
      {
        name: 'electrodes',
        holds: 'Classification and core diameter.',
        cell: ({ exercise }) => rods(exercise.electrodes),
      },
      {
        name: 'minutes',
        holds: 'Minutes of one attempt.',
        cell: ({ exercise }) => exercise.minutes,
      },
      {
        name: 'attempts',
        holds: 'Attempts that are planned for.',
        cell: ({ exercise }) => exercise.attempts,
      },
      {
        name: 'practices',
        holds: 'Skill ids.',
        cell: ({ exercise }) => several(exercise.practises),
      },
      { name: 'assesses', holds: 'Skill ids.', cell: ({ exercise }) => several(exercise.assesses) },
      { name: 'point', holds: 'Number of the point, from 1.', cell: ({ number }) => number },
      { name: 'item', holds: 'What is looked at.', cell: ({ point }) => say(point.item) },
      { name: 'limit', holds: 'What passes.', cell: ({ point }) => say(point.limit) },
      {
        name: 'source',
        holds: 'Source id; empty for the shop’s own points.',
        cell: ({ point }) => point.source,
      },
      { name: 'at', holds: 'Clause, table or page there.', cell: ({ point }) => point.at },
      {
        name: 'known',
        holds: 'read, memory, practice or derived.',
        cell: ({ point }) => point.known,
      },
    ],
  );
