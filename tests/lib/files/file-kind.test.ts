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
  it('never throws, whatever the text', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => void readFile(kind, text)));
  });
});
