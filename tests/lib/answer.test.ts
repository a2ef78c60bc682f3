/** The edge between what is typed and what is computed, on small calculations made for it. */
import { describe, expect, it } from 'vitest';
import { type Answered, answer, type Typed } from '../../lib/answer.ts';
import { type Calculation, defineFormula, defineProcedure } from '../../lib/calculation.ts';
import { NoAnswer } from '../../lib/no-answer.ts';

const cite = { source: 'practice', known: 'practice' } as never;
const told = { title: 'T', summary: 'S', cite: [] } as const;
const strip = defineFormula({
  ...told,
  inputs: {
    width: {
      label: 'Width',
      obtain: 'measure it',
      symbol: 'b',
      unit: 'in',
      limits: { min: 1 / 4, max: 12, why: 'the bench is a foot wide' },
      usual: { min: 1, max: 6, why: 'offcuts are that wide', cite },
      example: { us: '2', metric: '50' },
    },
    count: {
      label: 'Count',
      obtain: 'count them',
      symbol: 'n',
      unit: '1',
      limits: { min: 0, max: 1e300, why: 'none is fewer than none' },
      example: '3',
      default: '2',
      whole: true,
    },
    spare: {
      label: 'Spare',
      obtain: 'guess',
      symbol: 's',
      unit: 'in',
      limits: { why: 'any' },
      example: '1',
      optional: true,
    },
  },
  outputs: { total: { label: 'Total', unit: 'in', formula: 'width * count' } },
  compute: ({ width, count }) => ({ total: width * count }),
  notes: (_, { total }) => (total > 20 ? [{ text: 'a long strip' }] : []),
});
const log = defineProcedure({
  ...told,
  inputs: {
    kind: { label: 'Kind', obtain: 'choose', choices: ['Flat', 'Round'], example: 'Flat' },
    day: { label: 'Day', obtain: 'look', date: true, example: '2026-03-02', optional: true },
    size: {
      label: 'Size',
      obtain: 'read',
      symbol: 'd',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.1, max: 1, why: 'the table ends there' },
      example: { us: '1/4', metric: '6' },
    },
    pieces: {
      label: 'Pieces',
      obtain: 'list',
      list: {
        length: {
          label: 'Length',
          obtain: 'measure',
          symbol: 'L',
          unit: 'in',
          limits: { min: 0, why: 'a length is not negative' },
          example: '8 in',
        },
        kind: { label: 'Kind', obtain: 'choose', choices: ['Flat', 'Round'], example: 'Flat' },
      },
      example: [{ length: '8 in', kind: 'Flat' }],
      optional: true,
    },
  },
  outputs: { seen: { label: 'Seen', shape: true } },
  compute: (given) => {
    if (given.kind === 'Round') throw new NoAnswer('has no row', 'kind');
    return { seen: given, because: [{ text: 'own' }] };
  },
});

const ask = (calculation: unknown, typed: Typed, bare?: 'us' | 'metric') =>
  answer(calculation as Calculation, typed, bare);
const problems = (found: Answered) => (found.ok ? [] : found.problems);
const seen = (typed: Typed, bare?: 'us' | 'metric') => {
  const found = ask(log, typed, bare);
  if (!found.ok) throw new Error(JSON.stringify(found));
  return found;
};
const piece = { length: '8 in', kind: 'Flat' };

describe('answer', () => {
  it('hands numbers over in the declared unit and keeps what was typed', () => {
    const found = ask(strip, { width: ' 50,8 mm ', count: 3 });
    expect(found).toMatchObject({
      ok: true,
      values: { width: 2, count: 3, spare: undefined },
      given: { width: { text: ' 50,8 mm ', value: 50.8, unit: 'mm', system: 'metric' } },
      results: { total: 6 },
    });
  });

  it('takes the default where nothing is given, and no value where it may be left out', () => {
    const found = ask(strip, { width: '2', count: undefined, spare: '' });
    expect(found).toMatchObject({ ok: true, values: { count: 2, spare: undefined } });
  });

  it('takes a bare number in the declared unit, or in the reader’s own when told so', () => {
    expect(ask(strip, { width: '50' })).toMatchObject({ ok: false });
    expect(ask(strip, { width: '50.8' }, 'metric')).toMatchObject({ values: { width: 2 } });
    expect(ask(strip, { width: '2' }, 'us')).toMatchObject({ values: { width: 2 } });
  });

  it('names what it does not know beside what there is', () => {
    expect(problems(ask(strip, { width: '2', depth: '1', toString: '1' }))).toEqual([
      { field: 'depth', text: '“depth” is not an input here; there are width, count, spare' },
      { field: 'toString', text: '“toString” is not an input here; there are width, count, spare' },
    ]);
  });

  it('says every problem at once, by field', () => {
    expect(problems(ask(strip, { count: '2.5', spare: '1 V' }))).toEqual([
      { field: 'width', text: 'Width is missing' },
      { field: 'count', text: 'Count needs a whole number' },
      { field: 'spare', text: 'Spare is a length, so V does not fit' },
    ]);
  });

  it.each(['1/4', '12', '6.35 mm', '304.8 mm', '1 ft'])('answers at a limit, at %s', (width) => {
    expect(ask(strip, { width }).ok).toBe(true);
  });

  it.each([
    ['0.2499', 'Width must be at least {1/4 in}: the bench is a foot wide'],
    ['12.001', 'Width must be at most {12 in}: the bench is a foot wide'],
  ])('refuses %s in beyond a limit with its reason', (width, text) => {
    expect(problems(ask(strip, { width }))).toEqual([{ field: 'width', text }]);
  });

  it.each([
    ['1', []],
    ['6', []],
    ['0.99', ['Width is usually at least {1 in}: offcuts are that wide']],
    ['6.01', ['Width is usually at most {6 in}: offcuts are that wide']],
  ])('answers %s in, and cautions only outside the usual', (width, texts) => {
    const found = ask(strip, { width });
    expect(found.ok && found.because).toEqual(
      texts.map((text) => ({ kind: 'caution', text, cite })),
    );
  });

  it('tells the notes on the result before the cautions on the values', () => {
    const found = ask(strip, { width: '11' });
    expect(found.ok && found.because.map(({ text }) => text.slice(0, 6))).toEqual([
      'a long',
      'Width ',
    ]);
  });

  it('says so where the numbers run away', () => {
    expect(ask(strip, { width: '12', count: '9'.repeat(299) })).toMatchObject({ ok: true });
    const endless = { ...strip, compute: () => ({ total: Number.POSITIVE_INFINITY }) };
    const inside = {
      ...log,
      compute: () => ({ seen: { rows: [{ at: Number.NaN }] }, because: [] }),
    };
    for (const found of [ask(endless, { width: '2' }), ask(inside, { kind: 'flat', size: '1/4' })])
      expect(problems(found)).toEqual([
        { field: '', text: 'These values lie too far out to compute with' },
      ]);
  });

  it('passes on that there is no answer, with the field at fault', () => {
    expect(problems(ask(log, { kind: 'round', size: '1/4' }))).toEqual([
      { field: 'kind', text: 'has no row' },
    ]);
    const bare = {
      ...log,
      compute: () => {
        throw new NoAnswer('Nothing fits');
      },
    };
    expect(problems(ask(bare, { kind: 'flat', size: '1/4' }))).toEqual([
      { field: '', text: 'Nothing fits' },
    ]);
  });

  it('does not hide a mistake of ours behind a sentence', () => {
    const broken = {
      ...log,
      compute: () => {
        throw new RangeError('ours');
      },
    };
    expect(() => ask(broken, { kind: 'flat', size: '1/4' })).toThrow('ours');
  });
});

describe('a choice, a day, a printed size', () => {
  it('takes a word in any case, as the list writes it', () => {
    expect(seen({ kind: ' FLAT ', size: '1/4' })).toMatchObject({
      values: { kind: 'Flat', day: undefined },
      given: { kind: { text: 'Flat' } },
    });
  });

  it('names the words where another is typed', () => {
    expect(problems(ask(log, { kind: 'square', size: '1/4' }))).toEqual([
      { field: 'kind', text: 'Kind “square” is not known here; there are Flat, Round' },
    ]);
  });

  it('reads a day and writes it in full', () => {
    expect(seen({ kind: 'flat', size: '1/4', day: '2026-3-2' })).toMatchObject({
      values: { day: '2026-03-02' },
      given: { day: { text: '2026-03-02' } },
    });
    expect(problems(ask(log, { kind: 'flat', size: '1/4', day: '2026-02-30' }))).toEqual([
      { field: 'day', text: 'Day 2026-02-30 is a day no calendar has' },
    ]);
  });

  it('looks a size up in the system it was typed in', () => {
    expect(seen({ kind: 'flat', size: '6 mm' }).values.size).toEqual({
      value: 6,
      system: 'metric',
    });
    expect(seen({ kind: 'flat', size: '1/4 in' }).values.size).toEqual({
      value: 0.25,
      system: 'us',
    });
    expect(seen({ kind: 'flat', size: '6' }, 'metric').values.size).toEqual({
      value: 6,
      system: 'metric',
    });
    expect(problems(ask(log, { kind: 'flat', size: '26 mm' }))[0]?.text).toMatch(
      /at most \{1 in\}/,
    );
  });

  it('needs one value, not rows', () => {
    expect(problems(ask(log, { kind: 'flat', size: [{ a: '1' }] }))).toEqual([
      { field: 'size', text: 'Size needs one value' },
    ]);
  });
});

describe('a list', () => {
  const listed = (pieces: unknown) =>
    ask(log, { kind: 'flat', size: '1/4', pieces: pieces as never });

  it('hands its rows over, read like single values', () => {
    expect(listed([piece, { length: '254 mm', kind: 'flat' }])).toMatchObject({
      values: {
        pieces: [
          { length: 8, kind: 'Flat' },
          { length: 10, kind: 'Flat' },
        ],
      },
      given: { pieces: [{ length: { text: '8 in' } }, { length: { text: '254 mm' } }] },
    });
  });

  it('may be left out only where the calculation says so', () => {
    expect(seen({ kind: 'flat', size: '1/4' }).values.pieces).toBeUndefined();
    const { optional: _, ...pieces } = log.inputs.pieces;
    const strict = { ...log, inputs: { ...log.inputs, pieces } };
    expect(problems(ask(strict, { kind: 'flat', size: '1/4' }))).toEqual([
      { field: 'pieces', text: 'Pieces: nothing is listed' },
    ]);
  });

  it.each([['8 in'], [8], [[8]], [[piece, null]], [[piece, 'x']]])('refuses %j', (pieces) => {
    expect(problems(listed(pieces))).toEqual([
      { field: 'pieces', text: 'Pieces needs a list of rows' },
    ]);
  });

  it('takes a thousand rows and no more', () => {
    expect(listed(Array(1000).fill(piece)).ok).toBe(true);
    expect(problems(listed(Array(1001).fill(piece)))).toEqual([
      { field: 'pieces', text: 'Pieces holds more than 1000 rows' },
    ]);
  });

  it('counts rows from one where it names a problem', () => {
    expect(problems(listed([piece, { length: '-1', kind: 'Flat', width: '2' }]))).toEqual([
      { field: 'pieces.2.width', text: '“width” is not a column here; there are length, kind' },
      {
        field: 'pieces.2.length',
        text: 'Length must be at least {0 in}: a length is not negative',
      },
    ]);
  });
});
