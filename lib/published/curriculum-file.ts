/** The whole course as one JSON file. */
import { exercisesInOrder } from '../curriculum/ask.ts';
import type { Curriculum } from '../curriculum/curriculum.ts';
import { audit } from '../curriculum/rules.ts';
import { speak } from '../text/say.ts';
import { publishedVersion } from './version.ts';

const say = (text: string): string => speak(text, 'us');

/** @param edition version of the course itself, as in its package */
export function curriculumFile(course: Curriculum, edition: string) {
  return {
    version: publishedVersion,
    course: {
      name: 'Sixteenths',
      edition,
      language: 'en-US',
      license: 'https://creativecommons.org/licenses/by/4.0/',
    },
    units: course.units.map(({ id, title, lessons }) => ({ id, title, lessons })),
    lessons: course.lessons.map((lesson, index) => ({
      id: lesson.slug,
      number: index + 1,
      title: lesson.title,
      unit: lesson.unit,
      readingMinutes: lesson.minutes,
      boothHours: lesson.boothHours,
      positions: lesson.position,
      joints: lesson.joint,
      electrodes: lesson.electrodes,
      skills: Object.entries(lesson.skills).map(([id, text]) => ({ id, learnerCan: say(text) })),
      terms: Object.entries(lesson.terms).map(([term, text]) => ({ term, definition: say(text) })),
      needs: lesson.needs,
      calculations: lesson.calculations,
      exercises: lesson.exercises,
      hazards: lesson.hazards,
      sources: lesson.sources,
    })),
    exercises: exercisesInOrder(course).map((exercise) => ({
      id: exercise.slug,
      title: exercise.title,
      lesson: exercise.lesson,
      station: exercise.station,
      positions: exercise.position,
      joints: exercise.joint,
      electrodes: exercise.electrodes.map(({ classification, diameter }) => ({
        classification,
        diameter,
      })),
      minutes: exercise.minutes,
      attempts: exercise.attempts,
      practices: exercise.practises,
      assesses: exercise.assesses,
      acceptance: exercise.grading.map(({ item, limit, source, at, known }) => ({
        item: say(item),
        limit: say(limit),
        ...(source && { source }),
        ...(at && { at }),
        known,
      })),
    })),
    rules: audit(course).map(({ rule, findings, broken }) => ({
      id: rule.id,
      sentence: rule.sentence,
      lookedAt: findings.length,
      broken: broken.map(({ says }) => says),
    })),
  };
}
