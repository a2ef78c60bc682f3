/** Every limit of an etched groove at its printed value, just under and just over it. */
import { describe, expect, it } from 'vitest';
import { type GrooveCase, grooveItems } from '../../../lib/section/groove-verdicts.ts';
import type { Measured } from '../../../lib/section/measured.ts';
import type { MeasuredGroove } from '../../../lib/section/picture-groove.ts';
import { sources } from '../../../lib/sources.ts';
import { grooveCodes } from '../../../lib/tables/macro-limits.ts';

const exact = (value: number): Measured => ({ value, uncertainty: 0 });
const inch = 25.4;

/** A sound weld through 3/8 in plate. */
const sound: MeasuredGroove = {
  capWidth: exact(14),
  rootWidth: exact(4),
  capHeight: exact(1),
  underfill: exact(-1),
  rootHeight: exact(1),
  rootHollow: exact(-1),
  thickness: exact(9.5),
  throat: exact(9.5),
  wholeThickness: exact(10.5),
  unfusedA: exact(0),
  unfusedB: exact(0),
  sidewallA: exact(1),
  sidewallB: exact(1),
  undercutA: exact(0),
};
const base: GrooveCase = {
  code: 'AWS D1.1',
  system: 'us',
  size: undefined,
  onStrip: false,
  found: sound,
  cracks: 'none seen',
  unfused: 'none seen',
};
const verdict = (item: string, found: Partial<MeasuredGroove>, more: Partial<GrooveCase> = {}) =>
  grooveItems({ ...base, ...more, found: { ...sound, ...found } }).find((one) => one.item === item)
    ?.verdict;

const hair = 1e-4;
function stands(
  item: string,
  name: keyof MeasuredGroove,
  limit: number,
  way: 'at most' | 'at least',
  more: Partial<GrooveCase> = {},
) {
  const at = (value: number) => verdict(item, { [name]: exact(value) }, more);
  expect(at(limit)).toBe('pass');
  expect(at(limit - hair)).toBe(way === 'at most' ? 'pass' : 'fail');
  expect(at(limit + hair)).toBe(way === 'at most' ? 'fail' : 'pass');
}

describe('grooveItems, at, just under and just over each limit', () => {
  it.each([
    ['Height of the cap', 'capHeight', 1 / 8, 3],
    ['Undercut', 'undercutA', 1 / 32, 1],
    ['Undercut', 'undercutB', 1 / 32, 1],
    ['Root concavity', 'rootHollow', 1 / 16, 2],
    ['Melt-through', 'rootHeight', 1 / 8, 3],
  ] as const)(
    '%s, %s: at most %f in and %f mm (AWS D1.1:2020, 6.10.1)',
    (item, name, us, metric) => {
      stands(item, name, us * inch, 'at most');
      stands(item, name, metric, 'at most', { system: 'metric' });
    },
  );

  it('fusion to both edges and into a strip, with no gap anywhere', () => {
    for (const code of grooveCodes) {
      stands('Fused to the edge of plate A', 'sidewallA', 0, 'at least', { code });
      stands('Fused to the edge of plate B', 'sidewallB', 0, 'at least', { code });
      stands('Fused to the backing strip', 'rootHeight', 0, 'at least', { code, onStrip: true });
    }
  });

  it('fused through to the back of both plates, where the drawing gives no size', () => {
    for (const code of grooveCodes)
      for (const plate of ['A', 'B'] as const)
        stands(`Fused through to the back of plate ${plate}`, `unfused${plate}`, 0, 'at most', {
          code,
        });
    expect(
      verdict('Fused through to the back of plate A', {}, { size: { value: 6, system: 'metric' } }),
    ).toBeUndefined();
  });

  it('the size on the drawing, in the throat that counts', () => {
    const item = 'Weld size';
    stands(item, 'throat', (5 / 16) * inch, 'at least', { size: { value: 5 / 16, system: 'us' } });
    stands(item, 'throat', 8, 'at least', { size: { value: 8, system: 'metric' } });
  });

  it('nowhere thinner than the plate, cap and root bead included; on a strip without them', () => {
    const item = 'As thick as the plate everywhere';
    stands(item, 'wholeThickness', 9.5, 'at least');
    stands(item, 'throat', 9.5, 'at least', { onStrip: true });
  });
});

describe('grooveItems', () => {
  it('cannot see a gap at the root smaller than the give or take, and says so', () => {
    const item = 'Fused through to the back of plate A';
    const at = (value: number) => verdict(item, { unfusedA: { value, uncertainty: 0.2 } });
    expect([-0.1, 0.1, 0.2, 0.21].map(at)).toEqual(['pass', 'pass', 'pass', 'fail']);
    const [first] = grooveItems(base);
    expect(first?.limit).toContain('cannot be seen here');
  });

  it('is too close to tell where an edge may or may not be fused', () => {
    const at = (value: number) =>
      verdict('Fused to the edge of plate A', { sidewallA: { value, uncertainty: 0.2 } });
    expect([0.2, 0.1, -0.2, -0.21].map(at)).toEqual([
      'pass',
      'too close to tell',
      'too close to tell',
      'fail',
    ]);
  });

  it('asks no root bead of a weld on a strip, and no size of ASME IX', () => {
    const items = (more: Partial<GrooveCase>) =>
      grooveItems({ ...base, ...more }).map(({ item }) => item);
    expect(items({ onStrip: true }).join()).not.toMatch(/Root concavity|Melt-through/);
    expect(items({ code: 'ASME IX, welder’s test' }).join()).not.toMatch(/Height|Undercut|thick/);
  });

  it('judges nothing that was not marked, and names a source for every item', () => {
    const { capWidth, rootWidth } = sound;
    for (const code of grooveCodes)
      for (const { verdict: one, cite, item } of grooveItems({
        ...base,
        code,
        found: { capWidth, rootWidth },
      })) {
        if (!/Cracks|Places/.test(item)) expect(one, item).toBe('not judged');
        expect(sources[cite.source]).toBeDefined();
      }
  });
});

describe('as thick as the plate', () => {
  it('is in doubt by both readings at right angles: 0.3 and 0.4 make 0.5', () => {
    const at = (value: number) =>
      verdict('As thick as the plate everywhere', {
        wholeThickness: { value, uncertainty: 0.3 },
        thickness: { value: 9.5, uncertainty: 0.4 },
      });
    expect([9.5, 9.001, 8.999].map(at)).toEqual(['pass', 'pass', 'fail']);
  });

  it('prints what was read beside each item, and a dash beside what was not', () => {
    const reading = (item: string, found: MeasuredGroove) =>
      grooveItems({ ...base, system: 'metric', found }).find((one) => one.item === item)?.reading;
    const { sidewallA: _, ...without } = sound;
    expect(reading('Fused to the edge of plate A', sound)).toBe('1.00\u00a0mm');
    expect(reading('Fused to the edge of plate A', without)).toBe('–');
    expect(reading('As thick as the plate everywhere', sound)).toBe('10.50\u00a0mm');
  });
});
