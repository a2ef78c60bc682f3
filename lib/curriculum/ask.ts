/** Questions that several rules ask of a course. */
import type { AuditedExercise, AuditedLesson, Curriculum } from './curriculum.ts';

/** The lesson that introduces each skill: the first one, where there are two. */
export function introducedIn({ lessons }: Curriculum): Map<string, AuditedLesson> {
  const first = new Map<string, AuditedLesson>();
  for (const lesson of lessons)
    for (const skill of Object.keys(lesson.skills)) if (!first.has(skill)) first.set(skill, lesson);
  return first;
}

/** Place in reading order, from 0; infinite where it has none. */
export function placeOf({ lessons }: Curriculum, slug: string): number {
  const index = lessons.findIndex((lesson) => lesson.slug === slug);
  return index < 0 ? Number.POSITIVE_INFINITY : index;
}

/** The exercises of the course in the order in which they are done. */
export function exercisesInOrder(course: Curriculum): AuditedExercise[] {
  return course.lessons.flatMap(({ slug, exercises }) => [
    ...exercises.flatMap(
      (name) => course.exercises.find((one) => one.slug === name && one.lesson === slug) ?? [],
    ),
    ...course.exercises.filter((one) => one.lesson === slug && !exercises.includes(one.slug)),
  ]);
}

/** A groove or a pipe welded for a pass: where a position is tested. */
export const isTest = ({ joint, assesses, electrodes, position }: AuditedExercise): boolean =>
  joint.length > 0 &&
  joint.every((one) => one === 'groove' || one === 'pipe groove') &&
  assesses.length > 0 &&
  electrodes.length > 0 &&
  position.length > 0;

/** Hours of welding at the booth, for all attempts. */
export const boothHoursOf = ({ station, minutes, attempts }: AuditedExercise): number =>
  station === 'booth' ? (minutes * attempts) / 60 : 0;
