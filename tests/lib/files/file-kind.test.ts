import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { type FileKind, readFile, writeFile } from '../../../lib/files/file-kind.ts';

const coupon = v.object({ mark: v.string(), passes: v.pipe(v.number(), v.integer()) });
const kind: FileKind<v.InferOutput<typeof coupon>[]> = {
  name: 'coupons',
  title: 'a list of coupons',
  version: 2,
  schema: v.array(coupon),
  upgrade: { 1: (data) => (data as { mark: string }[]).map((it) => ({ ...it, passes: 1 })) },
};
const problemOf = (text: string) => {
  const read = readFile(kind, text);
  return read.ok ? undefined : read.problem;
};

describe('a kept file', () => {
  it('comes back as it was written', () => {
    const coupons = fc.array(
      fc.record({ mark: fc.string({ unit: 'binary' }), passes: fc.integer() }),
    );
    fc.assert(
      fc.property(coupons, (data) => {
        expect(readFile(kind, writeFile(kind, data, '2026-03-02'))).toEqual({
          ok: true,
          data,
          saved: '2026-03-02',
        });
      }),
    );
  });
  it('is brought up from an earlier version', () => {
    expect(readFile(kind, '{"sixteenths":"coupons","version":1,"data":[{"mark":"A"}]}')).toEqual({
      ok: true,
      data: [{ mark: 'A', passes: 1 }],
      saved: '',
    });
  });
  it('is brought up over a version that changed nothing', () => {
    const later = { ...kind, version: 3 };
    expect(
      readFile(later, '{"sixteenths":"coupons","version":1,"data":[{"mark":"A"}]}'),
    ).toMatchObject({
      ok: true,
      data: [{ mark: 'A', passes: 1 }],
    });
    expect(
      readFile(later, '{"sixteenths":"coupons","version":2,"data":[{"mark":"A","passes":2}]}'),
    ).toMatchObject({ ok: true });
  });
  it('of an earlier version is read as it is where nothing leads up from it', () => {
    const { upgrade: _, ...plain } = kind;
    const text = '{"sixteenths":"coupons","version":1,"data":[{"mark":"A","passes":3}]}';
    expect(readFile(plain, text)).toMatchObject({ ok: true, data: [{ mark: 'A', passes: 3 }] });
  });
  it('may begin with the mark that some editors set before a text', () => {
    expect(readFile(kind, `\uFEFF${writeFile(kind, [], '')}`)).toMatchObject({
      ok: true,
      data: [],
    });
  });
  it.each([0, 1.5, -1, '2', null])('of version %j is none of this site', (version) => {
    expect(problemOf(JSON.stringify({ sixteenths: 'coupons', version, data: [] }))).toBe(
      'This file was not saved by this site',
    );
  });
  it('goes on with the message of its shape in small letters', () => {
    const strict = { ...kind, schema: v.pipe(v.array(coupon), v.maxLength(0, 'More than None')) };
    const read = readFile(strict, writeFile(kind, [{ mark: 'A', passes: 1 }], ''));
    expect(read).toEqual({ ok: false, problem: 'This file does not fit: more than None' });
  });
  it.each([
    ['cut short', '{"sixteenths":"coupons","version":2,"da', /damaged/],
    ['of another program', '{"version":2,"data":[]}', /not saved by this site/],
    ['a bare list', '[]', /not saved by this site/],
    ['of another kind', '{"sixteenths":"plan","version":2,"data":[]}', /not a list of coupons/],
    ['newer', '{"sixteenths":"coupons","version":3,"data":[]}', /newer version/],
    ['old and damaged', '{"sixteenths":"coupons","version":1,"data":{}}', /older version/],
    ['of a wrong shape', '{"sixteenths":"coupons","version":2,"data":[{"mark":1}]}', /"0\.mark"/],
  ])('is refused with a sentence when it is %s', (_, text, said) => {
    expect(problemOf(text)).toMatch(said);
  });
  it('that is too large for anything kept here is not even read', () => {
    expect(problemOf(' '.repeat(8_000_001))).toBe('This file is too large to be a list of coupons');
    expect(problemOf(' '.repeat(8_000_000))).toMatch(/damaged/);
  });
  it('of a later version is marked, so that nothing is written over it', () => {
    const newer = readFile(kind, '{"sixteenths":"coupons","version":3,"data":[]}');
    expect(newer).toMatchObject({ ok: false, newer: true });
    expect(readFile(kind, '[]')).not.toHaveProperty('newer');
  });
  it('says what does not fit and where, in a sentence', () => {
    const text = (data: unknown) => JSON.stringify({ sixteenths: 'coupons', version: 2, data });
    expect(problemOf(text([{ mark: 'A', passes: 1.5 }]))).toMatch(
      /^This file does not fit at "0\.passes": [a-z]/,
    );
    expect(problemOf(text('none'))).toMatch(/^This file does not fit: [a-z]/);
  });
  it('never throws, whatever the text', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => void readFile(kind, text)));
  });
});
