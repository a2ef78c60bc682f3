/** A booth's state and its link are inverses; what cannot be used is named and the rest stands. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Booth,
  boothParameters,
  longestTexts,
  queryOf,
  readBooth,
  tidyText,
} from '../../../lib/booth/booth-link.ts';
import { readBoothNumber, shownBoothNumber } from '../../../lib/booth/booth-number.ts';
import { type BoothWordInLink, boothQuantities } from '../../../lib/booth/booth-quantities.ts';

const words = Object.keys(boothQuantities) as BoothWordInLink[];
const typed: Record<BoothWordInLink, readonly string[]> = {
  rootclass: ['E6010', 'E6011'],
  rootelectrode: ['1/8 in', '3.2 mm'],
  rootcurrent: ['78', '85 A'],
  class: ['E7018', 'E6010', 'e7018-1'],
  electrode: ['1/8 in', '3/32', '3.2 mm', '0.156 in'],
  current: ['125', '130 A', '97.5 A', '97,5'],
  voltage: ['22 V', '24'],
  thickness: ['3/8 in', '10 mm', '1 in', '1-1/2 in', '9,5 mm', '1/2"'],
  leg: ['5/16 in', '8 mm', '0.3 in'],
  opening: ['1/4 in', '0', '6 mm'],
  width: ['3/8', '10 mm'],
  overlap: ['50', '33 %', '40%'],
  runout: ['8.2 in', '190 mm', '7-1/2 in'],
};
const numbers = fc
  .record(
    Object.fromEntries(words.map((word) => [word, fc.constantFrom(...typed[word])])) as Record<
      BoothWordInLink,
      fc.Arbitrary<string>
    >,
    { requiredKeys: [] },
  )
  .map((some) =>
    Object.fromEntries(
      (Object.entries(some) as [BoothWordInLink, string][]).map(([word, text]) => {
        const read = readBoothNumber(word, text);
        if (!read.ok) throw new Error(read.problem);
        return [word, read.text];
      }),
    ),
  );
const text = (name: keyof typeof longestTexts) =>
  fc
    .string({ unit: 'binary', maxLength: 200 })
    .map((any) => tidyText(name, any))
    .filter((tidy) => tidy !== '');
const booths: fc.Arbitrary<Booth> = fc.record(
  {
    exercise: fc.stringMatching(/^[a-z0-9-]{1,80}$/),
    place: text('place'),
    group: text('group'),
    note: text('note'),
    units: fc.constantFrom('us' as const, 'metric' as const),
    numbers,
  },
  { requiredKeys: ['numbers'] },
);

const reread = (booth: Booth) => readBooth(new URLSearchParams(queryOf(boothParameters(booth))));

describe('the link of a booth', () => {
  it('gives back every state that was written into it', () => {
    fc.assert(
      fc.property(booths, (booth) => {
        expect(reread(booth)).toEqual({ booth, problems: [] });
      }),
      { numRuns: 500 },
    );
  });
  it('is the same for the same state, whatever the order it was set in', () => {
    const one: Booth = { numbers: { current: '130A', leg: '3/8in' }, place: '7' };
    const other: Booth = { place: '7', numbers: { leg: '3/8in', current: '130A' } };
    expect(queryOf(boothParameters(one))).toBe(queryOf(boothParameters(other)));
  });
  it('can be read by a person', () => {
    expect(
      queryOf(
        boothParameters({
          exercise: 'fillet-2f',
          place: '7',
          note: 'Slow, please',
          numbers: { electrode: '1/8in', current: '130A' },
        }),
      ),
    ).toBe(
      'booth.v=1&booth.exercise=fillet-2f&booth.electrode=1/8in&booth.current=130A&booth.place=7&booth.note=Slow,+please',
    );
  });
  it('never throws, and keeps what it can, whatever a link holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (junk) => {
        const read = readBooth(
          new URLSearchParams(`booth.current=130A&${junk}&booth.note=${junk}&booth.leg=${junk}`),
        );
        expect(read.booth.numbers.current).toBe('130A');
        expect([...(read.booth.note ?? '')].length).toBeLessThanOrEqual(longestTexts.note);
      }),
      { numRuns: 500 },
    );
  });
  it.each([
    ['booth.current=abc', /Current needs a number, not “abc”/],
    ['booth.current=', /Current is empty/],
    ['booth.current=1e999A', /Current/],
    ['booth.current=9000A', /Current must be at most/],
    ['booth.leg=130A', /Fillet leg to reach is a length, so A does not fit/],
    ['booth.class=E9999', /Classification “E9999” is not known here/],
    ['booth.thickness=99999999999999999999999999', /too long/],
    ['booth.amps=130', /“booth.amps” means nothing here/],
    ['booth.exercise=../x', /no name of an exercise/],
    ['booth.v=2', /newer version/],
    ['booth.v=x', /no version that was ever in use/],
    ['booth.leg=1/4in&booth.leg=3/8in', /stands twice/],
  ])('%s: says what it could not use, and keeps the rest', (part, problem) => {
    const { booth, problems } = readBooth(new URLSearchParams(`booth.place=7&${part}`));
    expect(problems.join('\n')).toMatch(problem);
    expect(problems).toHaveLength(1);
    expect(booth.place).toBe('7');
  });
  it.each([
    ['1', []],
    ['2', [/newer version/]],
    ['12', [/newer version/]],
    ['9999', [/newer version/]],
    ['10000', [/no version that was ever in use: “10000”/]],
    ['0', [/no version that was ever in use/]],
    ['2x', [/no version that was ever in use/]],
    ['x2', [/no version that was ever in use/]],
  ])('takes version %s for what it is', (version, said) => {
    expect(readBooth(new URLSearchParams({ 'booth.v': version })).problems).toEqual(
      said.map((one) => expect.stringMatching(one)),
    );
  });
  it('says where a text had to be shortened or cleaned', () => {
    const read = (note: string) => readBooth(new URLSearchParams({ 'booth.note': note }));
    expect(read('slow').problems).toEqual([]);
    expect(read(' slow').problems).toEqual([
      'The note was shortened or cleaned of signs nobody can see',
    ]);
    expect(read('x'.repeat(141)).booth.note).toBe('x'.repeat(140));
    expect(read('\u200b').booth).not.toHaveProperty('note');
    expect(longestTexts).toEqual({ place: 12, group: 24, note: 140 });
  });
  it('cuts a text after its blanks are taken off, and leaves none at the cut', () => {
    expect(tidyText('place', '   abcdefghijkl')).toBe('abcdefghijkl');
    expect(tidyText('place', 'abcdefghijk lmn')).toBe('abcdefghijk');
    expect(tidyText('place', 'a   b')).toBe('a b');
  });
  it('keeps other signs of a query apart from its own', () => {
    expect(queryOf([['a', 'x & y = z + 1 / 2 : 3 @ 4, “5”']])).toBe(
      'a=x+%26+y+%3D+z+%2B+1+/+2+:+3+@+4,+%E2%80%9C5%E2%80%9D',
    );
  });
  it('opens a link that names no version', () => {
    expect(readBooth(new URLSearchParams('booth.current=130A'))).toEqual({
      booth: { numbers: { current: '130A' } },
      problems: [],
    });
  });
  it('takes out signs that cannot be seen or that turn the writing round', () => {
    expect(tidyText('note', ' one\u202e two\u0000\n three ')).toBe('one two three');
  });
});

describe('a number of a booth', () => {
  it('is shown as typed in its own system and converted in the other', () => {
    expect(shownBoothNumber('leg', '5/16in')).toEqual({
      us: '5/16\u00a0in',
      metric: '7.9\u00a0mm',
    });
    expect(shownBoothNumber('leg', '8mm')).toEqual({ us: '0.315\u00a0in', metric: '8\u00a0mm' });
    expect(shownBoothNumber('current', '130A').metric).toBe('130\u00a0A');
    expect(shownBoothNumber('overlap', '50').us).toBe('50\u00a0%');
  });
  it('is left as it stands where it cannot be read, and a word is a word', () => {
    expect(shownBoothNumber('leg', 'wide')).toEqual({ us: 'wide', metric: 'wide' });
    expect(shownBoothNumber('class', 'E7018')).toEqual({ us: 'E7018', metric: 'E7018' });
  });
  it.each([
    ['leg', '0.001 in', /at least \{.+ in\}: /],
    ['leg', '99 in', /at most \{\d+ in\}: /],
    ['electrode', '1/64 in', /at least \{\S+ in\}: /],
    ['current', '1 A', /at least \{\d+ A\}: /],
    ['current', '99999 A', /at most \{\d+ A\}: /],
  ] as const)(
    'of %s is refused at %s with its bound, in words for both readers',
    (word, text, said) => {
      const read = readBoothNumber(word, text);
      expect(read.ok ? '' : read.problem).toMatch(said);
    },
  );
  it('stands, without a unit, in the unit its reader is shown', () => {
    expect(readBoothNumber('leg', '8', 'metric')).toEqual({ ok: true, text: '8mm' });
    expect(readBoothNumber('leg', '1 1/2', 'us')).toEqual({ ok: true, text: '1-1/2in' });
  });
});
