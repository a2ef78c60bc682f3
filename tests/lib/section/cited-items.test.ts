/**
 * Which items a section is held to under each code, in order, and the clause that each is cited by: AWS
 * D1.1 macroetch clauses and ASME IX QW-183, QW-184, QW-194; which were read stands in the tables.
 */
import { describe, expect, it } from 'vitest';
import { filletItems } from '../../../lib/section/fillet-verdicts.ts';
import { grooveItems } from '../../../lib/section/groove-verdicts.ts';
import { printMeasured } from '../../../lib/section/measured-text.ts';
import type { MeasuredGroove } from '../../../lib/section/picture-groove.ts';
import { scaleBar } from '../../../lib/section/scale-bar.ts';
import { judged, notBelowZero, size, stated, text } from '../../../lib/section/section-item.ts';
import type { GrooveCode, MacroCode } from '../../../lib/tables/macro-limits.ts';

type Measured = Parameters<typeof notBelowZero>[0];
type MeasuredFillet = Parameters<typeof filletItems>[0]['found'];

const exact = (value: number, uncertainty = 0): Measured => ({ value, uncertainty });
const plain = (words: string) => words.replaceAll('\u00a0', ' ');

describe('a fillet', () => {
  const found: MeasuredFillet = {
    legA: exact(9),
    legB: exact(8.5),
    angle: exact(90),
    faceWidth: exact(12),
    throat: exact(6.2),
    rise: exact(0.5),
    hollow: exact(-0.1),
    penetration: exact(1),
    undercutA: exact(0.2),
    undercutB: exact(0.4),
  };
  const items = (code: MacroCode, part: Partial<MeasuredFillet> = {}) =>
    filletItems({
      code,
      system: 'metric',
      size: { value: 8, system: 'metric' },
      found: { ...found, ...part },
      cracks: 'none seen',
      unfused: undefined,
    });
  const sizes = ['Leg on plate A', 'Leg on plate B', 'Throat that counts'];
  const seen = ['Cracks', 'Places not fused, between passes or to the plates'];
  it.each([
    ['AWS D1.1', ['Fused to the root', ...sizes, 'Convexity', 'Undercut', ...seen], /macroetch/],
    ['ASME IX, procedure test', [...sizes, 'Difference of the legs', ...seen], /^QW-183$/],
    [
      'ASME IX, welder’s test',
      [
        ...sizes,
        'Unfused at the root',
        'Difference of the legs',
        'Convexity',
        'Concavity',
        ...seen,
      ],
      /^QW-184$/,
    ],
  ] as const)('under %s is asked its items by its clause', (code, names, clause) => {
    const all = items(code);
    expect(all.map(({ item }) => item)).toEqual(names);
    expect(all.find(({ item }) => item === 'Cracks')?.cite.at).toMatch(clause);
    for (const { item, cite } of all)
      if (item === 'Difference of the legs') expect(cite.at).toMatch(clause);
    expect(all.map(({ verdict }) => verdict)).toEqual(
      names.map((name) => (name === seen[1] ? 'not judged' : 'pass')),
    );
  });
  it('is undercut as deep as its deeper side, whichever that is', () => {
    const reading = (a?: number, b?: number) =>
      plain(
        items('AWS D1.1', {
          undercutA: a === undefined ? undefined : exact(a),
          undercutB: b === undefined ? undefined : exact(b),
        } as Partial<MeasuredFillet>).find(({ item }) => item === 'Undercut')?.reading ?? '',
      );
    expect([reading(0.2, 0.4), reading(0.4, 0.2), reading(0.3), reading(undefined, 0.3)]).toEqual([
      '0.40 mm',
      '0.40 mm',
      '0.30 mm',
      '0.30 mm',
    ]);
    expect(reading()).toBe('–');
  });
  it('is not judged where face or root were not marked', () => {
    const none = items('ASME IX, welder’s test', {
      rise: undefined,
      hollow: undefined,
      penetration: undefined,
    } as unknown as Partial<MeasuredFillet>);
    const verdicts = Object.fromEntries(none.map(({ item, verdict }) => [item, verdict]));
    expect(verdicts).toMatchObject({
      Convexity: 'not judged',
      Concavity: 'not judged',
      'Unfused at the root': 'not judged',
    });
  });
});

describe('a groove', () => {
  const found: MeasuredGroove = {
    capWidth: exact(14),
    rootWidth: exact(4),
    capHeight: exact(1),
    rootHeight: exact(1),
    rootHollow: exact(-1),
    thickness: exact(9.5),
    throat: exact(9.5),
    wholeThickness: exact(10.5),
    unfusedA: exact(0),
    unfusedB: exact(0),
    sidewallA: exact(1),
    sidewallB: exact(1),
    undercutA: exact(0.2),
    undercutB: exact(0.4),
  };
  const items = (code: GrooveCode, onStrip: boolean, part: Partial<MeasuredGroove> = {}) =>
    grooveItems({
      code,
      system: 'metric',
      size: undefined,
      onStrip,
      found: { ...found, ...part },
      cracks: 'none seen',
      unfused: 'none seen',
    });
  const through = ['A', 'B'].map((plate) => `Fused through to the back of plate ${plate}`);
  const edges = ['A', 'B'].map((plate) => `Fused to the edge of plate ${plate}`);
  const strip = 'Fused to the backing strip';
  const sized = ['As thick as the plate everywhere', 'Height of the cap', 'Undercut'];
  const root = ['Root concavity', 'Melt-through'];
  const seen = ['Cracks', 'Places not fused, between passes or to the plates'];
  it.each([
    ['AWS D1.1', false, [...through, ...edges, ...sized, ...root, ...seen]],
    ['AWS D1.1', true, [...through, ...edges, strip, ...sized, ...seen]],
    ['ASME IX, welder’s test', false, [...through, ...edges, ...seen]],
    ['ASME IX, welder’s test', true, [...through, ...edges, strip, ...seen]],
  ] as const)(
    'under %s, on a strip: %s, is asked its items by its clause',
    (code, onStrip, names) => {
      const all = items(code, onStrip);
      expect(all.map(({ item }) => item)).toEqual(names);
      for (const { item, cite } of all)
        if ([...edges, ...seen].includes(item))
          expect(cite.source).toBe(code === 'AWS D1.1' ? 'aws-d1.1' : 'asme-ix');
    },
  );
  it('is undercut as deep as its deeper side, and as thick as told only with both sizes', () => {
    const undercut = (part: Partial<MeasuredGroove>) =>
      plain(items('AWS D1.1', false, part).find(({ item }) => item === 'Undercut')?.reading ?? '');
    expect(undercut({})).toBe('0.40 mm');
    expect(undercut({ undercutA: undefined } as unknown as Partial<MeasuredGroove>)).toBe(
      '0.40 mm',
    );
    expect(undercut({ undercutB: undefined } as unknown as Partial<MeasuredGroove>)).toBe(
      '0.20 mm',
    );
    for (const name of ['thickness', 'wholeThickness'] as const)
      expect(
        items('AWS D1.1', false, { [name]: undefined } as unknown as Partial<MeasuredGroove>).find(
          ({ item }) => item === sized[0],
        )?.verdict,
      ).toBe('not judged');
  });
});

describe('sizes in words', () => {
  it('are printed in both systems, or as they were typed', () => {
    expect(size({ us: 1 / 32, metric: 0.8 })).toBe('{1/32 in|0.8 mm}');
    expect(stated({ value: 5 / 16, system: 'us' })).toBe('{5/16 in}');
    expect(stated({ value: 8, system: 'metric' })).toBe('{8 mm}');
    expect(text(exact(0), 'us')).toBe('none');
    expect(plain(text(exact(0, 0.2), 'metric'))).toBe('0.0 ± 0.2 mm');
  });
  it('without any doubt have four digits of an inch, two of a millimeter, one of the rest', () => {
    const said = (
      value: number,
      unit: Parameters<typeof printMeasured>[1],
      system: 'us' | 'metric',
    ) => plain(printMeasured(exact(value), unit, system));
    expect(said(25.4, 'mm', 'us')).toBe('1.0000 in');
    expect(said(645.16, 'mm2', 'us')).toMatch(/^1\.0000 in/);
    expect(said(3, 'mm', 'metric')).toBe('3.00 mm');
    expect(said(3, 'mm2', 'metric')).toMatch(/^3\.00 mm/);
    expect(said(3, 'percent', 'us')).toBe('3.0 %');
  });
  it('below none are none, with the doubt that reaches above it', () => {
    expect(notBelowZero(exact(-0.1, 0.3))).toEqual({
      value: 0,
      uncertainty: expect.closeTo(0.2, 12),
    });
    expect(notBelowZero(exact(-0.5, 0.3))).toEqual(exact(0));
    expect(notBelowZero(exact(0, 0.3))).toEqual(exact(0, 0.3));
    expect(judged(exact(3 + 1e-12), 3, 'at most')).toBe('pass');
    expect(judged(exact(3 - 1e-12), 3, 'at least')).toBe('pass');
    expect(judged(exact(3, 0.1), 3, 'at least')).toBe('too close to tell');
  });
});

it('a scale bar is none where the picture has no plane, or no length fits', () => {
  const identity = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ] as const;
  const picture = { width: 100, height: 50 };
  expect(scaleBar(identity, picture, [25, 10])).toEqual({
    ends: [
      [70, 4],
      [expect.closeTo(95, 9), 4],
    ],
    length: 25,
  });
  expect(scaleBar(identity, picture, [25.1, 10])?.length).toBe(10);
  expect(scaleBar(identity, picture, [25.1])).toBeUndefined();
  // The right end, or both, lie behind the camera.
  for (const tilt of [-1 / 80, -1])
    expect(
      scaleBar(
        [
          [1, 0, 0],
          [0, 1, 0],
          [tilt, 0, 1],
        ],
        picture,
        [1],
      ),
    ).toBeUndefined();
});
