import { describe, expect, it } from 'vitest';
import { asRows } from '../../../lib/typed/rows.ts';

const pieces = (typed: unknown) => asRows(['length', 'count'], typed);
const points = (typed: unknown) => asRows(['x', 'y'], typed);
const eight = { length: '8 in', count: '32' };
const six = { length: '6 in', count: '16' };

describe('pieces to cut', () => {
  it.each([
    ['8 in x 32; 6 in x 16'],
    ['8 in x 32, 6 in x 16'],
    ['8 in X 32\n6 in*16;'],
    ['32 × 8 in; 16 x 6 in'],
    ['8 in, 32; 6 in, 16'],
    ['[{"length":"8 in","count":"32"},{"length":"6 in","count":"16"}]'],
  ])('%j', (typed) => {
    expect(pieces(typed)).toEqual([eight, six]);
  });

  it('as rows without names, as one row, as lengths alone', () => {
    expect(pieces([['8 in', 32]])).toEqual([{ length: '8 in', count: 32 }]);
    expect(pieces({ length: 8, count: 2 })).toEqual([{ length: 8, count: 2 }]);
    expect(pieces(['8 in', 6])).toEqual([
      { length: '8 in', count: 1 },
      { length: 6, count: 1 },
    ]);
    expect(pieces('8 in; 1-1/2 in, 6"')).toEqual([
      { length: '8 in', count: 1 },
      { length: '1-1/2 in', count: 1 },
      { length: '6"', count: 1 },
    ]);
    expect(pieces(['8 in x 3'])).toEqual([{ length: '8 in', count: '3' }]);
    expect(pieces('8 x 32')).toEqual([{ length: '8', count: '32' }]);
  });

  it.each(['8 in and 6 in', '8', '', 'x', '[broken', 7])('%j stays as it was typed', (typed) => {
    expect(pieces(typed)).toBe(typed);
  });

  it('without blanks after the commas', () => {
    expect(pieces('8 in,6 in')).toEqual([
      { length: '8 in', count: 1 },
      { length: '6 in', count: 1 },
    ]);
  });

  it('two bare numbers are a row and no pair of lengths', () => {
    expect(pieces('8, 32')).toEqual([{ length: '8', count: '32' }]);
  });
});

describe('points and events', () => {
  it.each([
    [
      '0,0; 8,0',
      [
        { x: '0', y: '0' },
        { x: '8', y: '0' },
      ],
    ],
    ['0, 0', [{ x: '0', y: '0' }]],
    ['None', []],
  ])('%j', (typed, rows) => {
    expect(points(typed)).toEqual(rows);
  });

  it('as pairs, as one pair, as one point', () => {
    expect(
      points([
        [0, 0],
        [8, 0],
      ]),
    ).toEqual([
      { x: 0, y: 0 },
      { x: 8, y: 0 },
    ]);
    expect(points([0, 0])).toEqual([{ x: 0, y: 0 }]);
    expect(points({ x: 0, y: 0 })).toEqual([{ x: 0, y: 0 }]);
    expect(points('{"x":0,"y":0}')).toEqual([{ x: 0, y: 0 }]);
    expect(points([])).toEqual([]);
  });

  it.each(['none of them', 'nearly none', '3 in; 4 in'])('%j stays as it was typed', (typed) => {
    expect(points(typed)).toBe(typed);
  });

  it('nothing, with blanks around it', () => {
    expect(points(' None ')).toEqual([]);
  });

  it('of mixed kinds are left for the reader to be told of', () => {
    expect(points([[0, 0], 7])).toEqual([{ x: 0, y: 0 }, 7]);
  });

  it('with a cell too many, which is then refused by its number', () => {
    expect(points('1,2,3')).toEqual([{ x: '1', y: '2', '3': '3' }]);
  });

  it('in the order of the columns', () => {
    const columns = ['event', 'at', 'temperature'];
    expect(asRows(columns, 'out, 18:00; in oven, 21:00, 275 degF')).toEqual([
      { event: 'out', at: '18:00' },
      { event: 'in oven', at: '21:00', temperature: '275 degF' },
    ]);
    expect(asRows(columns, 'out, 18:00; nothing')).toBe('out, 18:00; nothing');
  });
});
