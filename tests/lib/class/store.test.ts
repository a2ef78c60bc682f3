/** What a small class needs beside metal and electrodes, counted by hand; wear is custom, no source. */
import { describe, expect, it } from 'vitest';
import type { ClassExercise, RodLot } from '../../../lib/class/class-exercise.ts';
import { gradingLoad } from '../../../lib/class/grading-load.ts';
import { rodMass } from '../../../lib/class/rod-mass.ts';
import { rotationOf } from '../../../lib/class/rotation.ts';
import { type SettingName, settings, turnFields } from '../../../lib/class/settings.ts';
import type { Supply, Term } from '../../../lib/class/term.ts';
import { storeOf } from '../../../lib/class/tools.ts';
import type { Turn } from '../../../lib/class/turns.ts';

const rod = (kind: string, each = 0.25): RodLot => ({ kind, each, count: 1 });
const turn = (rods: RodLot[], more: Partial<ClassExercise & Turn> = {}): Turn => ({
  learners: 4,
  attempts: 1,
  minutes: 60,
  repeats: 0,
  ...more,
  exercise: {
    slug: 'x',
    title: 'X',
    lesson: 1,
    stage: 'middle',
    station: 'booth',
    minutes: 60,
    coupon: [],
    work: 'other',
    ...(more.bends && { bends: true }),
    attempts: 1,
    rods,
  },
});
const e7018 = turn([rod('E7018 {1/8 in}')]);
const e6010 = turn([rod('E6010 {1/8 in}')]);

interface Asks {
  turns?: Turn[];
  booths?: number;
  learners?: number;
  hours?: number;
  cuts?: number;
}
const store = ({ turns = [e7018], booths = 5, learners = 8, hours = 0, cuts = 0 }: Asks) => {
  const supply = { boothHours: hours, weeks: [] as number[] } as Supply;
  return storeOf(turns, { booths, learners } as Term, supply, [], cuts, 10);
};
const tools = (asks: Asks) =>
  Object.fromEntries(store(asks).tools.map(({ tool, count }) => [tool, count]));

describe('tools', () => {
  it('are one for each who welds at once, and what wears out beside them', () => {
    // 250 booth hours: two brushes of 100 h and ten cover plates of 25 h; 801 cuts: two blades of 400.
    expect(tools({ hours: 250, cuts: 801 })).toEqual({
      'Chipping hammer': 5,
      'Wire brush': 7,
      'Clear cover plate': 18,
      'Stub bin, metal': 5,
      'Quiver with a lid': 5,
      'Saw blade': 3,
    });
    expect(tools({ booths: 8, learners: 5 })).toEqual({
      'Chipping hammer': 5,
      'Wire brush': 5,
      'Clear cover plate': 5,
      'Stub bin, metal': 5,
      'Quiver with a lid': 5,
    });
  });

  it.each([
    [99.9, 5, 11],
    [100, 6, 12],
    [124.9, 6, 12],
    [125, 6, 13],
  ])(
    'wear by whole lives: after %d h there are %d brushes and %d plates',
    (hours, brush, plate) => {
      expect(tools({ hours })).toMatchObject({ 'Wire brush': brush, 'Clear cover plate': plate });
    },
  );

  it.each([
    [0, undefined],
    [1, 1],
    [399, 1],
    [400, 2],
  ])('hold, for %d cuts, %s blades', (cuts, blades) => {
    expect(tools({ cuts })['Saw blade']).toBe(blades);
  });

  it('hold a quiver where a covering must stay dry: the last digit is 5, 6 or 8', () => {
    const quivers = (...kinds: string[]) =>
      tools({ turns: [turn(kinds.map((kind) => rod(kind)))] })['Quiver with a lid'];
    for (const dry of ['E7015', 'E7016', 'E7018', 'E7028', 'E7048', 'E6018', 'E7018-1 {1/8 in}'])
      expect(quivers(dry)).toBe(5);
    for (const other of ['E6010', 'E6011', 'E6012', 'E6013', 'E7014', 'E7024', 'E6027', 'XE7018'])
      expect(quivers(other)).toBeUndefined();
    expect(quivers('E6010', 'E7018')).toBe(5);
    expect(tools({ turns: [e6010, e7018] })['Quiver with a lid']).toBe(5);
  });

  it('hold a jig where somebody bends straps', () => {
    const jigs = (...turns: Turn[]) => tools({ turns })['Bend jig with a guard'];
    expect(jigs(e7018, turn([rod('E7018')], { bends: true }))).toBe(1);
    expect(jigs(e7018, turn([rod('E7018')], { bends: true, attempts: 0 }))).toBeUndefined();
    expect(jigs(e7018)).toBeUndefined();
  });

  it('are none where no electrode burns', () => {
    expect(tools({ turns: [], hours: 250 })).toEqual({});
    expect(tools({ turns: [turn([])], hours: 250 })).toEqual({});
    expect(tools({ turns: [turn([rod('E7018')], { attempts: 0 })], hours: 250 })).toEqual({});
  });
});

it('the oven holds the fullest evening of the term in whole cans, and low hydrogen alone', () => {
  const turns = [turn([rod('E7018 a', 0.25), rod('E7018 b', 0.1), rod('E6010', 1)])];
  const pounds = (weeks: [kind: string, count: number][][], evenings: number[]) =>
    storeOf(
      turns,
      { booths: 5, learners: 8 } as Term,
      { boothHours: 0, weeks: evenings } as Supply,
      weeks.map((rods) => ({ rods: rods.map(([kind, count]) => ({ kind, count })) })),
      0,
      10,
    ).ovenPounds;
  const full: [string, number][] = [
    ['E7018 a', 100],
    ['E7018 b', 30],
    ['E6010', 999],
  ];
  // Half of 100 weighs 12.5 lb, two cans; half of 30 weighs 1.5 lb, one can.
  expect(pounds([full], [2])).toBe(30);
  expect(pounds([[['E7018 a', 10]], full], [1, 2])).toBe(30);
  // In one evening 25 lb and 3 lb.
  expect(pounds([full], [1])).toBe(40);
  // 80 rods of 1/4 lb in two evenings are one can, full.
  expect(pounds([[['E7018 a', 80]]], [2])).toBe(10);
  // What finds no week is no evening.
  expect(pounds([[['E7018 a', 4]], [['E7018 a', 9999]]], [2])).toBe(10);
  expect(pounds([], [])).toBe(0);
});

it('grading counts the last attempt of each learner, its repeats, and only what was welded', () => {
  const welded = turn([rod('E7018')], { attempts: 3, repeats: 0.5 });
  const sawn = turn([], { attempts: 3 });
  // Four learners: 18 attempts, six to grade, at five to eight minutes.
  expect(gradingLoad([welded, sawn])).toEqual({
    attempts: 18,
    graded: 6,
    from: 0.5,
    to: 0.8,
  });
  expect(gradingLoad([turn([rod('E7018')], { attempts: 0 })])).toMatchObject({ graded: 0 });
});

describe('a whole electrode', () => {
  it('weighs its core over the share of it: 0.70 of E7018, 0.88 of E6010 and E6011 (from memory)', () => {
    // A wire of 1/8 in and 14 in at 0.2836 lb/in³: π/4 · (1/8)² · 14 · 0.2836 = 0.048724 lb.
    expect(rodMass('E7018', 1 / 8)).toBeCloseTo(0.048724 / 0.7, 5);
    for (const cellulose of ['E6010', 'E6011'])
      expect(rodMass(cellulose, 1 / 8)).toBeCloseTo(0.048724 / 0.88, 5);
    expect(rodMass('E7018', 1 / 8, 28)).toBeCloseTo((2 * 0.048724) / 0.7, 5);
    expect(rodMass('E7018', 1 / 4)).toBeCloseTo((4 * 0.048724) / 0.7, 4);
  });
});

describe('rounds of an evening', () => {
  it('are none without a booth, without an arc, or with a booth for everybody', () => {
    const rounds = (learners: number, booths: number, arcHours: number) =>
      rotationOf({ learners, booths }, { firstArc: 18, arcHours });
    expect(rounds(4, 0, 2)).toBeUndefined();
    expect(rounds(4, 2, 0)).toBeUndefined();
    expect(rounds(4, 4, 2)).toBeUndefined();
    expect(rounds(5, 4, 2)).toMatchObject({ beside: 1 });
  });

  it('follow one another without a gap: two hours are three rounds of forty minutes', () => {
    const rotation = rotationOf({ learners: 6, booths: 4 }, { firstArc: 18, arcHours: 2 });
    const clock = rotation?.rounds.map(({ from, to }) =>
      [from, to].map((it) => Math.round(it * 60)),
    );
    expect(clock).toEqual([
      [1080, 1120],
      [1120, 1160],
      [1160, 1200],
    ]);
    // Six learners, two beside: everybody in three rounds.
    expect(rotation?.evenings).toEqual([
      [
        [1, 2],
        [3, 4],
        [5, 6],
      ],
    ]);
    expect(
      rotationOf({ learners: 6, booths: 4 }, { firstArc: 18, arcHours: 0.1 })?.rounds,
    ).toHaveLength(1);
  });
});

/** Name, standard value (metric where it differs), least and most: custom of shops, no source. */
const custom: [SettingName, string | [string, string], number, number][] = [
  ['learners', '16', 1, 1000],
  ['booths', '14', 1, 1000],
  ['evenings', '24', 1, 400],
  ['perWeek', '2', 1, 14],
  ['start', '18:00', 0, 36],
  ['end', '21:30', 0, 36],
  ['setUp', '15', 0, 600],
  ['clearing', '30', 0, 600],
  ['lockUp', '22:00', 0, 36],
  // A full hour, as newer editions of NFPA 51B ask (from memory).
  ['watch', '60', 0, 600],
  ['repeats', '50', 0, 300],
  // Bars of 20 ft or 6 m, pipe of 21 ft or 6 m.
  ['barLength', ['240', '6000'], 1, 1200],
  ['pipeLength', ['252', '6000'], 1, 1200],
  ['kerf', ['1/16', '1.6'], 0, 1],
  ['trim', ['1/2', '12'], 0, 24],
  ['facing', ['1/8', '3'], 0, 2],
  ['ringLoss', ['1/2', '12'], 0, 12],
  ['ringLeast', ['3', '75'], 0.5, 24],
  ['spareMetal', '5', 0, 300],
  ['spareEarly', '40', 0, 300],
  ['spareMiddle', '25', 0, 300],
  ['spareLate', '15', 0, 300],
  ['grooveMinutes', '30', 0, 600],
  ['pipeMinutes', '60', 0, 600],
  ['otherHours', '0', 0, 5000],
];

describe('what is set for a class', () => {
  it.each(custom)(
    '%s is %j until something else is typed, from %d to %d',
    (name, example, min, max) => {
      const setting = settings[name];
      expect(setting.example).toEqual(
        typeof example === 'string' ? example : { us: example[0], metric: example[1] },
      );
      expect('limits' in setting && setting.limits).toMatchObject({ min, max });
    },
  );
  it('is all of it in that list, but for the sides of a plate', () => {
    expect([...custom.map(([name]) => name), 'plateSides'].sort()).toEqual(
      Object.keys(settings).sort(),
    );
    expect(settings.plateSides).toMatchObject({
      choices: ['both sides', 'one side'],
      example: 'both sides',
    });
  });
  it('is for one exercise up to a hundred attempts, a thousand learners, a hundred hours, a week of the term', () => {
    const limits = Object.entries(turnFields).map(([name, { limits: it }]) => [
      name,
      it.min,
      it.max,
    ]);
    expect(limits).toEqual([
      ['attempts', 0, 100],
      ['learners', 0, 1000],
      ['minutes', 0, 6000],
      ['repeats', 0, 300],
      ['week', 1, 400],
    ]);
  });
});
