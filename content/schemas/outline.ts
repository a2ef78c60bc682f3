import { z } from 'astro/zod';
import { sources } from '../../lib/sources.ts';
import { idList, keysOf } from './words.ts';

const topic = z
  .strictObject({
    text: z.string().min(3).describe('As printed where it was read; in our words from memory.'),
    known: z.enum(['read', 'memory']).describe('Read as quoted, or from memory.'),
    lessons: idList.default([]).describe('Lessons that teach it.'),
    exercises: idList.default([]).describe('Exercises that train or assess it.'),
    pages: z
      .array(z.string().regex(/^\/([a-z-]+\/)*$/, 'a path from the root, with its final slash'))
      .default([])
      .describe('Other pages that serve it.'),
    gap: z.string().optional().describe('What the course leaves open, as a sentence.'),
  })
  .refine(
    ({ lessons, exercises, pages, gap }) =>
      lessons.length + exercises.length + pages.length > 0 || gap !== undefined,
    { error: 'needs lessons, exercises or pages, or a gap' },
  );

/** content/outlines/<id>.yaml: a public outline, topic by topic. Unknown keys are refused. */
export const outlineSchema = z.strictObject({
  title: z.string().describe('Name of the outline.'),
  source: z.enum(keysOf(sources)).describe('The id of a publication in lib/sources.ts.'),
  note: z.string().describe('Whose outline it is, and how its words came here.'),
  topics: z.array(topic).min(1),
});

export type Outline = z.infer<typeof outlineSchema> & { id: string };
