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
  it.each(['=1+1', '+1', '-1', '@here'])('keeps a spreadsheet from running %s', (text) => {
    expect(writeCsv(['a'], [[text]])).toContain(`'${text}`);
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
  it('refuses an empty text', () => {
    expect(readCsv('', ['a'])).toMatchObject({ ok: false });
  });
  it('reads back whatever was written', () => {
    const text = fc
      .string({ unit: 'binary' })
      .map((it) => it.replaceAll('\r', '').replaceAll('\uFEFF', '').trim())
      .filter((it) => it !== '' && !it.startsWith("'"));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1 }), (rows) => {
        const read = readCsv(writeCsv(['one', 'two'], rows), ['one', 'two']);
        expect(read).toEqual({ ok: true, rows: rows.map(([one, two]) => ({ one, two })) });
      }),
    );
  });
});
