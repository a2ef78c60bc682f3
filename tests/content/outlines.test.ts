/** The public outlines name only what is there, and say what is open. */
import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../content/read-curriculum.ts';
import { readOutlines } from '../../content/read-outlines.ts';
import { outlineSchema } from '../../content/schemas/outline.ts';

const course = await readCurriculum();

describe.each(readOutlines())('$title', ({ topics }) => {
  it('names lessons and exercises that exist', () => {
    const lessons = topics.flatMap((topic) => topic.lessons);
    const exercises = topics.flatMap((topic) => topic.exercises);
    expect(lessons.filter((id) => !course.lessons.some(({ slug }) => slug === id))).toEqual([]);
    expect(exercises.filter((id) => !course.exercises.some(({ slug }) => slug === id))).toEqual([]);
  });
  it('names pages that exist', () => {
    const pages = topics.flatMap((topic) => topic.pages);
    const there = (path: string) =>
      [`content/pages${path.replace(/\/$/, '')}.astro`, `content/pages${path}index.astro`].some(
        existsSync,
      );
    expect(pages.filter((path) => !there(path))).toEqual([]);
  });
  it('has no topic twice', () => {
    expect(new Set(topics.map(({ text }) => text)).size).toBe(topics.length);
  });
  it('says what is open in a sentence', () => {
    expect(topics.filter(({ gap }) => gap !== undefined && !gap.endsWith('.'))).toEqual([]);
  });
});

it('refuses a topic that is neither served nor open', () => {
  const outline = {
    title: 'x',
    source: 'onet-51-4121',
    note: 'x',
    topics: [{ text: 'Weld it', known: 'read' }],
  };
  expect(outlineSchema.safeParse(outline).success).toBe(false);
});
