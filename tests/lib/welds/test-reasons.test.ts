/**
 * What a welder's test covers, deposit by deposit, and the reasons told with it. ASME IX QW-452.1(b) and
 * QW-404.30 (read): twice a deposit, or any thickness from 1/2 in laid in three layers; QW-433 from memory.
 */
import { describe, expect, it } from 'vitest';

import { fillerReasons, positionReasons, sizeReasons } from '../../../lib/welds/test-reasons.ts';
import { depositsOf, fillerRow } from '../../../lib/welds/tested-fillers.ts';

const us = (value: number) => ({ value, system: 'us' as const });
type Laid = Parameters<typeof depositsOf>[0];
const laid = (
  classification: Laid['classification'],
  inches: number,
  part: Partial<Laid> = {},
) => ({
  classification,
  thickness: us(inches),
  layers: undefined,
  backing: 'with backing' as const,
  progression: undefined,
  ...part,
});
const open = { backing: 'without backing' } as const;
const rowsOf = (deposits: ReturnType<typeof laid>[], code: 'AWS D1.1' | 'ASME IX') => {
  const all = depositsOf({ ...laid('E7018', 1), deposits });
  return all.map((one) => fillerRow(one, all, code));
};

describe('what each filler covers', () => {
  it('is one filler through the whole coupon where no deposit is listed', () => {
    const whole = laid('E7018', 0.375);
    for (const deposits of [undefined, []])
      expect(depositsOf({ ...whole, deposits })).toEqual([{ ...whole, fNumber: 'F4' }]);
    const two = [laid('E6010', 0.125, open), laid('E7018', 0.25)];
    expect(depositsOf({ ...whole, deposits: two }).map(({ fNumber }) => fNumber)).toEqual([
      'F3',
      'F4',
    ]);
  });

  it('is twice its deposit, and with others of its group or over its own root the sum of them', () => {
    expect(rowsOf([laid('E7018', 0.375)], 'ASME IX')).toEqual([
      {
        classification: 'E7018',
        fNumber: 'F4',
        backing: 'with backing',
        progression: 'none',
        own: 0.75,
        together: 0.75,
        reach: 'twice its deposit',
        covers: 'F1, F2, F3 with backing',
      },
    ]);
    // An F3 root of 1/8 in and an F4 fill of 1/4 in: over backing F4 covers F3 too, 1/4 + 1/2 in.
    const [root, fill] = rowsOf(
      [laid('E6010', 0.125, open), laid('E7018', 0.25, { progression: 'uphill' })],
      'ASME IX',
    );
    expect(root).toMatchObject({ own: 0.25, together: 0.75, reach: 'twice its deposit' });
    expect(fill).toMatchObject({ own: 0.5, together: 0.5, progression: 'uphill' });
    expect(root?.covers).toBe('F1, F2 with backing');
    // Both deposits of one group count for each other.
    const same = rowsOf([laid('E6010', 0.125, open), laid('E6011', 0.25)], 'ASME IX');
    expect(same.map(({ together }) => together)).toEqual([0.75, 0.75]);
  });

  it('is any thickness from 1/2 in in three layers on, and any over its own root under such a fill', () => {
    const thick = laid('E7018', 0.5, { layers: 3 });
    expect(rowsOf([thick], 'ASME IX')[0]).toMatchObject({
      own: undefined,
      together: undefined,
      reach: 'any thickness',
    });
    expect(rowsOf([laid('E7018', 0.5, { layers: 2 })], 'ASME IX')[0]).toMatchObject({ own: 1 });
    expect(rowsOf([laid('E6010', 0.125, open), thick], 'ASME IX')[0]).toMatchObject({
      own: 0.25,
      together: undefined,
      reach: 'any, over its own root',
    });
  });

  it('goes by the coupon under AWS D1.1', () => {
    expect(rowsOf([laid('E7018', 0.375), laid('E7024', 0.125)], 'AWS D1.1')).toMatchObject([
      { own: undefined, together: undefined, reach: 'by the coupon', covers: 'F1, F2, F3' },
      { fNumber: 'F1', covers: 'no other group' },
    ]);
    expect(rowsOf([laid('E7024', 0.125)], 'ASME IX')[0]?.covers).toBe('no other group');
  });
});

describe('the reasons', () => {
  const cite = { source: 'aws-d1.1', at: 'row', known: 'memory' } as const;
  const texts = (all: readonly { text: string; kind?: string | undefined }[]) =>
    all.map(({ text, kind }) => `${kind ?? 'rule'}: ${text}`);
  const row = (onPipe?: string) =>
    ({ groove: [], fillet: [], cite, ...(onPipe && { onPipe }) }) as unknown as Parameters<
      typeof positionReasons
    >[3];

  it('name the row, tell where the codes part on 3G plate, and what it gives on pipe', () => {
    const said = (form: 'plate' | 'pipe', test: string, onPipe?: string) =>
      texts(positionReasons('AWS D1.1', form, test, row(onPipe)));
    expect(said('plate', '1G')).toEqual(['row: AWS D1.1, plate, 1G.']);
    expect(said('plate', '3G')).toEqual([
      'row: AWS D1.1, plate, 3G.',
      expect.stringMatching(/^rule: The codes differ here/),
    ]);
    expect(said('pipe', '3G')).toHaveLength(1);
    expect(said('plate', '4G', 'flat on pipe')[1]).toBe(
      'rule: From this plate test also flat on pipe.',
    );
  });

  it('give notes of a size row as its row, and what it leaves open as a caution from memory', () => {
    expect(sizeReasons({ notes: ['a', 'b'], cite: { ...cite, known: 'read' } })).toEqual([
      { kind: 'row', text: 'a', cite: { ...cite, known: 'read' } },
      { kind: 'row', text: 'b', cite: { ...cite, known: 'read' } },
    ]);
    expect(sizeReasons({ notes: [], cautions: ['c'], cite: { ...cite, known: 'read' } })).toEqual([
      { kind: 'caution', text: 'c', cite },
    ]);
  });

  it('say of fillers how they count, and what of an open root is not covered', () => {
    const said = (
      code: 'AWS D1.1' | 'ASME IX',
      groove: boolean,
      ...list: Parameters<typeof laid>[]
    ) =>
      fillerReasons(
        code,
        groove,
        depositsOf({ ...laid('E7018', 1), deposits: list.map((one) => laid(...one)) }),
      ).map(({ text }) => text.split(' ').slice(0, 4).join(' '));
    const rule = { 'ASME IX': 'Each filler counts for', 'AWS D1.1': 'A test with a' };
    const onlyBacking = 'Backing was used throughout,';
    const overOpen = 'A filler that lay';
    expect(said('ASME IX', true, ['E7018', 0.5])).toEqual([rule['ASME IX'], onlyBacking]);
    expect(said('AWS D1.1', true, ['E7018', 0.5])).toEqual([rule['AWS D1.1'], onlyBacking]);
    expect(said('ASME IX', false, ['E7018', 0.5])).toEqual([rule['ASME IX']]);
    expect(said('ASME IX', true, ['E6010', 0.5, open])).toEqual([rule['ASME IX']]);
    const both: Parameters<typeof laid>[] = [
      ['E6010', 0.125, open],
      ['E7018', 0.25],
    ];
    expect(said('ASME IX', true, ...both)).toEqual([rule['ASME IX'], 'E6010 as an open', overOpen]);
    expect(said('AWS D1.1', true, ...both)).toEqual([rule['AWS D1.1'], overOpen]);
    expect(said('ASME IX', false, ...both)).toEqual([rule['ASME IX'], 'E6010 as an open']);
    expect(said('ASME IX', true, ['E7018', 0.25], ['E7018', 0.25])).toEqual([
      rule['ASME IX'],
      onlyBacking,
    ]);
    expect(said('ASME IX', true, ['E6010', 0.1, open], ['E6011', 0.1, open])).toEqual([
      rule['ASME IX'],
      'E6010 as an open',
      'E6011 as an open',
    ]);
  });
});
