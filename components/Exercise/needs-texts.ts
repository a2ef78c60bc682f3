/** What one attempt takes, as sentences whose quantities follow the reader's units. */
import type { CollectionEntry } from 'astro:content';
import { electrodesNeeded } from './electrodes-needed.ts';

type Exercise = CollectionEntry<'exercises'>['data'];

/** `3/8 in x 4 in` in braces. */
const braced = (section: string) =>
  section
    .split(/\s+x\s+/)
    .map((size) => `{${size}}`)
    .join(' × ');

export const metalTexts = (coupon: Exercise['coupon'], notes = true): string[] =>
  coupon.map(({ section, nps, schedule, piece, length, count, steel, note }) => {
    const size = section ? braced(section) : `NPS ${nps} Sch ${schedule}`;
    const text = `${count} × ${piece} ${size}, {${length}} long, ${steel}`;
    return notes && note ? `${text}. ${note}` : text;
  });

export const rodTexts = (electrodes: Exercise['electrodes']): Promise<string[]> =>
  Promise.all(
    electrodes.map(async (it) => {
      const text = `${await electrodesNeeded(it)} × ${it.classification}, {${it.diameter}}`;
      return it.for ? `${text}: ${it.for}` : text;
    }),
  );
