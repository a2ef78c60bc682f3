import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { exerciseSchema } from './schemas/exercise.ts';
import { lessonSchema } from './schemas/lesson.ts';

export const collections = {
  lessons: defineCollection({
    loader: glob({ base: './content/lessons', pattern: '*.mdx' }),
    schema: lessonSchema,
  }),
  exercises: defineCollection({
    loader: glob({ base: './content/exercises', pattern: '*.yaml' }),
    schema: exerciseSchema,
  }),
};
