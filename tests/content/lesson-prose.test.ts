/**
 * The prose of every lesson: its parts in order, no bare number with a unit, no sentence that runs
 * away, and no word of the house style's short list.
 */
import { readdirSync, readFileSync } from 'node:fs';
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

  it('keeps to the house style', () => {
    const text = prose(body);
    expect(unwanted.flatMap((word) => text.match(word)?.[0] ?? [])).toEqual([]);
  });
});
