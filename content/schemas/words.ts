import { z } from 'astro/zod';
import { withApostrophes } from '../../components/Sentence/with-apostrophes.ts';

/** A sentence or a few; a quantity in it stands in braces, {1/8 in}, and follows the reader's units. */
export const sentence = z.string().min(3);

/** A heading, as it is printed. */
export const heading = z.string().min(3).transform(withApostrophes);

/** File names and ids: small letters, digits and hyphens. */
export const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'small letters, digits and hyphens');

export const idList = z.array(id);

/** A length or other size as typed, in one unit: `1/8 in`, `250 degF`. */
export const quantity = z
  .string()
  .regex(/^-?[\d./-]+(?: \d+\/\d+)? ?[A-Za-z%].*$/, 'a number and its unit');

export const position = z.enum([
  'flat',
  'horizontal',
  'vertical',
  'overhead',
  'pipe 2G',
  'pipe 5G',
  'pipe 6G',
]);

export const joint = z.enum(['bead', 'pad', 'tee', 'lap', 'corner', 'groove', 'pipe groove']);

/** The keys of a record as the non-empty list that `z.enum` wants. */
export function keysOf<const R extends Record<string, unknown>>(record: R) {
  return Object.keys(record) as [keyof R & string, ...(keyof R & string)[]];
}
