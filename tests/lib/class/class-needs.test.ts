import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classExercises } from '../../../content/class-exercises.ts';
import { demoPlans } from '../../../content/demo.ts';
import { classNeeds } from '../../../lib/class/class-needs.ts';
import { planned, readPlan } from '../../../lib/class/read-plan.ts';
import { overfullWeeks, verdict } from '../../../lib/class/verdict.ts';
import type { ClassPlan } from '../../../lib/files/class-plan.ts';

const exercises = await classExercises();
const demos = demoPlans(exercises);
const first = demos[0]?.plan as ClassPlan;

const needsOf = (plan: ClassPlan) => {
  const read = readPlan(plan, exercises);
  return { ...read, needs: classNeeds(read.turns, read.choices) };
};
const withSettings = (settings: Partial<ClassPlan['settings']>): ClassPlan => ({
  ...first,
  settings: { ...first.settings, ...settings },
});
const plans = fc
  .record({
    learners: fc.integer({ min: 1, max: 40 }).map(String),
    booths: fc.integer({ min: 1, max: 20 }).map(String),
    evenings: fc.integer({ min: 1, max: 40 }).map(String),
    perWeek: fc.integer({ min: 1, max: 5 }).map(String),
    repeats: fc.integer({ min: 0, max: 120 }).map(String),
    kerf: fc.constantFrom('0', '1/16', '1/8'),
    trim: fc.constantFrom('0', '1/2', '3'),
    plateSides: fc.constantFrom('both sides', 'one side'),
    ringLoss: fc.constantFrom('0', '3/8', '1/2'),
    spareMetal: fc.constantFrom('0', '5', '20'),
  })
  .chain((settings) =>
    fc.constantFrom(...demos).map(({ plan }) => ({
      ...plan,
      settings: { ...plan.settings, ...settings },
    })),
  );
const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

describe('the demo shop', () => {
  it('has 57.75 booth hours a learner: 24 evenings of 2 h 45 min, 14 booths for 16', () => {
    const { supply } = needsOf(first).needs;
    expect([supply.firstArc, supply.lastArc]).toEqual([18.25, 21]);
    expect(supply.each).toBeCloseTo((24 * 2.75 * 14) / 16, 9);
    expect(supply.each).toBeCloseTo(57.75, 9);
  });

  it('leaves 132 hours of learners without a booth', () => {
    expect(needsOf(first).needs.supply.waiting).toBe(132);
  });

  it('asks for about 57 hours in its first term, which is lessons 1 to 17', () => {
    const [one] = demos;
    expect([one?.from, one?.to]).toEqual([1, 17]);
    expect(Math.round(needsOf(first).needs.demand.each)).toBe(57);
  });

  it('fits each of its three terms into the booths', () => {
    expect(demos).toHaveLength(3);
    for (const { plan } of demos) expect(verdict(needsOf(plan).needs).overfull).toBe(false);
  });
});

describe('hours', () => {
  it('end an hour before the building is locked, and the loss is told', () => {
    const { supply } = needsOf(withSettings({ lockUp: '21:30' })).needs;
    expect(supply.lastArc).toBe(20.5);
    expect(supply.lostToWatch).toBe(0.5);
  });

  it('that are too few make a plan too full, and what has no week stands apart', () => {
    const { needs } = needsOf(withSettings({ evenings: '20' }));
    expect(verdict(needs)).toMatchObject({
      overfull: true,
      booths: expect.stringMatching(/^Too full: 9 h a learner/),
    });
    expect(needs.weeks.at(-1)?.number).toBe(0);
    expect(needs.weeks.at(-1)?.demand).toBeCloseTo((57.125 - 48.125) * 16, 6);
  });
});

it('exercises fixed to a week can overfill it: the plan names the week and its hours', () => {
  expect(overfullWeeks(needsOf(first).needs).size).toBe(0);
  const crowded = {
    ...first,
    exercises: first.exercises.map((row) =>
      ['flat-bead', 'groove-2g'].includes(row.exercise) ? { ...row, week: '3' } : row,
    ),
  };
  const { needs } = needsOf(crowded);
  const third = needs.weeks.find(({ number }) => number === 3);
  const over = Math.round(((third?.demand ?? 0) - (third?.supply ?? 0)) * 60);
  expect(over).toBeGreaterThan(0);
  expect([...overfullWeeks(needs).keys()]).toEqual([3]);
  const said = overfullWeeks(needs).get(3) ?? '';
  const [, hours, minutes = '0'] = /^Week 3 is (\d+) h(?: (\d+) min)? too full\.$/.exec(said) ?? [];
  expect(60 * Number(hours) + Number(minutes)).toBe(over);
});

it('weeks add up to the term, in hours, pieces, attempts and electrodes', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const { needs, turns } = needsOf(plan);
      expect(sum(needs.weeks.map(({ demand }) => demand))).toBeCloseTo(needs.demand.boothHours, 6);
      for (const week of needs.weeks)
        if (week.number > 0) expect(week.demand).toBeLessThanOrEqual(week.supply + 1e-6);
      const pieces = needs.weeks.flatMap((week) => week.pieces);
      expect(sum(pieces.map(({ count }) => count))).toBe(
        sum(needs.metal.flatMap((it) => it.pieces.map(({ count }) => count))),
      );
      for (const { kind, pieces: bought } of needs.rods) {
        const issued = needs.weeks.flatMap(({ rods }) => rods.filter((it) => it.kind === kind));
        expect(sum(issued.map(({ count }) => count))).toBe(bought);
      }
      const attempts = sum(needs.weeks.flatMap((week) => week.attempts.map(({ count }) => count)));
      const learners = Number(plan.settings.learners);
      expect(attempts).toBe(
        sum(
          turns.map(({ exercise, repeats }) =>
            Math.ceil(learners * exercise.attempts * (1 + repeats) - 1e-9),
          ),
        ),
      );
    }),
    { numRuns: 60, interruptAfterTimeLimit: 20_000 },
  );
});

it('the parts of the metal add up to what was bought, and every plan holds its bound', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const { needs } = needsOf(plan);
      const { bought, ...parts } = needs.parts;
      expect(sum(Object.values(parts))).toBeCloseTo(bought, 6);
      for (const part of Object.values(parts)) expect(part).toBeGreaterThanOrEqual(0);
      for (const { plan: cut } of needs.metal)
        expect(cut?.bars).toBeGreaterThanOrEqual(cut?.lowerBound ?? 1);
    }),
    { numRuns: 60, interruptAfterTimeLimit: 20_000 },
  );
});

it('using both sides of a pad halves its plates, and a ring that loses half an inch serves three times', () => {
  const plates = (plan: ClassPlan) =>
    needsOf(plan).needs.metal.find(({ section }) => section.includes('{4 in}'))?.pieces[0]?.count;
  const only = (exercise: string, attempts: string): ClassPlan => ({
    ...first,
    exercises: [{ ...planned(exercise), attempts, repeats: '0' }],
  });
  const second = only('padding-vertical', '2');
  const spareless = (it: ClassPlan, plateSides: string): ClassPlan => ({
    ...it,
    settings: { ...it.settings, spareMetal: '0', plateSides },
  });
  expect(plates(spareless(second, 'one side'))).toBe(32);
  expect(plates(spareless(second, 'both sides'))).toBe(16);
  const pipe = only('pipe-6g-nps-6', '3');
  const rings = needsOf(spareless(pipe, 'both sides')).needs.metal[0]?.pieces[0]?.count;
  // Sixteen learners, three joints each: 48 joints from 16 pairs of rings.
  expect(rings).toBe(32);
});

it('takes what is set for an exercise before what is set for the class', () => {
  const only = (row: Partial<ReturnType<typeof planned>>) =>
    readPlan({ ...first, exercises: [{ ...planned('flat-bead'), ...row }] }, exercises).turns[0];
  const exercise = exercises.find(({ slug }) => slug === 'flat-bead');
  expect(only({})).toMatchObject({
    attempts: exercise?.attempts,
    minutes: exercise?.minutes,
    learners: 16,
    repeats: 0.5,
  });
  expect(only({})).not.toHaveProperty('week');
  expect(
    only({ attempts: '4', learners: '3', minutes: '45', repeats: '20', week: '2' }),
  ).toMatchObject({ attempts: 4, learners: 3, minutes: 45, repeats: 0.2, week: 2 });
  expect(only({ attempts: '0', repeats: '0' })).toMatchObject({ attempts: 0, repeats: 0 });
  // 24 evenings at two a week are twelve weeks.
  expect(only({ week: '12' })).toMatchObject({ week: 12 });
  expect(only({ week: '13' })).not.toHaveProperty('week');
});

it('reads prices of one, and none where the field is empty', () => {
  const prices = { 'E7018 {1/8 in}': ' 31.50 ', 'Grinding disc': '', 'Flap disc': '0' };
  expect([...readPlan({ ...first, prices }, exercises).prices]).toEqual([
    ['E7018 {1/8 in}', 31.5],
    ['Flap disc', 0],
  ]);
});

it('finds a week too full by more than a rounding, and never the weeks that there are not', () => {
  const week = (number: number, demand: number) => ({ number, demand, supply: 10 });
  const weeks = [week(1, 10), week(2, 10.0000009), week(3, 11.5), week(0, 99)];
  expect([...overfullWeeks({ weeks } as unknown as Parameters<typeof overfullWeeks>[0])]).toEqual([
    [3, 'Week 3 is 1 h 30 min too full.'],
  ]);
});

it('leaves a field of blanks to the standard value, and says what a slip is counted with', () => {
  const { problems, choices } = readPlan(withSettings({ learners: '  ', kerf: 'thin' }), exercises);
  expect(choices.term.learners).toBe(16);
  expect(choices.metal.bar.kerf).toBe(1 / 16);
  expect([...problems]).toEqual([
    ['kerf', 'Width of the cut needs a number, not “thin”. Counted with 1/16 until it can be read'],
  ]);
  const row = { ...planned('flat-bead'), attempts: ' ', minutes: 'long' };
  const read = readPlan({ ...first, exercises: [row], prices: { 'Flap disc': ' ' } }, exercises);
  const exercise = exercises.find(({ slug }) => slug === 'flat-bead');
  expect(read.turns[0]).toMatchObject({ attempts: exercise?.attempts, minutes: exercise?.minutes });
  expect([...read.problems.keys()]).toEqual(['flat-bead.minutes']);
  expect(read.prices.size).toBe(0);
});

it('names only the exercises that the site does not have', () => {
  const strange = [...first.exercises.slice(0, 2), planned('unheard-of'), planned('lost')];
  expect(readPlan({ ...first, exercises: strange }, exercises).problems.get('exercises')).toBe(
    'This site has no exercise “unheard-of”, “lost”; the plan keeps it and does not count it',
  );
  expect(readPlan(first, exercises).problems.size).toBe(0);
});

describe('what cannot be read', () => {
  it('is told by its field, and the rest stands', () => {
    const read = readPlan(
      {
        ...withSettings({ learners: '0', kerf: 'thin', evenings: '9'.repeat(60), start: '25 V' }),
        exercises: [
          ...first.exercises.map((it) => ({ ...it, attempts: '-3', week: '99' })),
          planned('unheard-of'),
        ],
        prices: { 'E7018 {1/8 in}': 'cheap' },
      },
      exercises,
    );
    expect([...read.problems.keys()]).toEqual(
      expect.arrayContaining([
        'learners',
        'kerf',
        'evenings',
        'start',
        'flat-bead.attempts',
        'flat-bead.week',
        'exercises',
        'price.E7018 {1/8 in}',
      ]),
    );
    for (const [field, text] of read.problems) expect(text, field).toMatch(/^[A-Z]/);
    const needs = classNeeds(read.turns, read.choices);
    expect(needs.demand.each).toBeGreaterThan(0);
  });

  it('names a piece that is longer than its bar and cuts the other sections', () => {
    const { needs } = needsOf(withSettings({ barLength: '7.75' }));
    const long = needs.metal.filter((it) => it.long !== undefined);
    expect(long.length).toBeGreaterThan(0);
    expect(needs.metal.some((it) => it.plan)).toBe(true);
    expect(Number.isFinite(needs.parts.bought)).toBe(true);
  });
});

it.skipIf(process.env.STRYKER_MUTATOR_WORKER)(
  'forty learners times all exercises take less than a frame of 16.7 ms',
  () => {
    const all: ClassPlan = {
      ...withSettings({ learners: '40', evenings: '90' }),
      exercises: demos.flatMap(({ plan }) => plan.exercises),
    };
    expect(all.exercises.length).toBeGreaterThanOrEqual(30);
    const times = Array.from({ length: 15 }, (_, at) => {
      const start = performance.now();
      needsOf({ ...all, settings: { ...all.settings, learners: String(26 + at) } });
      return performance.now() - start;
    });
    const [middle = 0] = times.sort((a, b) => a - b).slice(7);
    expect(middle).toBeLessThan(16.7);
  },
);
