import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv, writeCsv } from '../../lib/csv.ts';

describe('writeCsv', () => {
  it('writes RFC 4180: commas, quotes and line ends inside quotes, CRLF between rows', () => {
    expect(
      writeCsv(
        ['a', 'b'],
        [
          ['x, y', 'say "go"'],
          ['two\nlines', 2.5],
        ],
      ),
    ).toBe('\uFEFFa,b\r\n"x, y","say ""go"""\r\n"two\nlines",2.5\r\n');
  });
  it.each(['=1+1', '+1', '-1', '@here', '\t=1', '\r=1'])(
    'keeps a spreadsheet from running %s',
    (text) => {
      expect(writeCsv(['a'], [[text]])).toContain(`'${text}`);
    },
  );
  it('leaves a sign inside a text, and an apostrophe before other text, as they are', () => {
    expect(writeCsv(['a', 'b'], [['1-1', "'tis"]])).toBe("\uFEFFa,b\r\n1-1,'tis\r\n");
    expect(readCsv("a,b\r\n'tis,1'=2\r\n", ['a', 'b'])).toEqual({
      ok: true,
      rows: [{ a: "'tis", b: "1'=2" }],
    });
  });
  it('writes numbers in full and leaves missing cells empty', () => {
    expect(writeCsv(['a', 'b', 'c'], [[1 / 3, undefined, 0]])).toBe(
      '\uFEFFa,b,c\r\n0.3333333333333333,,0\r\n',
    );
  });
  it('leaves a negative number a number', () => {
    expect(writeCsv(['a'], [[-1]])).toBe('\uFEFFa\r\n-1\r\n');
  });
});

describe('readCsv', () => {
  it('reads semicolons, tabs, other cases of the names, and more columns than asked for', () => {
    expect(readCsv('Leg;Who;Note\r\n"3,5";A1;x\r\n', ['who', 'leg'])).toEqual({
      ok: true,
      rows: [{ who: 'A1', leg: '3,5' }],
    });
  });
  it('names the columns that are missing', () => {
    expect(readCsv('a,b\n1,2\n', ['a', 'c'])).toMatchObject({
      ok: false,
      problem: expect.stringContaining('"c"'),
    });
  });
  it('fills columns that may be missing only where they are there, and short rows with nothing', () => {
    expect(readCsv('a,B ,c\n 1 ,2\n,,\n3', ['a', 'b'], ['c', 'd'])).toEqual({
      ok: true,
      rows: [
        { a: '1', b: '2', c: '' },
        { a: '3', b: '', c: '' },
      ],
    });
  });
  it('parts by the mark that its first line holds most of, the comma where none does', () => {
    const rows = (text: string, ...columns: string[]) => {
      const read = readCsv(text, columns);
      return read.ok ? read.rows : read.problem;
    };
    expect(rows('a\tb;c\td\n1\t2\t3', 'a', 'b;c')).toEqual([{ a: '1', 'b;c': '2' }]);
    expect(rows('a,b;c\n1,2', 'a', 'b;c')).toEqual([{ a: '1', 'b;c': '2' }]);
    expect(rows('a\n1;2,3', 'a')).toEqual([{ a: '1;2' }]);
    expect(rows('a;b\n"1;\n2";3', 'a', 'b')).toEqual([{ a: '1;\n2', b: '3' }]);
  });
  it('says what the first line must name', () => {
    expect(readCsv('x\n1', ['a', 'b'])).toEqual({
      ok: false,
      problem: 'This table has no column "a", "b"; its first line must name a, b',
    });
  });
  it('refuses an empty text', () => {
    expect(readCsv('', ['a'])).toMatchObject({ ok: false });
  });
  it('reads back whatever was written', () => {
    const text = fc
      .string({ unit: 'binary' })
      .map((it) => it.replaceAll('\r', '').replaceAll('\uFEFF', '').trim())
      .filter((it) => it !== '' && !it.startsWith("'"));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 4 }), (rows) => {
        const read = readCsv(writeCsv(['one', 'two'], rows), ['one', 'two']);
        expect(read).toEqual({ ok: true, rows: rows.map(([one, two]) => ({ one, two })) });
      }),
    );
  });
});
