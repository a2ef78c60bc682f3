/** From marks of a groove to readings and lines: the sample's truth, and a sentence for all that is missing. */
import { describe, expect, it } from 'vitest';
import { grooveLines } from '../../../lib/section/groove-lines.ts';
import { grooveReadings } from '../../../lib/section/groove-readings.ts';
import { planeMap } from '../../../lib/section/picture-plane.ts';
import { grooveMarks, placedGroove } from '../../../lib/section/placed-groove.ts';
import type { TypedScale } from '../../../lib/section/placed-plane.ts';
import {
  groovePicture,
  grooveSampleLength,
  grooveSampleMarks,
  grooveTruth,
} from '../../../lib/section/sample-groove.ts';
import { noMarks, type Placed } from '../../../lib/section/section-marks.ts';
import { areaOf } from '../geometry/polygon-oracle.ts';

const typed: TypedScale = {
  by: 'distance',
  length: grooveSampleLength,
  width: undefined,
  height: undefined,
  lengthError: 0.1,
};
const sample: Placed = { ...noMarks, ...grooveSampleMarks };
const missing = (placed: Placed, more: Partial<TypedScale> = {}) => {
  const found = placedGroove(placed, { ...typed, ...more }, 2, false);
  return 'missing' in found ? found.missing : undefined;
};

describe('the sample groove', () => {
  const measured = placedGroove(sample, typed, 2, false);
  if ('missing' in measured) throw new Error(measured.missing);

  it('is read as what is true of it', () => {
    for (const [name, truth] of Object.entries(grooveTruth)) {
      const { value, uncertainty } = measured.found[name as keyof typeof grooveTruth] ?? {};
      expect(Math.abs((value ?? 0) - truth), name).toBeLessThan(0.25 * (uncertainty ?? 0));
    }
  });

  it('has the areas that a polygon library finds in its outlines', () => {
    const { toeA, toeB, rootA, rootB, cap, rootBead, fusionA, fusionB, edgeA, edgeB } =
      groovePicture;
    const square = 40 ** 2;
    const sideA = [toeA, ...fusionA, rootA];
    const sideB = [toeB, ...fusionB, rootB];
    const weld = areaOf([...sideA.toReversed(), ...cap, ...sideB, ...rootBead.toReversed()]);
    const melted =
      areaOf([...sideA, ...edgeA.toReversed()]) + areaOf([...sideB, ...edgeB.toReversed()]);
    expect(weld / square).toBeCloseTo(grooveTruth.weldArea, 1);
    expect(melted / square).toBeCloseTo(grooveTruth.meltedArea, 1);
  });

  it('is drawn with its throat as long as it was measured, and its labels by name', () => {
    const marks = grooveMarks(sample, false);
    const drawn = marks && grooveLines(marks, planeMap(measured.plane));
    const [from, to] = drawn?.lines.find(({ as }) => as === 'throat')?.points ?? [];
    const length = Math.hypot((to?.[0] ?? 0) - (from?.[0] ?? 0), (to?.[1] ?? 0) - (from?.[1] ?? 0));
    expect(length / 40).toBeCloseTo(grooveTruth.throat, 6);
    const names = grooveReadings(measured.found, false).map(({ name }) => name as string);
    for (const { reading } of drawn?.labels ?? []) expect(names).toContain(reading);
  });

  it('shows nothing below none, but a gap at an edge stays a gap', () => {
    const shown = (name: string, value: number, onStrip: boolean) =>
      grooveReadings({ ...measured.found, [name]: { value, uncertainty: 0.1 } }, onStrip).find(
        (one) => one.name === name,
      )?.value;
    expect(shown('underfill', -1.3, false)).toBe(0);
    expect(shown('rootHeight', -0.4, false)).toBe(0);
    expect(shown('rootHeight', -0.4, true)).toBe(-0.4);
    expect(shown('sidewallA', -0.4, false)).toBe(-0.4);
  });
});

describe('placedGroove', () => {
  it.each([
    ['no scale', { ...sample, ends: [] }, {}, /known distance/],
    ['no length', sample, { length: undefined }, /distance between/],
    ['no root', { ...sample, rootB: [] }, {}, /where the fusion ends/],
    ['toes in one place', { ...sample, toeB: sample.toeA }, {}, /too close/],
    [
      'plates that change sides',
      { ...sample, rootA: sample.rootB, rootB: sample.rootA },
      {},
      /changed sides/,
    ],
  ] as [string, Placed, Partial<TypedScale>, RegExp][])(
    'says what is missing: %s',
    (_, placed, more, text) => {
      expect(missing(placed, more)).toMatch(text);
    },
  );

  it('counts a curve only from its least number of marks', () => {
    const few = {
      ...sample,
      face: sample.face.slice(0, 2),
      fusionA: sample.fusionA.slice(0, 2),
      edgeB: sample.edgeB.slice(0, 1),
    };
    const found = placedGroove(few, typed, 2, false);
    const names = 'found' in found ? Object.keys(found.found) : [];
    for (const name of ['capHeight', 'throat', 'weldArea', 'sidewallA', 'sidewallB'])
      expect(names).not.toContain(name);
    expect(names).toContain('rootHeight');
  });
});

describe('a mark of a groove that cannot be measured', () => {
  const bare: Placed = {
    ...noMarks,
    ends: grooveSampleMarks.ends,
    toeA: [[0, 0]],
    toeB: [[400, 0]],
    rootA: [[100, 300]],
    rootB: [[300, 300]],
  };
  it('is missing while one of four is', () => {
    expect(missing(bare)).toBeUndefined();
    for (const name of ['toeA', 'toeB', 'rootA', 'rootB'] as const) {
      expect(grooveMarks({ ...bare, [name]: [] }, false)).toBeUndefined();
      expect(missing({ ...bare, [name]: [] })).toMatch(/^Mark both toes of the cap/);
    }
  });
  it('stands no nearer than four marking errors: toe to toe, and toe to root on either plate', () => {
    for (const apart of [7.9, 8]) {
      expect(missing({ ...bare, toeB: [[apart, 0]], rootB: [[apart, 300]] })).toMatch(/too close/);
      expect(missing({ ...bare, rootA: [[0, apart]] })).toMatch(/too close/);
      expect(missing({ ...bare, rootB: [[400, apart]] })).toMatch(/too close/);
    }
    expect(missing({ ...bare, rootA: [[0, 8.1]] })).toBeUndefined();
  });
  it('may close the root to a point, but not change sides', () => {
    expect(missing({ ...bare, rootA: [[200, 300]], rootB: [[200, 300]] })).toBeUndefined();
    expect(missing({ ...bare, rootA: [[201, 300]], rootB: [[200, 300]] })).toMatch(/changed sides/);
  });
  it('lies this side of the horizon of a tilted picture', () => {
    const tilted: Placed = {
      ...bare,
      corners: [
        [400, 400],
        [600, 400],
        [700, 600],
        [300, 600],
      ],
      toeA: [[350, 420]],
      toeB: [[650, 420]],
      rootA: [[450, 580]],
      rootB: [[550, 580]],
    };
    const by = { by: 'rectangle', width: 25, height: 20 } as const;
    expect(missing(tilted, by)).toBeUndefined();
    expect(missing({ ...tilted, toeA: [[350, 150]], toeB: [[650, 150]] }, by)).toMatch(
      /no place for it/,
    );
  });
  it('makes a weld with an area, not one that lies in a line', () => {
    const on = (y: number, ...all: number[]) => all.map((x): [number, number] => [x, y]);
    const flat: Placed = {
      ...bare,
      rootA: [[100, 0]],
      rootB: [[300, 0]],
      face: on(0, 100, 200, 300),
      rootBead: on(0, 200),
      fusionA: on(0, 25, 50, 75),
      fusionB: on(0, 375, 350, 325),
    };
    expect(missing(flat)).toMatch(/make no weld/);
    expect(missing({ ...flat, face: on(-20, 100, 200, 300) })).toBeUndefined();
    // Without the cap nothing is said of an area.
    expect(missing({ ...flat, face: [] })).toBeUndefined();
  });
});
