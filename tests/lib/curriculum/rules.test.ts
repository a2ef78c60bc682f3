/** Each rule is broken once by a small course, and the real course is held to all of them. */
import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { readingOrder } from '../../../content/reading-order.ts';
import type {
  AuditedExercise,
  AuditedLesson,
  Curriculum,
} from '../../../lib/curriculum/curriculum.ts';
import { audit, rules } from '../../../lib/curriculum/rules.ts';

const lesson = (slug: string, change: Partial<AuditedLesson> = {}): AuditedLesson => ({
  slug,
  title: slug,
  unit: 'flat',
  minutes: 20,
  boothHours: 1,
  position: ['flat'],
  joint: ['bead'],
  skills: { [`do-${slug}`]: 'Do it' },
  needs: [],
  calculations: ['travel-speed'],
  exercises: [`try-${slug}`],
  hazards: [],
  ...change,
});
const exercise = (of: string, change: Partial<AuditedExercise> = {}): AuditedExercise => ({
  slug: `try-${of}`,
  lesson: of,
  station: 'booth',
  minutes: 60,
  attempts: 1,
  practises: [`do-${of}`],
  assesses: [`do-${of}`],
  grading: [{ item: 'undercut', source: 'common-practice' }],
  ...change,
});
const sound: Curriculum = {
  lessons: [lesson('one'), lesson('two', { needs: ['do-one'] })],
  exercises: [exercise('one'), exercise('two')],
  checked: ['travel-speed'],
};

it('finds nothing in a sound course', () => {
  expect(audit(sound).flatMap(({ places }) => places)).toEqual([]);
});

describe.each<[string, Curriculum]>([
  [
    'needs-come-first',
    { ...sound, lessons: [lesson('one', { needs: ['do-two'] }), lesson('two')] },
  ],
  [
    'introduced-once',
    { ...sound, lessons: [lesson('one'), lesson('two', { skills: { 'do-one': 'Again' } })] },
  ],
  [
    'practised-and-assessed',
    { ...sound, exercises: [exercise('one', { assesses: [] }), exercise('two')] },
  ],
  [
    'exercise-with-acceptance',
    { ...sound, exercises: [exercise('one', { grading: [] }), exercise('two')] },
  ],
  [
    'no-later-skill',
    {
      ...sound,
      exercises: [exercise('one', { practises: ['do-one', 'do-two'] }), exercise('two')],
    },
  ],
  [
    'one-step-at-a-time',
    {
      ...sound,
      lessons: [lesson('one'), lesson('two', { position: ['overhead'], joint: ['groove'] })],
    },
  ],
  ['hours-add-up', { ...sound, exercises: [exercise('one', { attempts: 2 }), exercise('two')] }],
  ['numbers-are-checked', { ...sound, checked: [] }],
])('%s', (id, course) => {
  it('is broken by a course made to break it, and by that alone', () => {
    const broken = audit(course).filter(({ places }) => places.length > 0);
    expect(broken.map(({ rule }) => rule.id)).toContain(id);
  });
});

it('has a test for every rule', () => {
  expect(rules.length).toBe(8);
});

/** The course up to the first lesson that is not written yet. */
function writtenSoFar(): Curriculum {
  const course = readCurriculum();
  const order = readingOrder.flatMap(({ lessons }): readonly string[] => lessons);
  const written = new Set(course.lessons.map(({ slug }) => slug));
  const gap = order.findIndex((slug) => !written.has(slug));
  const lessons = gap < 0 ? course.lessons : course.lessons.slice(0, gap);
  return { ...course, lessons };
}

it.each(audit(writtenSoFar()))('the course keeps to: $rule.sentence', ({ places }) => {
  expect(places).toEqual([]);
});
