/** The public outlines that the course is laid beside, by file name. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import { type Outline, outlineSchema } from './schemas/outline.ts';

/** @param folder of the outlines; those of this course where an adapted one brings none */
export function readOutlines(folder = 'content/outlines'): Outline[] {
  const place = existsSync(folder) ? folder : 'content/outlines';
  return readdirSync(place)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const file = `${place}/${name}`;
      const read = outlineSchema.safeParse(parse(readFileSync(file, 'utf8')));
      if (!read.success) throw new Error(`${file}\n${z.prettifyError(read.error)}`);
      return { ...read.data, id: name.replace('.yaml', '') };
    });
}
