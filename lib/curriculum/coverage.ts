/** What is welded where, and what becomes of each skill. */
import { exercisesInOrder, introducedIn } from './ask.ts';
import type { AuditedElectrode, AuditedExercise, Curriculum } from './curriculum.ts';

export interface Covered {
  position: string;
  joint: string;
  electrode: AuditedElectrode;
  exercises: AuditedExercise[];
}

/** Every position, joint and electrode that an exercise brings together, in the order of the course. */
export function covered(course: Curriculum): Covered[] {
  const rows = new Map<string, Covered>();
  for (const exercise of exercisesInOrder(course))
    for (const position of exercise.position)
      for (const joint of exercise.joint)
        for (const { classification, diameter } of exercise.electrodes) {
          const key = [position, joint, classification, diameter].join('|');
          const row = rows.get(key) ?? {
            position,
            joint,
            electrode: { classification, diameter },
            exercises: [],
          };
          if (!row.exercises.includes(exercise)) row.exercises.push(exercise);
          rows.set(key, row);
        }
  return [...rows.values()];
}

export interface SkillRow {
  skill: string;
  /** Completes "the learner can". */
  sentence: string;
  introduced: string;
  /** Lessons whose exercises practice it, assess it, and lessons that build on it, by slug. */
  practised: string[];
  assessed: string[];
  needed: string[];
}

/** Every skill, in the order of the course. */
export function skillRows(course: Curriculum): SkillRow[] {
  const inOrder = exercisesInOrder(course);
  const lessonsWith = (has: (one: AuditedExercise) => boolean) => [
    ...new Set(inOrder.filter(has).map(({ lesson }) => lesson)),
  ];
  return [...introducedIn(course)].map(([skill, home]) => ({
    skill,
    sentence: home.skills[skill] as string,
    introduced: home.slug,
    practised: lessonsWith(({ practises }) => practises.includes(skill)),
    assessed: lessonsWith(({ assesses }) => assesses.includes(skill)),
    needed: course.lessons.filter(({ needs }) => needs.includes(skill)).map(({ slug }) => slug),
  }));
}
