/**
 * Readings of an etched section against shapes whose true sizes are known, a polygon library, and a
 * thousand random sections with noisy marks.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import calculation from '../../../lib/calculations/section-measure.ts';
import { type FilletMarks, readFillet } from '../../../lib/geometry/etched-fillet.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import { seeded } from '../../../lib/practice/seeded.ts';
import { measuredFillet } from '../../../lib/section/measured-fillet.ts';
import { along, mapped, placing, randomSection } from '../section/random-section.ts';

/** A square tee with legs of 300 and 400, so that toe to toe is 500 and the throat 240. */
const triangle: FilletMarks = {
  root: [0, 0],
  toeA: [400, 0],
  toeB: [0, 300],
  face: [[200, 150]],
  fusion: [],
  plateA: [],
  plateB: [],
};

const parallelTo = (share: number, away: number): Point => [
  400 - 400 * share + 0.6 * away,
  300 * share + 0.8 * away,
];

describe('readFillet', () => {
  it('reads a 3-4-5 fillet with a flat face', () => {
    const readings = readFillet(triangle);
    expect(readings).toMatchObject({ legA: 400, legB: 300, faceWidth: 500 });
    expect(readings.angle).toBeCloseTo(90, 10);
    expect(readings.throat).toBeCloseTo(240, 10);
    expect(readings.rise).toBeCloseTo(0, 10);
    expect(readings.depositArea).toBeCloseTo(60_000, 6);
  });

  it('reads the crown of a convex face, which adds nothing to the theoretical throat', () => {
    const face = [0.25, 0.5, 0.75].map((share) => parallelTo(share, 160 * share * (1 - share)));
    const readings = readFillet({ ...triangle, face });
    expect(readings.rise).toBeCloseTo(40, 6);
    expect(readings.throat).toBeCloseTo(240, 6);
    expect(readings.depositArea).toBeCloseTo(60_000 + (2 / 3) * 500 * 40, -1.5);
  });

  it('takes what a hollow face lacks from the theoretical throat', () => {
    const face = [0.25, 0.5, 0.75].map((share) => parallelTo(share, -160 * share * (1 - share)));
    const readings = readFillet({ ...triangle, face });
    expect(readings.hollow).toBeCloseTo(40, 6);
    expect(readings.throat).toBeCloseTo(200, 6);
    expect(readings.rise).toBeLessThan(0);
  });

  it('reads penetration, melted metal and dilution from a fusion line', () => {
    const fusion: Point[] = [
      [400, -50],
      [-50, -50],
      [-50, 300],
    ];
    const dense = denser([triangle.toeA, ...fusion, triangle.toeB], 40).slice(1, -1);
    const readings = readFillet({ ...triangle, fusion: dense });
    const melted = 400 * 50 + 50 * 50 + 300 * 50;
    expect(readings.penetration).toBeCloseTo(Math.hypot(50, 50), 3);
    expect((readings.meltedArea as number) / melted).toBeCloseTo(1, 2);
    expect(readings.dilution).toBeCloseTo((100 * melted) / (melted + 60_000), 1);
    expect(readings.actualThroat).toBeCloseTo(240 + 50 * 0.6 + 50 * 0.8, 3);
  });

  it('reads fusion that stops short of the root as negative', () => {
    const fusion: Point[] = [
      [300, -10],
      [100, 10],
      [30, 30],
      [10, 100],
      [-10, 200],
    ];
    expect(readFillet({ ...triangle, fusion }).penetration).toBeCloseTo(-Math.hypot(30, 30), 6);
  });

  it('measures legs along the plates where those are marked', () => {
    const marks = {
      ...triangle,
      toeB: [8, 300] as Point,
      plateB: [
        [0, 320],
        [0, 500],
      ] as Point[],
    };
    expect(readFillet(marks).legB).toBeCloseTo(300, 9);
    expect(readFillet(marks).angle).toBeCloseTo(90, 9);
  });

  it('measures to the shorter leg where the foot of the throat falls off the face', () => {
    const obtuse = { ...triangle, toeB: [-260, 150] as Point, face: [] };
    expect(readFillet(obtuse).throat).toBeLessThanOrEqual(Math.hypot(260, 150));
    const steep = { ...triangle, toeB: [500, 500] as Point, face: [] };
    expect(readFillet(steep).throat).toBeCloseTo(400, 6);
  });

  it('does not mind how the picture lies, nor from which side curves are marked', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 7, noNaN: true }), fc.boolean(), (turn, mirror) => {
        const { marks } = randomSection(seeded('turned'));
        const place = placing(turn, mirror);
        const turned = mapped(marks, place);
        const reversed = {
          ...turned,
          face: turned.face.toReversed(),
          fusion: turned.fusion.toReversed(),
        };
        const before = readFillet(marks);
        for (const again of [readFillet(turned), readFillet(reversed)])
          for (const [name, value] of Object.entries(before))
            expect(again[name as keyof typeof before], name).toBeCloseTo(value, 6);
      }),
      { numRuns: 30 },
    );
  });
});

function denser(corners: readonly Point[], parts: number): Point[] {
  return corners.flatMap((corner, i): Point[] => {
    const next = corners[i + 1];
    if (!next) return [corner];
    return Array.from({ length: parts }, (_, step) => along(corner, next, step / parts));
  });
}

type Name = keyof ReturnType<typeof randomSection>['truth'];

it('melts nothing where the fusion line lies in the weld', () => {
  const marks = (...points: [number, number][]) =>
    points.map(([x, y]) => ({ x: String(x), y: String(y) }));
  const answered = answer(calculation, {
    root: marks([200, 600]),
    toes: marks([520, 600], [200, 285]),
    face: marks([478, 545], [425, 488], [372, 434], [316, 382], [258, 333]),
    fusion: marks([470, 500], [450, 480], [430, 460], [400, 430], [380, 410]),
    scale: '0.025 mm',
  });
  expect(answered).toMatchObject({
    ok: true,
    results: { verdict: 'not fused to the root', meltedArea: 0, dilution: 0 },
  });
});

describe('measuredFillet', () => {
  it('holds the true value in at least 95 of 100 for every reading of 1000 random sections, and is not padded', () => {
    const random = seeded('a thousand sections');
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const inside: Partial<Record<Name, number>> = {};
    const offsets: Partial<Record<Name, number[]>> = {};
    for (let i = 0; i < 1000; i++) {
      const { marks, truth } = randomSection(random);
      const [markingError, scaleError] = [0.5 + 3 * random(), 0.01 * random()];
      const scale = 0.01 + 0.04 * random();
      const place = placing(7 * random(), random() < 0.5);
      const noisy = mapped(marks, (point) => {
        const [x, y] = place(point);
        return [x + markingError * normal(), y + markingError * normal()];
      });
      const found = measuredFillet(noisy, {
        scale: scale * (1 + scaleError * normal()),
        scaleError,
        markingError,
      });
      for (const name of Object.keys(truth) as Name[]) {
        const power = name.endsWith('Area') ? 2 : name === 'angle' || name === 'dilution' ? 0 : 1;
        const { value, uncertainty } = found[name] as { value: number; uncertainty: number };
        const read = name === 'rise' || name === 'hollow' ? Math.max(0, value) : value;
        const off = Math.abs(read - truth[name] * scale ** power) / uncertainty;
        inside[name] = (inside[name] ?? 0) + (off <= 1 ? 1 : 0);
        if (truth[name] !== 0) offsets[name] = [...(offsets[name] ?? []), off];
      }
    }
    for (const [name, count] of Object.entries(inside)) {
      expect(count, name).toBeGreaterThanOrEqual(950);
      const all = offsets[name as Name] ?? [];
      const mean = all.reduce((sum, off) => sum + off, 0) / all.length;
      expect(mean, `${name} is padded`).toBeGreaterThan(0.25);
    }
  }, 60_000);

  it('has no uncertainty without errors, and twice as much with twice the marking error', () => {
    const { marks } = randomSection(seeded('one'));
    const at = (markingError: number, scaleError = 0) =>
      measuredFillet(marks, { scale: 0.02, scaleError, markingError });
    for (const { uncertainty } of Object.values(at(0))) expect(uncertainty).toBe(0);
    expect(at(0.2).legA.uncertainty / at(0.1).legA.uncertainty).toBeCloseTo(2, 4);
    const { legA, angle, depositArea } = at(0, 0.01);
    expect(legA.uncertainty / legA.value).toBeCloseTo(0.0225, 9);
    expect((depositArea?.uncertainty ?? 0) / (depositArea?.value ?? 1)).toBeCloseTo(0.045, 9);
    expect(angle.uncertainty).toBe(0);
  });
});

const rows = (...points: [number, number][]) =>
  points.map(([x, y]) => ({ x: String(x), y: String(y) }));
const square = {
  root: rows([0, 0]),
  toes: rows([400, 0], [0, 400]),
  scale: '0.02 mm',
};

describe('section-measure', () => {
  const fusionThrough = (depth: number) =>
    rows([300, -20], [100, -20], [-depth, -depth], [-20, 100], [-20, 300]);
  it.each([
    ['fused to the root', fusionThrough(15)],
    ['too close to tell', fusionThrough(1)],
    ['not fused to the root', fusionThrough(-30)],
    ['fusion line not marked', undefined],
  ])('says %s', (verdict, fusion) => {
    const answered = answer(calculation, { ...square, ...(fusion && { fusion }) });
    expect(answered).toMatchObject({ ok: true, results: { verdict } });
  });

  const read = (typed: object) => {
    const exact = { scaleError: '0', markingError: '0' };
    const answered = answer(calculation, { ...square, ...exact, ...typed });
    return answered.ok ? answered.results : answered.problems[0];
  };

  it('calls fusion that just meets the root fused, where nothing is in doubt', () => {
    const fusion = rows([300, -20], [100, -20], [0, 0], [-20, 100], [-20, 300]);
    expect(read({ fusion })).toMatchObject({ verdict: 'fused to the root' });
  });

  it('reads a face as convex or hollow, and never less than flat in the other way', () => {
    // 300 and 300 lie 200/√2 beyond the line between the toes, 100 and 100 as much inside of it.
    const off = expect.closeTo((0.02 * 200) / Math.SQRT2, 9);
    expect(read({ face: rows([300, 300]) })).toMatchObject({ convexity: off, concavity: 0 });
    expect(read({ face: rows([100, 100]) })).toMatchObject({ convexity: 0, concavity: off });
  });

  it.each([
    [19.9, false],
    [20.1, true],
    [169.9, true],
    [170.1, false],
  ])('measures between plates that meet at %s°: %s', (degrees, measured) => {
    const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const found = read({ toes: rows([400, 0], [400 * x, 400 * y]) });
    expect(found).toMatchObject(measured ? { legA: 8 } : { field: 'toes' });
  });

  it.each([
    [
      'a leg of nothing along plate A',
      {
        toes: rows([0, 400], [400, 0]),
        plateA: rows([0, 0], [100, 0]),
        plateB: rows([0, 0], [100, 100]),
      },
    ],
    [
      'a leg of nothing along plate B',
      { plateB: rows([0, 0], [100, 0]), plateA: rows([0, 0], [100, 100]) },
    ],
    ['a face behind the root', { face: rows([-10, -10]) }],
  ])('finds no fillet in %s', (_, marks) => {
    expect(read(marks)).toMatchObject({
      field: 'toes',
      text: expect.stringMatching(/^These marks make no fillet/),
    });
  });

  it('takes forty marks on a line, and not one more', () => {
    const face = (count: number) =>
      rows(...Array.from({ length: count }, (_, i): [number, number] => [399 - 9 * i, 1 + 9 * i]));
    expect(read({ face: face(40) })).toMatchObject({ legA: 8 });
    expect(read({ face: face(41) })).toMatchObject({ field: 'face' });
  });

  it('reads legs alone from root and toes', () => {
    const answered = answer(calculation, square);
    expect(answered).toMatchObject({ ok: true, results: { legA: 8, legB: 8 } });
    if (answered.ok) expect(answered.results.convexity).toBeUndefined();
  });

  it('reads coordinates in millimeters too, and says how loose a mark of two units leaves them', () => {
    const marked = { ...square, toes: rows([6, 0], [0, 8]), scale: '1 mm' };
    const answered = answer(calculation, marked);
    const results = { legA: 6, legB: 8, faceWidth: 10, throat: expect.closeTo(4.8, 9) };
    expect(answered).toMatchObject({ ok: true, results });
    const said = (typed: object) => {
      const found = answer(calculation, { ...marked, ...typed });
      return (
        found.ok && found.because.some(({ text }) => text.includes('these readings are loose'))
      );
    };
    expect(said({})).toBe(true);
    expect(said({ markingError: '1.5' })).toBe(true);
    expect(said({ markingError: '1.49' })).toBe(false);
    expect(said({ scale: '0.02 mm', toes: rows([400, 0], [0, 400]) })).toBe(false);
  });

  it.each([
    [{ root: [] }, 'root'],
    [{ root: rows([0, 0], [1, 1]) }, 'root'],
    [{ toes: rows([400, 0]) }, 'toes'],
    [{ toes: rows([400, 0], [0, 400], [1, 1]) }, 'toes'],
    [{ toes: rows([400, 0], [0, 0]) }, 'toes'],
    [{ toes: rows([400, 0], [500, 10]) }, 'toes'],
    [{ toes: rows([400, 0], [0, 400]), face: rows([10, 10], [-50, -50], [20, 10]) }, 'toes'],
    [
      {
        plateA: rows([0, 0], [9, 100]),
        plateB: rows([0, 0], [-100, 18]),
        fusion: rows([300, 20], [100, 100]),
      },
      'fusion',
    ],
    [{ face: rows(...Array.from({ length: 41 }, (_, i): [number, number] => [i, i])) }, 'face'],
  ])('refuses %j', (typed, field) => {
    const answered = answer(calculation, { ...square, ...typed });
    expect(answered).toMatchObject({ ok: false, problems: [{ field }] });
  });
});
