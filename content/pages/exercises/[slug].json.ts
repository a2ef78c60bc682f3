/** What the booth sheet and the grading sheet need of an exercise, fetched when it is chosen. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { makeSheet } from '../../../components/Booth/make-sheet.ts';
import { type ExerciseEntry, exercisesInOrder, lessonsInOrder } from '../../course.ts';

export const getStaticPaths = (async () => {
  const exercises = await exercisesInOrder();
  return exercises.map((exercise) => ({ params: { slug: exercise.id }, props: { exercise } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<{ exercise: ExerciseEntry }> = async ({ props: { exercise } }) => {
  const lessons = await lessonsInOrder();
  const lesson = lessons.find(({ id }) => id === exercise.data.lesson);
  if (!lesson) throw new Error(`${exercise.id}: there is no lesson ${exercise.data.lesson}`);
  return new Response(JSON.stringify(await makeSheet(exercise, lesson)));
};
