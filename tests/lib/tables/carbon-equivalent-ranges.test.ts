/**
 * Where each carbon equivalent stops to mean anything. EN 1011-2, C.2 and C.3 (from memory); Pcm as a
 * published guide to carbon equivalents has it, its upper figure from memory.
 */
import { describe, expect, it } from 'vitest';
import { outsideRanges, type Steel } from '../../../lib/tables/carbon-equivalent-ranges.ts';

const plain: Steel = {
  carbon: 0.1,
  manganese: 1.2,
  silicon: 0.2,
  copper: 0.1,
  nickel: 0.1,
  chromium: 0.1,
  molybdenum: 0.05,
  vanadium: 0.01,
  niobium: 0.01,
  boron: 0,
};
const said = (change: Partial<Steel>, ceIIW = 0.4) => outsideRanges({ ...plain, ...change }, ceIIW);
const texts = (change: Partial<Steel>, ceIIW?: number) =>
  said(change, ceIIW).map(({ text }) => text);
const nearBy = 1e-6;

describe('the range of a carbon equivalent', () => {
  it('has nothing to say of plain steel', () => {
    expect(said({})).toEqual([]);
  });

  it.each([
    [
      'carbon',
      0.05,
      0.25,
      /^The IIW index holds for \{0\.05 percent\} to \{0\.25 percent\} carbon/,
    ],
    ['carbon', 0.05, 0.32, /^CET holds for carbon \{0\.05 percent\} to \{0\.32 percent\}\.$/],
    ['manganese', 0.5, 1.9, /^CET holds for manganese \{0\.5 percent\} to \{1\.9 percent\}\.$/],
  ] as const)(
    'of %s from %f to %f percent includes both ends',
    (element, least, most, sentence) => {
      for (const inside of [least, most])
        expect(texts({ [element]: inside }).filter((text) => sentence.test(text))).toEqual([]);
      for (const outside of [least - nearBy, most + nearBy])
        expect(texts({ [element]: outside })).toContainEqual(expect.stringMatching(sentence));
    },
  );

  it('of the IIW index itself is 0.30 to 0.70 percent, both included', () => {
    const sentence =
      /^Method A, which uses the IIW index, covers \{0\.30 percent\} to \{0\.70 percent\}/;
    for (const inside of [0.3, 0.7]) expect(texts({}, inside)).toEqual([]);
    for (const outside of [0.3 - nearBy, 0.7 + nearBy])
      expect(texts({}, outside)).toEqual([expect.stringMatching(sentence)]);
  });

  it.each([
    ['silicon', 0.8],
    ['copper', 0.7],
    ['nickel', 2.5],
    ['chromium', 1.5],
    ['molybdenum', 0.75],
    ['vanadium', 0.18],
    ['niobium', 0.06],
    ['boron', 0.005],
  ] as const)('of CET ends for %s at %f percent', (element, most) => {
    expect(texts({ [element]: most })).toEqual([]);
    expect(texts({ [element]: most + nearBy })).toEqual([
      `CET holds for ${element} up to {${most} percent}.`,
    ]);
  });

  it('of Pcm is up to 0.11 percent carbon, then a second opinion, and above 0.18 not used', () => {
    const pcm = (carbon: number) => texts({ carbon }).filter((text) => text.startsWith('Pcm'));
    expect(pcm(0.11)).toEqual([]);
    expect(pcm(0.11 + nearBy)).toEqual([
      expect.stringMatching(/up to about \{0\.11 percent\} carbon; .* second opinion/),
    ]);
    expect(pcm(0.18)).toEqual([expect.stringMatching(/second opinion/)]);
    expect(pcm(0.18 + nearBy)).toEqual([
      expect.stringMatching(/not used above about \{0\.18 percent\}/),
    ]);
  });

  it('lists several elements in one sentence, and names no range for manganese that was not read', () => {
    expect(texts({ copper: 1, nickel: 3 })).toEqual([
      'CET holds for copper up to {0.7 percent}, nickel up to {2.5 percent}.',
    ]);
    expect(texts({ manganese: 0 })).toEqual([
      expect.stringMatching(/^Manganese counts as 0 here, .* Look at the report again\.$/),
    ]);
  });

  it('names its source, except where it only doubts the report', () => {
    expect(said({ carbon: 0.3 }).map(({ cite }) => cite?.source)).toEqual([
      'en-1011-2',
      'carbon-equivalent-guide',
    ]);
    expect(said({ nickel: 3 }).map(({ cite }) => cite?.at)).toEqual(['C.3, method B']);
    expect(said({}, 0.8).map(({ cite }) => cite?.at)).toEqual(['C.2, method A']);
    expect(said({ manganese: 0 })[0]).not.toHaveProperty('cite');
  });
});
