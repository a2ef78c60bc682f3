/** How texts are cut into words and words into stems: the same when the index is built and when it is asked. */
import type { Options } from 'minisearch';

/** One place that a search may lead to. */
export interface Place {
  id: number;
  /** What it is: lesson, word, fault, calculator, exercise, source, page. */
  kind: string;
  title: string;
  /** The heading there, where it is not the title. */
  heading: string;
  /** The address, base path and fragment included. */
  path: string;
  /** What is said there. */
  text: string;
}

/** Fractions stay whole; hyphens and dots part words. */
const words = (text: string): string[] =>
  text.toLowerCase().match(/\d+\/\d+|[\p{L}\p{N}]+(?:['’]\p{L}+)*/gu) ?? [];

/** Said in every sentence, and so said by none. */
const empty = new Set(
  'a an and are as at be by for from in is it of on or that the to with'.split(' '),
);

/**
 * The stem of an English word as far as the trade needs it: `welding`, `welds` and `welded` are `weld`,
 * `undercutting` is `undercut`. It is for matching alone and may be no word.
 */
export function stem(word: string): string {
  if (/\d/.test(word) || word.length < 4) return word;
  const short = word
    .replace(/['’].*$/, '')
    .replace(/ies$/, 'y')
    .replace(/(?<=[a-z]{3})(?:ings?|ed|ers?|es|s)$/, (end, at: number) =>
      end === 's' && word[at - 1] === 's' ? end : '',
    )
    .replace(/(?<=[a-z]{3})e$/, '');
  return short.replace(/([b-df-hj-np-tv-z])\1$/, '$1');
}

/** `e7018` is also found as `7018`, which is what is said at the counter. */
function terms(word: string): string[] | null {
  if (empty.has(word)) return null;
  const code = /^e(\d{4,5})$/.exec(word)?.[1];
  return code ? [word, code] : [stem(word)];
}

/** What people of the trade say for what the course says. */
const alsoSaid: Record<string, readonly string[]> = {
  rod: ['electrode'],
  rods: ['electrodes'],
  stick: ['electrode'],
  amp: ['current', 'ampere'],
  amps: ['current', 'amperes'],
  amperage: ['current'],
  volts: ['voltage'],
  puddle: ['pool'],
  vertical: ['upright'],
  overlap: ['lap'],
  smaw: ['electrode'],
  dime: ['size'],
  hole: ['porosity'],
  holes: ['porosity'],
  pinholes: ['porosity'],
  earth: ['workpiece'],
  ground: ['workpiece'],
  hood: ['filter'],
  helmet: ['hood'],
};

export const indexOptions: Options<Place> = {
  fields: ['title', 'heading', 'text'],
  storeFields: ['kind', 'title', 'heading', 'path'],
  tokenize: words,
  processTerm: terms,
};

/**
 * How a typed text is looked up: all words first, beginnings of words too, and one slip of the finger
 * in a word of four letters and more, two, or two letters swapped, from seven on. Codes and figures are taken as they are.
 */
export const searchOptions = {
  prefix: (term: string) => term.length > 1,
  fuzzy: (term: string) => (/\d/.test(term) || term.length < 4 ? false : term.length < 7 ? 1 : 2),
  boost: { title: 4, heading: 2 },
  weights: { prefix: 0.4, fuzzy: 0.2 },
};

/** The same with what the trade says in other words, for those that found nothing or little. */
export const inOtherWords = (typed: string): string =>
  words(typed)
    .flatMap((word) => alsoSaid[word] ?? [])
    .join(' ');
