/** Every limit of an etched section at its printed value, just under and just over it. */
import { describe, expect, it } from 'vitest';
import { type FilletCase, filletItems } from '../../../lib/section/fillet-verdicts.ts';
import type { Measured } from '../../../lib/section/measured.ts';
import type { MeasuredFillet } from '../../../lib/section/measured-fillet.ts';
import { sources } from '../../../lib/sources.ts';
import { macroCodes } from '../../../lib/tables/macro-limits.ts';

const exact = (value: number): Measured => ({ value, uncertainty: 0 });
const inch = 25.4;

/** A sound 5/16 in fillet, flat, fused 1 mm beyond the root. */
const sound: MeasuredFillet = {
  legA: exact(9),
  legB: exact(9),
  angle: exact(90),
  faceWidth: exact(12.7),
  throat: exact(6.4),
  rise: exact(0),
  hollow: exact(0),
  penetration: exact(1),
  undercutA: exact(0),
};
const base: FilletCase = {
  code: 'AWS D1.1',
  system: 'us',
  size: { value: 5 / 16, system: 'us' },
  found: sound,
  cracks: 'none seen',
  unfused: 'none seen',
};
const verdict = (item: string, found: Partial<MeasuredFillet>, more: Partial<FilletCase> = {}) =>
  filletItems({ ...base, ...more, found: { ...sound, ...found } }).find((one) => one.item === item)
    ?.verdict;

const hair = 1e-4;
/** A limit not to be passed upward, or not downward. */
function stands(
  item: string,
  name: keyof MeasuredFillet,
  limit: number,
  way: 'at most' | 'at least',
  more: Partial<FilletCase> & { found?: MeasuredFillet } = {},
) {
  const { found = {} as Partial<MeasuredFillet>, ...rest } = more;
  const at = (value: number) => verdict(item, { ...found, [name]: exact(value) }, rest);
  expect(at(limit)).toBe('pass');
  expect(at(limit - hair)).toBe(way === 'at most' ? 'pass' : 'fail');
  expect(at(limit + hair)).toBe(way === 'at most' ? 'fail' : 'pass');
}

const asme = { code: 'ASME IX, welder’s test' } as const;

describe('filletItems, at, just under and just over each limit', () => {
  it('fused to the root, not necessarily beyond (AWS D1.1, fillet macroetch)', () => {
    stands('Fused to the root', 'penetration', 0, 'at least');
  });

  it('both legs at least the size, in either system', () => {
    stands('Leg on plate A', 'legA', (5 / 16) * inch, 'at least');
    stands('Leg on plate B', 'legB', 8, 'at least', { size: { value: 8, system: 'metric' } });
  });

  it('a throat of at least 0.707 of the size between 80° and 100° (AWS D1.1:2010, clause 2.4)', () => {
    stands('Throat that counts', 'throat', ((5 / 16) * inch) / Math.SQRT2, 'at least');
    const at = (angle: number) => verdict('Throat that counts', { angle: exact(angle) });
    expect([80, 100, 79.999, 100.001].map(at)).toEqual([
      'pass',
      'pass',
      'does not apply',
      'does not apply',
    ]);
  });

  it.each([
    ['us', 5 / 16, 1 / 16],
    ['us', 5 / 16 + 1e-6, 1 / 8],
    ['us', 1 - 1e-6, 1 / 8],
    ['us', 1, 3 / 16],
    ['metric', 8, 2],
    ['metric', 8.001, 3],
    ['metric', 24.999, 3],
    ['metric', 25, 5],
  ] as const)(
    'convexity by the width of the face, %s %f (AWS D1.1, from memory)',
    (system, width, most) => {
      const mm = system === 'us' ? inch : 1;
      stands('Convexity', 'rise', most * mm, 'at most', {
        system,
        found: { ...sound, faceWidth: exact(width * mm) },
      });
    },
  );

  it('undercut of at most 1/32 in or 1 mm (AWS D1.1, from memory), the deeper one', () => {
    stands('Undercut', 'undercutA', inch / 32, 'at most');
    stands('Undercut', 'undercutB', 1, 'at most', { system: 'metric' });
  });

  it('ASME IX QW-184 (from memory): root, legs, convexity, concavity', () => {
    for (const [system, root, curve, legs] of [
      ['us', inch / 32, inch / 16, inch / 8],
      ['metric', 0.8, 1.5, 3],
    ] as const) {
      stands('Unfused at the root', 'penetration', -root, 'at least', { ...asme, system });
      stands('Convexity', 'rise', curve, 'at most', { ...asme, system });
      stands('Concavity', 'hollow', curve, 'at most', { ...asme, system });
      stands('Difference of the legs', 'legB', sound.legA.value + legs, 'at most', {
        ...asme,
        system,
      });
    }
  });

  it('cracks and places not fused, under every code', () => {
    for (const code of macroCodes)
      for (const [item, name] of [
        ['Cracks', 'cracks'],
        ['Places not fused, between passes or to the plates', 'unfused'],
      ] as const) {
        expect(verdict(item, {}, { code, [name]: 'seen' })).toBe('fail');
        expect(verdict(item, {}, { code, [name]: 'none seen' })).toBe('pass');
        expect(verdict(item, {}, { code, [name]: undefined })).toBe('not judged');
      }
  });
});

describe('filletItems', () => {
  it('passes when all that may be true passes, fails when none does, and says so between', () => {
    const leg = (value: number) => verdict('Leg on plate A', { legA: { value, uncertainty: 0.5 } });
    const size = (5 / 16) * inch;
    expect(leg(size + 0.5)).toBe('pass');
    expect(leg(size + 0.499)).toBe('too close to tell');
    expect(leg(size - 0.499)).toBe('too close to tell');
    expect(leg(size - 0.501)).toBe('fail');
  });

  it('asks both limits of convexity where the width may be on either side', () => {
    const width = { value: 8, uncertainty: 0.3 };
    const at = (rise: number) =>
      verdict('Convexity', { faceWidth: width, rise: exact(rise) }, { system: 'metric' });
    expect([2, 2.5, 3.1].map(at)).toEqual(['pass', 'too close to tell', 'fail']);
  });

  it('judges no hollow face as convex, however deep it is', () => {
    const found = { ...sound, rise: { value: -2, uncertainty: 0.2 } };
    const item = filletItems({ ...base, found }).find((one) => one.item === 'Convexity');
    expect(item).toMatchObject({ verdict: 'pass', reading: 'none' });
  });

  it('judges nothing that was not marked', () => {
    const { legA, legB, angle, faceWidth, throat } = sound;
    const items = filletItems({ ...base, found: { legA, legB, angle, faceWidth, throat } });
    const unmarked = items
      .filter(({ verdict: one }) => one === 'not judged')
      .map(({ item }) => item);
    expect(unmarked).toEqual(['Fused to the root', 'Convexity', 'Undercut']);
  });

  it('leaves the size out when the drawing gives none, and names a source for every item', () => {
    for (const code of macroCodes) {
      const items = filletItems({ ...base, code, size: undefined });
      expect(items.map(({ item }) => item).join()).not.toMatch(/Leg on|Throat/);
      for (const { cite } of items) expect(sources[cite.source]).toBeDefined();
    }
  });
});
