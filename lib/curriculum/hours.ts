/** Where the hours go: by lesson, by unit, by position and by kind. */
import type { AuditedExercise, Curriculum } from './curriculum.ts';

/** Hours by kind. A graded attempt is the last of an exercise; those before it are practice. */
export interface Hours {
  reading: number;
  practice: number;
  graded: number;
  side: number;
}

/** In the order in which they are shown. */
export const kinds = ['reading', 'practice', 'graded', 'side'] as const satisfies (keyof Hours)[];

/** Hours of all kinds together. */
export const total = (hours: Hours): number => kinds.reduce((sum, kind) => sum + hours[kind], 0);

const none: Hours = { reading: 0, practice: 0, graded: 0, side: 0 };

/** Hours of a list, kind by kind. */
export const sumOf = (list: readonly Hours[]): Hours =>
  list.reduce(
    (sum, one) => ({
      reading: sum.reading + one.reading,
      practice: sum.practice + one.practice,
      graded: sum.graded + one.graded,
      side: sum.side + one.side,
    }),
    none,
  );

/**
 * One learner’s hours in an exercise: side work whole; at the booth, the last attempt is graded.
 */
export function hoursOfExercise({ station, minutes, attempts }: AuditedExercise): Hours {
  if (station === 'side') return { ...none, side: (minutes * attempts) / 60 };
  return { ...none, practice: (minutes * (attempts - 1)) / 60, graded: minutes / 60 };
}

/** Each lesson's hours, in reading order, with the sum up to its end. */
export function hoursByLesson(course: Curriculum) {
  let running = 0;
  return course.lessons.map((lesson) => {
    const own = course.exercises.filter((one) => one.lesson === lesson.slug);
    const hours = sumOf([{ ...none, reading: lesson.minutes / 60 }, ...own.map(hoursOfExercise)]);
    running += total(hours);
    return { lesson, hours, running };
  });
}

/** Each unit's hours, in reading order, with the sum up to its end. */
export function hoursByUnit(course: Curriculum) {
  const lessons = hoursByLesson(course);
  return course.units.map(({ id, title }) => {
    const own = lessons.filter(({ lesson }) => lesson.unit === id);
    return {
      id,
      title,
      hours: sumOf(own.map(({ hours }) => hours)),
      running: own.at(-1)?.running ?? 0,
    };
  });
}

/** Booth hours by position; an exercise in several positions counts in equal parts. */
export function hoursByPosition(course: Curriculum) {
  const found = new Map<string, { hours: number; exercises: AuditedExercise[] }>();
  for (const exercise of course.exercises) {
    const { practice, graded } = hoursOfExercise(exercise);
    if (exercise.electrodes.length === 0) continue;
    for (const position of exercise.position) {
      const row = found.get(position) ?? { hours: 0, exercises: [] };
      row.hours += (practice + graded) / exercise.position.length;
      row.exercises.push(exercise);
      found.set(position, row);
    }
  }
  return [...found].map(([position, row]) => ({ position, ...row }));
}
