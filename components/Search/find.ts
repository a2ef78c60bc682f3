import type MiniSearch from 'minisearch';
import { inOtherWords, type Place, searchOptions } from './index-options.ts';

export type Found = Pick<Place, 'kind' | 'title' | 'heading' | 'path'>;

/** A name of a thing is what most people look for; a section of a lesson tells of it. */
const kindWeight: Record<string, number> = { word: 1.6, fault: 1.3, calculator: 1.3, page: 1.4 };

/**
 * The places that suit what was typed, best first, each path once. A word that was written as
 * two comes first, then places with all words as typed, what the trade says in other words, slips of
 * the finger, and places with some of the words.
 */
export function find(index: MiniSearch<Place>, typed: string, most = 30): Found[] {
  const options = {
    ...searchOptions,
    boostDocument: (_id: number, _term: string, stored?: Record<string, unknown>) =>
      kindWeight[String(stored?.kind)] ?? 1,
  };
  const other = inOtherWords(typed);
  const joined = typed.replace(/\s+/g, '');
  const rounds = [
    joined === typed ? [] : index.search(joined, { ...options, prefix: false, fuzzy: false }),
    index.search(typed, { ...options, fuzzy: false, combineWith: 'AND' }),
    other ? index.search(other, { ...options, fuzzy: false, combineWith: 'OR' }) : [],
    index.search(typed, { ...options, combineWith: 'AND' }),
    index.search(typed, { ...options, combineWith: 'OR' }),
  ];
  const found = new Map<string, Found>();
  for (const round of rounds) {
    for (const { kind, title, heading, path } of round) {
      const key = `${path} ${title}`;
      if (found.size < most && !found.has(key)) found.set(key, { kind, title, heading, path });
    }
  }
  return [...found.values()];
}
