/**
 * What makes a sequence sound. Each rule is a sentence and a small function that names every place
 * where it is broken.
 */
import type { AuditedExercise, Curriculum } from './curriculum.ts';

export interface Rule {
  id: string;
  sentence: string;
  broken(course: Curriculum): string[];
}

const introducedBefore = ({ lessons }: Curriculum, index: number): Set<string> =>
  new Set(lessons.slice(0, index).flatMap(({ skills }) => Object.keys(skills)));

/** Exercises whose lesson is in the course. */
const present = ({ lessons, exercises }: Curriculum): AuditedExercise[] =>
  exercises.filter(({ lesson }) => lessons.some(({ slug }) => slug === lesson));

export const rules: readonly Rule[] = [
  {
    id: 'needs-come-first',
    sentence: 'No lesson needs a skill that an earlier lesson has not introduced.',
    broken: (course) =>
      course.lessons.flatMap(({ slug, needs }, index) => {
        const known = introducedBefore(course, index);
        return needs.filter((skill) => !known.has(skill)).map((skill) => `${slug} needs ${skill}`);
      }),
  },
  {
    id: 'introduced-once',
    sentence: 'Every skill is introduced once.',
    broken: ({ lessons }) => {
      const first = new Map<string, string>();
      return lessons.flatMap(({ slug, skills }) =>
        Object.keys(skills).flatMap((skill) => {
          const before = first.get(skill);
          first.set(skill, before ?? slug);
          return before === undefined ? [] : [`${skill} in ${before} and in ${slug}`];
        }),
      );
    },
  },
  {
    id: 'practised-and-assessed',
    sentence: 'Every skill that is introduced is practised and assessed by an exercise.',
    broken: (course) => {
      const practised = new Set(present(course).flatMap(({ practises }) => practises));
      const assessed = new Set(present(course).flatMap(({ assesses }) => assesses));
      return course.lessons.flatMap(({ slug, skills }) =>
        Object.keys(skills).flatMap((skill) => [
          ...(practised.has(skill) ? [] : [`${skill} of ${slug} is not practised`]),
          ...(assessed.has(skill) ? [] : [`${skill} of ${slug} is not assessed`]),
        ]),
      );
    },
  },
  {
    id: 'exercise-with-acceptance',
    sentence: 'Every lesson has an exercise, with acceptance points that name their source.',
    broken: ({ lessons, exercises }) =>
      lessons.flatMap(({ slug, exercises: own }) => {
        if (own.length === 0) return [`${slug} has no exercise`];
        return own.flatMap((name) => {
          const exercise = exercises.find((one) => one.slug === name);
          if (!exercise) return [`${slug} names ${name}, which does not exist`];
          return exercise.grading.length === 0 ? [`${name} has no acceptance points`] : [];
        });
      }),
  },
  {
    id: 'no-later-skill',
    sentence: 'No exercise practises a skill that comes after its lesson.',
    broken: (course) =>
      present(course).flatMap(({ slug, lesson, practises }) => {
        const index = course.lessons.findIndex((one) => one.slug === lesson);
        const known = introducedBefore(course, index + 1);
        return practises
          .filter((skill) => !known.has(skill))
          .map((skill) => `${slug} practises ${skill}`);
      }),
  },
  {
    id: 'one-step-at-a-time',
    sentence: 'No lesson is the first with its position, its joint and pipe all at once.',
    broken: ({ lessons }) =>
      lessons.flatMap(({ slug, position, joint }, index) => {
        const before = lessons.slice(0, index);
        if (before.length === 0 || position.length === 0 || joint.length === 0) return [];
        const newPosition = !position.some((one) =>
          before.some((lesson) => lesson.position.includes(one)),
        );
        const newJoint = !joint.some((one) => before.some((lesson) => lesson.joint.includes(one)));
        const firstArc = !before.some((lesson) => lesson.joint.length > 0);
        return newPosition && newJoint && !firstArc ? [slug] : [];
      }),
  },
  {
    id: 'hours-add-up',
    sentence:
      'The booth hours of a lesson are the minutes of its booth exercises times their attempts.',
    broken: ({ lessons, exercises }) =>
      lessons.flatMap(({ slug, boothHours, exercises: own }) => {
        const minutes = own
          .flatMap((name) => exercises.find((one) => one.slug === name) ?? [])
          .filter(({ station }) => station === 'booth')
          .reduce((sum, one) => sum + one.minutes * one.attempts, 0);
        const off = Math.abs(minutes / 60 - boothHours) > 0.26;
        return off ? [`${slug}: ${boothHours} h stated, ${minutes / 60} h from its exercises`] : [];
      }),
  },
  {
    id: 'numbers-are-checked',
    sentence: 'Every calculation that a lesson uses has published or restated values to hold it.',
    broken: ({ lessons, checked }) =>
      [...new Set(lessons.flatMap(({ calculations }) => calculations))].filter(
        (id) => !checked.includes(id),
      ),
  },
];

export interface Verdict {
  rule: Rule;
  places: string[];
}

export const audit = (course: Curriculum): Verdict[] =>
  rules.map((rule) => ({ rule, places: rule.broken(course) }));
