/**
 * The prose of every lesson: its parts in order, no bare number with a unit, no sentence that runs
 * away, and no word of the house style's short list.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';

const folder = 'content/lessons';
const lessons = readdirSync(folder)
  .filter((name) => name.endsWith('.mdx'))
  .map((name) => {
    const text = readFileSync(`${folder}/${name}`, 'utf8');
    return { name: name.replace('.mdx', ''), body: text.replace(/^---\n[\s\S]*?\n---\n/, '') };
  });

const parts = [
  'Why this lesson is here',
  'Hazards first',
  'Set up',
  'Do it',
  'When it goes wrong',
  'The numbers',
  'Practice',
  'Booth exercise',
  'Good enough to move on',
];

/** The body without components' tags, link targets and headings' marks. */
const prose = (body: string): string =>
  body
    .replace(/<[A-Z][^<>]*?(?:\{\{[\s\S]*?\}\}[^<>]*?)*\/?>/g, ' ')
    .replace(/<\/[A-Z]\w*>/g, ' ')
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/\{'[^']*'\}/g, ' ');

const bareQuantity =
  /(?<![\w/.-])\d+(?:[.,/-]\d+)*(?:\s?(?:in|mm|cm|ft|A|V|kJ|J|lb|kg|psi|ksi|MPa|°F|°C|°|%)|\s(?:inch|inches|amps?|amperes|volts?|degrees|percent|pounds?))(?![\w-]|\s(?:the|a|an|this|that|its)\b)/g;

const sentences = (text: string): string[] =>
  text
    .split('\n')
    .filter((line) => !/^\s*(#|\||-{3})/.test(line))
    .join('\n')
    .split(/(?<=[.!?:])\s+|\n\s*\n|\n\s*(?:[-*]|\d+\.)\s/)
    .map((sentence) => sentence.replace(/[*_`[\]]/g, '').trim());

/** School grade by Flesch and Kincaid (US Navy, 1975); a colon does not end a sentence here. */
function grade(text: string): number {
  const whole = text.split(/(?<=[.!?])\s+|\n\s*\n/).filter((it) => /[a-z]{2}/i.test(it));
  const words = text.match(/[A-Za-z][A-Za-z’'-]*/g) ?? [];
  const syllables = words.reduce((sum, word) => sum + syllable(word), 0);
  return fleschKincaid({ sentence: whole.length, word: words.length, syllable: syllables });
}

describe('the grade of a text', () => {
  it('tells a hard sentence from an easy one', () => {
    expect(grade('The arc melts the rod. The rod fills the pool.')).toBeLessThan(2);
    expect(
      grade(
        'Discontinuities attributable to inadequate interpass preparation necessitate supplementary examination.',
      ),
    ).toBeGreaterThan(20);
  });
});

const unwanted = [/\bobviously\b/i, /\bcolour\b/i, /\bmetre\b/i, /\bgrey\b/i, /\bcentre\b/i];

describe.each(lessons)('$name', ({ body }) => {
  it('has its parts, in order', () => {
    const found = [...body.matchAll(/^## (.+)$/gm)].map(([, title]) => title as string);
    expect(found.filter((title) => !parts.includes(title))).toEqual([]);
    expect(found).toEqual(parts.filter((title) => found.includes(title)));
    expect(parts.filter((title) => title !== 'Hazards first' && !found.includes(title))).toEqual(
      [],
    );
  });

  it('has no bare number with a unit: each is computed, stated or sourced', () => {
    expect(prose(body).match(bareQuantity) ?? []).toEqual([]);
  });

  it('has no sentence of more than 35 words', () => {
    expect(sentences(prose(body)).filter((sentence) => sentence.split(/\s+/).length > 35)).toEqual(
      [],
    );
  });

  it('reads like the seventh grade or easier', () => {
    const plain = prose(body.replace(/^(#|\|).*$/gm, ''));
    expect(grade(plain)).toBeLessThan(7);
  });

  it('keeps to the house style', () => {
    const text = prose(body);
    expect(unwanted.flatMap((word) => text.match(word)?.[0] ?? [])).toEqual([]);
  });
});
