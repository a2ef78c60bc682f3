/** The exercises as files, for tests and commands; pages get them from the collection. */
import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import { type Exercise, exerciseSchema } from './schemas/exercise.ts';

export function readExercises(
  folder = 'content/exercises',
): (Exercise & { slug: string; file: string })[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const file = `${folder}/${name}`;
      const read = exerciseSchema.safeParse(parse(readFileSync(file, 'utf8')));
      if (!read.success) throw new Error(`${file}\n${z.prettifyError(read.error)}`);
      return { ...read.data, slug: name.replace('.yaml', ''), file };
    });
}
