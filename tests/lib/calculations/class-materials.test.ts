import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import classMaterials from '../../../lib/calculations/class-materials.ts';

const row = fc.record({
  piece: fc.constantFrom('flat bar', 'backing bar', 'pipe'),
  thickness: fc.constantFrom('1/4 in', '3/8 in'),
  width: fc.constantFrom('3 in', '4 in'),
  nps: fc.constantFrom('2', '6'),
  schedule: fc.constant('80'),
  length: fc.integer({ min: 2, max: 40 }).map((it) => `${it} in`),
  pieces: fc.integer({ min: 0, max: 4 }).map(String),
  classification: fc.constantFrom('E7018', 'E6010'),
  diameter: fc.constantFrom('1/8 in', '3/32 in'),
  electrodes: fc.integer({ min: 0, max: 30 }).map(String),
  minutes: fc.integer({ min: 0, max: 300 }).map(String),
  attempts: fc.integer({ min: 0, max: 5 }).map(String),
});

const asked = fc.record({
  exercises: fc.array(row, { minLength: 1, maxLength: 12 }),
  learners: fc.integer({ min: 1, max: 40 }).map(String),
  spare: fc.integer({ min: 0, max: 50 }).map(String),
});

function needs(typed: Parameters<typeof answer>[1]) {
  const answered = answer(classMaterials, typed);
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.results as {
    bars: { section: string; pieces: number; bars: number; mass: number; lowerBound: number }[];
    electrodes: { kind: string; pieces: number; mass: number; cans: number }[];
    boothHours: number;
    hoursEach: number;
    steelMass: number;
    electrodeMass: number;
  };
}

test('weighs the bars that are bought, and a pipe by the rule of its standard', () => {
  const one = { pieces: '1', electrodes: '0', minutes: '60', attempts: '1' };
  const bars = (row: Record<string, string>) =>
    needs({ exercises: [{ ...one, ...row }], learners: '1', spare: '0', kerf: '0 in' }).bars[0];
  // 3/8 × 4 × 240 in at 0.2836 lb/in³.
  expect(
    bars({ piece: 'flat bar', thickness: '3/8 in', width: '4 in', length: '8 in' }),
  ).toMatchObject({ bars: 1, mass: expect.closeTo(0.375 * 4 * 240 * 0.2836, 6) });
  // ASME B36.10: 10.68 × (6.625 − 0.432) × 0.432 = 28.57 lb/ft, over 21 ft.
  const pipe = bars({ piece: 'pipe', nps: '6', schedule: '80', length: '4 in' });
  expect(pipe?.mass).toBeCloseTo(28.57 * 21, -1);
});

test('adds up a small class as the teacher does by hand', () => {
  const row = {
    piece: 'flat bar',
    thickness: '3/8 in',
    width: '4 in',
    minutes: '90',
    attempts: '2',
  };
  const found = needs({
    exercises: [
      {
        ...row,
        length: '8 in',
        pieces: '2',
        classification: 'E7018',
        diameter: '1/8 in',
        electrodes: '5',
      },
      {
        ...row,
        length: '6 in',
        pieces: '1',
        classification: 'E7018',
        diameter: '1/8 in',
        electrodes: '1',
      },
      {
        piece: 'pipe',
        nps: '2',
        schedule: '80',
        length: '4 in',
        pieces: '1',
        minutes: '60',
        attempts: '1',
      },
    ],
    learners: '4',
    attempts: '1.5',
    spare: '25 percent',
    barLength: '120 in',
    pipeLength: '120 in',
    kerf: '0 in',
    trim: '0 in',
  });
  // 4 learners, 2 attempts, half as many again: 12 of the first two, 6 of the third.
  // 24 pieces of 8 in and 12 of 6 in are 264 in, three bars of 120; 6 of 4 in, one length of pipe.
  expect(found.bars).toMatchObject([
    { section: 'flat bar {3/8 in} × {4 in}', pieces: 36, bars: 3, lowerBound: 3 },
    { section: 'pipe NPS 2 Sch 80', pieces: 6, bars: 1, lowerBound: 1 },
  ]);
  // 12·5 + 12·1 = 72 electrodes and a quarter more are 90.
  expect(found.electrodes).toMatchObject([{ kind: 'E7018 {1/8 in}', pieces: 90, cans: 1 }]);
  // Core π/4·0.125²·14 in at 0.2836 lb/in³, 0.30 of the whole being coating.
  const each = ((Math.PI / 4) * 0.125 ** 2 * 14 * 0.2836) / 0.7;
  expect(found.electrodeMass).toBeCloseTo(90 * each, 6);
  expect(found.electrodes[0]?.mass).toBeCloseTo(90 * each, 6);
  expect(found.steelMass).toBeCloseTo((found.bars[0]?.mass ?? 0) + (found.bars[1]?.mass ?? 0), 9);
  expect(found.bars[0]?.mass).toBeCloseTo(3 * 120 * 0.375 * 4 * 0.2836, 6);
  // ASME B36.10: NPS 2 schedule 80 weighs 5.03 lb a foot.
  expect(found.bars[1]?.mass).toBeCloseTo(50.3, 0);
  // 12 and 12 times an hour and a half, 6 times one hour; a fourth of it for each.
  expect([found.boothHours, found.hoursEach]).toEqual([42, 10.5]);
});

test('names the section whose piece is too long, not the one before it', () => {
  const row = { piece: 'flat bar', thickness: '3/8 in', pieces: '1' };
  const typed = {
    exercises: [
      { ...row, width: '4 in', length: '8 in' },
      { ...row, width: '3 in', length: '21 ft' },
    ],
    learners: '1',
  };
  expect(answer(classMaterials, typed)).toMatchObject({
    problems: [
      { text: 'A piece of {252 in} is longer than a trimmed bar of flat bar {3/8 in} × {3 in}' },
    ],
  });
});

test('counts by section and kind what adding row by row counts', () => {
  fc.assert(
    fc.property(asked, (typed) => {
      const found = needs(typed);
      const learners = Number(typed.learners);
      const wanted = new Map<string, number>();
      const burned = new Map<string, number>();
      let minutes = 0;
      for (const it of typed.exercises) {
        const times = learners * Number(it.attempts);
        const size =
          it.piece === 'pipe'
            ? `pipe NPS ${it.nps} Sch 80`
            : `${it.piece} {${it.thickness}} × {${it.width}}`;
        const kind = `${it.classification} {${it.diameter}}`;
        wanted.set(size, (wanted.get(size) ?? 0) + times * Number(it.pieces));
        burned.set(kind, (burned.get(kind) ?? 0) + times * Number(it.electrodes));
        minutes += times * Number(it.minutes);
      }
      const present = (map: Map<string, number>) =>
        [...map].filter(([, count]) => count > 0).sort();
      expect(found.bars.map((it): [string, number] => [it.section, it.pieces]).sort()).toEqual(
        present(wanted),
      );
      const spare = 100 + Number(typed.spare);
      expect(found.electrodes.map((it): [string, number] => [it.kind, it.pieces]).sort()).toEqual(
        present(burned).map(([kind, count]) => [kind, Math.ceil((count * spare) / 100)]),
      );
      expect(found.boothHours).toBeCloseTo(minutes / 60, 9);
      expect(found.hoursEach * learners).toBeCloseTo(minutes / 60, 9);
      for (const it of found.bars) expect(it.lowerBound).toBeLessThanOrEqual(it.bars);
      for (const it of found.electrodes) expect(it.cans * 10).toBeGreaterThanOrEqual(it.mass);
    }),
  );
});

test('a piece longer than its bar, no learner and a half-told row each get a sentence', () => {
  const bar = { piece: 'flat bar', thickness: '3/8 in', width: '4 in', pieces: '1' };
  const refused = (typed: Parameters<typeof answer>[1]) => {
    const answered = answer(classMaterials, typed);
    return answered.ok ? [] : answered.problems;
  };
  expect(refused({ exercises: [{ ...bar, length: '21 ft' }], learners: '4' })).toEqual([
    {
      field: 'exercises',
      text: 'A piece of {252 in} is longer than a trimmed bar of flat bar {3/8 in} × {4 in}',
    },
  ]);
  expect(refused({ exercises: [{ ...bar, length: '8 in' }], learners: '0' })[0]?.field).toBe(
    'learners',
  );
  expect(refused({ exercises: [bar], learners: '4' })).toEqual([
    { field: 'exercises.1.length', text: 'Length of the piece is missing' },
  ]);
  expect(refused({ exercises: [], learners: '4' })[0]?.text).toBe('Give at least one exercise');
});
