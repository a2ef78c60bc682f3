/**
 * What one booth uses, as the parameters of a link: `?booth.v=1&booth.current=130A`. The whole state
 * is in the link; nothing is looked up anywhere. A part that cannot be used is named and the rest
 * is kept, so that an old, a newer or a damaged link still opens.
 */
import { quoted } from '../text/quoted.ts';
import { readBoothNumber } from './booth-number.ts';
import { type BoothWordInLink, boothQuantities, isBoothWord } from './booth-quantities.ts';

export interface Booth {
  /** Slug of an exercise, where the link belongs to one. */
  exercise?: string;
  /** Number or name of the booth or the machine. */
  place?: string;
  group?: string;
  /** What the instructor wants to say. */
  note?: string;
  units?: 'us' | 'metric';
  numbers: Partial<Record<BoothWordInLink, string>>;
}

export interface BoothRead {
  booth: Booth;
  /** Sentences on what could not be used, in the order of the link. */
  problems: string[];
}

/** Counted up when a parameter changes its meaning. Reading goes on to understand earlier ones. */
export const linkVersion = 1;

/** Letters that each text of a link may have: what fits on a booth’s sheet. */
export const longestTexts = { place: 12, group: 24, note: 140 } as const;

type Text = keyof typeof longestTexts;
const isText = (name: string): name is Text => Object.hasOwn(longestTexts, name);
const slugShape = /^[a-z0-9-]{1,80}$/;

/** Marks that turn the direction of writing or cannot be seen have no business in a link. */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;

/** A text as it is kept: one line, no more blanks than needed, not too long. */
export const tidyText = (name: Text, text: string): string =>
  [...text.replace(unseen, ' ').replace(/\s+/g, ' ').trim()]
    .slice(0, longestTexts[name])
    .join('')
    .trim();

/** The parameters, in an order of their own, so that equal states have equal links. */
export function boothParameters(booth: Booth): [string, string][] {
  const { exercise, place, group, note, units, numbers } = booth;
  const words = Object.keys(boothQuantities) as BoothWordInLink[];
  const pairs: [string, string | undefined][] = [
    ['booth.v', String(linkVersion)],
    ['booth.exercise', exercise],
    ...words.map((word): [string, string | undefined] => [`booth.${word}`, numbers[word]]),
    ['booth.place', place],
    ['booth.group', group],
    ['booth.note', note],
    ['units', units],
  ];
  return pairs.filter((pair): pair is [string, string] => pair[1] !== undefined && pair[1] !== '');
}

/** The parameters as text, kept short: what a query may hold as it is, stays as it is. */
export const queryOf = (pairs: readonly (readonly [string, string])[]): string =>
  pairs.map(([key, value]) => `${key}=${short(value)}`).join('&');

const short = (text: string): string =>
  encodeURIComponent(text).replace(/%(20|2F|3A|2C|40)/g, (mark) => kept[mark] as string);

const kept: Record<string, string> = {
  '%20': '+',
  '%2F': '/',
  '%3A': ':',
  '%2C': ',',
  '%40': '@',
};

/** Reads the parameters of a link; others than those of a booth are left alone. */
export function readBooth(parameters: URLSearchParams): BoothRead {
  const booth: Booth = { numbers: {} };
  const problems: string[] = [];
  const seen = new Set<string>();
  for (const [key, value] of parameters) {
    if (!key.startsWith('booth.')) continue;
    const name = key.slice('booth.'.length);
    if (seen.has(name)) problems.push(`${quoted(key, 40)} stands twice; the first one counts`);
    else problems.push(...readOne(booth, name, value));
    seen.add(name);
  }
  const units = parameters.get('units');
  if (units === 'us' || units === 'metric') booth.units = units;
  return { booth, problems };
}

function readOne(booth: Booth, name: string, value: string): string[] {
  if (name === 'v') return versionProblems(value);
  if (name === 'exercise') {
    if (!slugShape.test(value)) return [`The exercise ${quoted(value)} is no name of an exercise`];
    booth.exercise = value;
    return [];
  }
  if (isText(name)) {
    const text = tidyText(name, value);
    if (text !== '') booth[name] = text;
    return text === value ? [] : [`The ${name} was shortened or cleaned of signs nobody can see`];
  }
  if (!isBoothWord(name)) return [`${quoted(`booth.${name}`, 40)} means nothing here`];
  const read = readBoothNumber(name, value);
  if (!read.ok) return [read.problem];
  booth.numbers[name] = read.text;
  return [];
}

const versionProblems = (value: string): string[] => {
  if (value === String(linkVersion)) return [];
  return /^\d{1,4}$/.test(value) && Number(value) > linkVersion
    ? [
        'The link comes from a newer version of this site; what could be understood was taken over. Reload the page to get the newest',
      ]
    : [`The link names no version that was ever in use: ${quoted(value)}`];
};
