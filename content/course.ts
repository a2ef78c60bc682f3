import { type CollectionEntry, getCollection } from 'astro:content';
import { readingOrder, type Unit } from './reading-order.ts';

export type LessonEntry = CollectionEntry<'lessons'>;
export type ExerciseEntry = CollectionEntry<'exercises'>;

/** A place in the reading order; the lesson is missing as long as nobody has written it. */
export interface Place {
  slug: string;
  /** Counted from 1 through the whole course. */
  number: number;
  unit: Unit;
  lesson: LessonEntry | undefined;
}

/** Every place of the course, in reading order. */
export async function coursePlaces(): Promise<Place[]> {
  const lessons = new Map((await getCollection('lessons')).map((lesson) => [lesson.id, lesson]));
  return readingOrder
    .flatMap((unit: Unit) => unit.lessons.map((slug) => ({ slug, unit })))
    .map(({ slug, unit }, index) => ({ slug, unit, number: index + 1, lesson: lessons.get(slug) }));
}

/** The lessons that are written, in reading order. */
export async function lessonsInOrder(): Promise<LessonEntry[]> {
  return (await coursePlaces()).flatMap(({ lesson }) => lesson ?? []);
}

/** The exercises in the order in which their lessons are read. */
export async function exercisesInOrder(): Promise<ExerciseEntry[]> {
  const slugs = (await coursePlaces()).map(({ slug }) => slug);
  const exercises = await getCollection('exercises');
  return exercises.sort((a, b) => slugs.indexOf(a.data.lesson) - slugs.indexOf(b.data.lesson));
}
