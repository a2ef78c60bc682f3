/** The address and the state are inverses, and what is not understood is named. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Input, Inputs } from '../../lib/calculation.ts';
import { readState, type State, writeState } from '../../lib/page-state.ts';

const size: Input = {
  label: 'Size',
  symbol: 's',
  unit: 'in',
  limits: { why: '' },
  example: '1',
  obtain: '',
};
const inputs = {
  size,
  word: { label: 'Word', choices: ['a', 'b'], example: 'a', obtain: '' },
  pieces: { label: 'Pieces', list: { length: size, count: size }, example: [], obtain: '' },
} as Inputs;

const text = fc.string({ minLength: 1, maxLength: 40 });
const cell = text.filter((one) => !one.includes('|'));
const states: fc.Arbitrary<State> = fc.record(
  {
    size: text,
    word: text,
    pieces: fc.array(fc.record({ length: cell, count: cell }), { minLength: 1, maxLength: 9 }),
  },
  { requiredKeys: [] },
);

describe('the address of a page', () => {
  it('gives back every state that was written into it', () => {
    fc.assert(
      fc.property(states, (state) => {
        const parameters = new URLSearchParams(writeState('plan', inputs, state));
        const read = readState('plan', inputs, new URLSearchParams(parameters.toString()));
        expect(read).toEqual({ state, strays: [] });
      }),
    );
  });

  it('is the same for equal states', () => {
    expect(writeState('p', inputs, { word: 'a', size: '1' })).toEqual(
      writeState('p', inputs, { size: '1', word: 'a' }),
    );
  });

  it('takes two hundred letters, and no more, as anything that somebody typed', () => {
    const read = (letters: number) =>
      readState('p', inputs, new URLSearchParams({ 'p.word': 'x'.repeat(letters) }));
    expect(read(200)).toEqual({ state: { word: 'x'.repeat(200) }, strays: [] });
    expect(read(201)).toEqual({ state: {}, strays: ['p.word'] });
  });

  it('leaves out what is no input, and parts the cells of a row, gaps too', () => {
    const state = {
      word: 'a',
      stray: 'b',
      toString: 'c',
      pieces: [{ count: '2' }, { length: '8 in' }, { length: '1|2', count: '|' }, {}],
    } as State;
    const written = writeState('p', inputs, state);
    expect(written).toEqual([
      ['p.pieces', '|2'],
      ['p.pieces', '8 in'],
      ['p.pieces', '1/2|/'],
      ['p.pieces', ''],
      ['p.word', 'a'],
    ]);
    expect(readState('p', inputs, new URLSearchParams(written)).state).toEqual({
      word: 'a',
      pieces: [{ count: '2' }, { length: '8 in' }, { length: '1/2', count: '/' }, {}],
    });
  });

  it('names what it cannot use and keeps the rest', () => {
    const long = 'x'.repeat(300);
    const parameters = new URLSearchParams(
      `p.size=3&p.sise=4&p.size=5&other.size=6&p.word=${long}&p.pieces=1|2|3&p.__proto__=1`,
    );
    expect(readState('p', inputs, parameters)).toEqual({
      state: { size: '3' },
      strays: ['p.sise', 'p.size', 'p.word', 'p.pieces', 'p.__proto__'],
    });
  });
});
