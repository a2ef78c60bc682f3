import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classExercises } from '../../../content/class-exercises.ts';
import { demoPlans } from '../../../content/demo.ts';
import { classNeeds } from '../../../lib/class/class-needs.ts';
import { readPlan } from '../../../lib/class/read-plan.ts';
import { rotationOf } from '../../../lib/class/rotation.ts';

const exercises = await classExercises();
const needs = demoPlans(exercises).map(({ plan }) => {
  const { turns, choices } = readPlan(plan, exercises);
  return { turns, choices, needs: classNeeds(turns, choices) };
});
const [first] = needs;
const count = (tool: string) => first?.needs.store.tools.find((it) => it.tool === tool)?.count;

describe('turns beside the booths', () => {
  it('are rounds of 41 minutes for 16 learners and 14 booths, two at a time, done in two evenings', () => {
    const rotation = rotationOf({ learners: 16, booths: 14 }, { firstArc: 18.25, arcHours: 2.75 });
    expect(rotation?.beside).toBe(2);
    expect(rotation?.rounds).toHaveLength(4);
    expect(rotation?.rounds[0]?.from).toBe(18.25);
    expect(rotation?.rounds.at(-1)?.to).toBe(21);
    expect(rotation?.evenings.flat(2)).toEqual(Array.from({ length: 16 }, (_, at) => at + 1));
  });

  it('give everybody one, as many at once as find no booth, and nobody two in one round', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 30 }),
        fc.double({ min: 0.2, max: 8, noNaN: true }),
        (learners, booths, arcHours) => {
          const rotation = rotationOf({ learners, booths }, { firstArc: 18, arcHours });
          expect(rotation === undefined).toBe(learners <= booths);
          if (!rotation) return;
          const rounds = rotation.evenings.flat();
          for (const places of rounds) {
            expect(places).toHaveLength(learners - booths);
            expect(new Set(places).size).toBe(places.length);
          }
          const turns = Array.from(
            { length: learners },
            (_, at) => rounds.filter((places) => places.includes(at + 1)).length,
          );
          expect(Math.min(...turns)).toBeGreaterThanOrEqual(1);
          expect(Math.max(...turns) - Math.min(...turns)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});

describe('what has to be ready', () => {
  it('is a hammer, a bin and a quiver for each of the 14 booths, and a cover plate a learner at least', () => {
    expect([
      count('Chipping hammer'),
      count('Stub bin, metal'),
      count('Quiver with a lid'),
    ]).toEqual([14, 14, 14]);
    expect(count('Clear cover plate')).toBeGreaterThanOrEqual(16);
    expect(count('Bend jig with a guard')).toBeUndefined();
    expect(needs[1]?.needs.store.tools.some(({ tool }) => /^Bend jig/.test(tool))).toBe(true);
  });

  it('is a saw blade, and one more for each 400 pieces', () => {
    const pieces =
      first?.needs.metal.flatMap((it) => it.pieces.map(({ count: many }) => many)) ?? [];
    const cuts = pieces.reduce((sum, many) => sum + many, 0);
    expect(cuts).toBeGreaterThan(400);
    expect(count('Saw blade')).toBe(1 + Math.floor(cuts / 400));
  });

  it('is an oven for the fullest evening, and E6010 is not counted into it', () => {
    const week = first?.needs.weeks.find(({ number }) => number === 9);
    // 1,417 electrodes of 1/8 in in two evenings, 14.35 to the pound, in cans of ten.
    const evening = Math.ceil((week?.rods[0]?.count ?? 0) / 2 / 14.35 / 10) * 10;
    expect(first?.needs.store.ovenPounds).toBe(evening);
    const roots = exercises.filter(({ slug }) => slug === 'e6010-stringers');
    const turns = roots.map((exercise) => ({
      exercise,
      learners: 16,
      attempts: 2,
      minutes: 60,
      repeats: 0,
    }));
    if (!first) throw new Error('no demo');
    expect(classNeeds(turns, first.choices).store.ovenPounds).toBe(0);
  });

  it('is an evening of grading: 16 coupons take 80 to 128 minutes', () => {
    const flat = exercises.filter(({ slug }) => slug === 'flat-bead');
    if (!first) throw new Error('no demo');
    const turns = flat.map((exercise) => ({
      exercise,
      learners: 16,
      attempts: 2,
      minutes: 90,
      repeats: 0,
    }));
    const { grading } = classNeeds(turns, first.choices);
    expect(grading).toMatchObject({ attempts: 32, graded: 16 });
    expect([grading.from * 60, grading.to * 60]).toEqual([80, 128]);
  });

  it('burns half a pound to seven tenths a learner and booth hour in the first term, as shops do (common practice)', () => {
    if (!first) throw new Error('no demo');
    const { rods, demand } = first.needs;
    const hours = demand.each * first.choices.term.learners;
    const burned = rods.reduce(
      (sum, { burned: all, pounds, pieces }) => sum + (pounds * all) / pieces,
      0,
    );
    expect(burned / hours).toBeGreaterThan(0.5);
    expect(burned / hours).toBeLessThan(0.7);
  });
});
