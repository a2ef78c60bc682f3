/**
 * The run-out and pace that a fillet's sheet gives, against the leg that it asks for. Metal laid over
 * length laid, worked here and not by the library.
 *
 * Losses take what the iron powder of the covering gives, and a tenth goes into the bulge of the face:
 * common practice, no source. An electrode burns in the time that melts its core, as a log of this course
 * has it: 70 s for 1/8 in at 115 A, shorter with more current, longer with more metal (from memory).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';

const inches = (said: string): number => {
  const [above = 0, below = 1] = said.replace(' in', '').split('/').map(Number);
  return above / below;
};

/** A 14 in electrode with a 2 in stub leaves as much metal as 12 in of its core wire. */
const leaves = (diameter: number): number => (Math.PI / 4) * diameter ** 2 * 12;
const minutesToBurn = (diameter: number, amperes: number): number =>
  (70 / 60) * (115 / amperes) * (diameter / (1 / 8)) ** 2;

const fillets = readExercises().flatMap((exercise) => {
  const plan = exercise.numbers.find(({ of }) => of === 'fillet-passes')?.given;
  return plan ? [{ ...exercise, plan }] : [];
});

it('there are fillets to look at', () => {
  expect(fillets.map(({ slug }) => slug)).toEqual(
    expect.arrayContaining(['fillet-2f', 'fillet-3f-weave', 'fillet-4f', 'roof-and-corner']),
  );
});

describe.each(fillets)('$slug', ({ lesson, plan, passes = 1, numbers, grading, procedure }) => {
  const { leg = '', diameter = '', runOut = '' } = plan;

  it('has a run-out whose passes make the leg, bulge and all, within a hundredth', () => {
    const metal = passes * (leaves(inches(diameter)) / inches(runOut));
    expect(Math.sqrt((2 * metal) / 1.1) / inches(leg)).toBeCloseTo(1, 2);
  });

  it('says one leg, one electrode and one count of passes everywhere', () => {
    const forLeg = numbers.find(({ of }) => of === 'run-out-for-leg')?.given;
    expect(forLeg).toMatchObject({ leg, diameter, passes: String(passes) });
    expect(grading.find(({ item }) => item === 'size')?.amount).toBe(leg);
  });

  it('moves at the pace which that run-out asks for', () => {
    const amperes = Number.parseFloat(procedure?.current ?? '');
    const pace = inches(runOut) / minutesToBurn(inches(diameter), amperes);
    expect(pace).toBeGreaterThanOrEqual(Number.parseFloat(procedure?.speed?.from ?? ''));
    expect(pace).toBeLessThanOrEqual(Number.parseFloat(procedure?.speed?.to ?? ''));
  });

  it('has a lesson that plans its passes from no other numbers', () => {
    const text = readFileSync(`content/lessons/${lesson}.mdx`, 'utf8');
    const planned = [...text.matchAll(/<WorkedExample of="fillet-passes".*?given=\{\{(.*?)\}\}/g)];
    for (const [, given] of planned) {
      expect(given).toContain(`leg: '${leg}', diameter: '${diameter}', runOut: '${runOut}'`);
    }
  });
});
