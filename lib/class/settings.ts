/**
 * What an instructor sets for a whole class plan, in the order of the form. The examples are the
 * standard values: what is counted with until something else is typed.
 */
import type { ChoiceInput, Inputs, QuantityInput } from '../calculation.ts';

const count = (label: string, example: string, max: number, obtain: string) =>
  ({
    label,
    symbol: 'n',
    unit: '1',
    whole: true,
    limits: { min: 1, max, why: 'the plan is for one class' },
    example,
    obtain,
  }) as const satisfies QuantityInput;

const clock = (label: string, example: string, obtain: string) =>
  ({
    label,
    symbol: 't',
    unit: 'h',
    limits: { min: 0, max: 36, why: 'a time of day; past midnight count on: 1:00 is 25:00' },
    example,
    obtain,
  }) as const satisfies QuantityInput;

const minutes = (label: string, example: string, obtain: string, max = 600) =>
  ({
    label,
    symbol: 't',
    unit: 'min',
    limits: { min: 0, max, why: 'longer than that is an evening of its own' },
    example,
    obtain,
  }) as const satisfies QuantityInput;

const share = (label: string, example: string, obtain: string) =>
  ({
    label,
    symbol: 's',
    unit: 'percent',
    limits: { min: 0, max: 300, why: 'more than that is another order' },
    example,
    obtain,
  }) as const satisfies QuantityInput;

const size = (
  label: string,
  example: { us: string; metric: string },
  limits: { min: number; max: number; why: string },
  obtain: string,
) =>
  ({
    label,
    symbol: 'l',
    unit: 'in',
    limits,
    example,
    obtain,
  }) as const satisfies QuantityInput;

const stockLimits = { min: 1, max: 1200, why: 'no yard sells longer ones' };

/** The class and its evenings. */
export const termSettings = {
  learners: count('Learners', '16', 1000, 'All who are in the class.'),
  booths: count('Booths', '14', 1000, 'Those with a machine that works.'),
  evenings: count('Evenings in the term', '24', 400, 'Without holidays.'),
  perWeek: count('Evenings a week', '2', 14, 'The plan is printed week by week.'),
  start: clock('The evening starts at', '18:00', 'When the class comes in.'),
  end: clock('It ends at', '21:30', 'When the class goes home.'),
  setUp: minutes('Minutes before the first arc', '15', 'Briefing, walk-round, setting up.'),
  clearing: minutes('Minutes to clear at the end', '30', 'Sweeping, scrap, stubs, tools, lights.'),
  lockUp: clock('The building is locked at', '22:00', 'Who stays till then keeps the fire watch.'),
  watch: minutes(
    'Fire watch after the last arc',
    '60',
    'A full hour in newer practice; half an hour is the federal floor.',
  ),
  repeats: share('Repeats', '50', 'How many attempts are made again: 50 adds one to every two.'),
} as const satisfies Inputs;

/** Bars and pipe, and what saw and grinder take of them. */
export const metalSettings = {
  barLength: size(
    'Length of a bar',
    { us: '240', metric: '6000' },
    stockLimits,
    'Supplier’s list.',
  ),
  pipeLength: size(
    'Length of a pipe',
    { us: '252', metric: '6000' },
    stockLimits,
    'Supplier’s list.',
  ),
  kerf: size(
    'Width of the cut',
    { us: '1/16', metric: '1.6' },
    { min: 0, max: 1, why: 'no shop saw cuts wider' },
    'Band saw {1/16 in}, abrasive wheel or plasma {1/8 in}.',
  ),
  trim: size(
    'Trimmed off each bar',
    { us: '1/2', metric: '12' },
    { min: 0, max: 24, why: 'more than that is a piece of its own' },
    'A bent, sheared or painted end, its cut included.',
  ),
  facing: size(
    'Added to each ring',
    { us: '1/8', metric: '3' },
    { min: 0, max: 2, why: 'more than that is another ring' },
    'For facing the ends.',
  ),
  ringLoss: size(
    'Lost from a ring when it is beveled again',
    { us: '1/2', metric: '12' },
    { min: 0, max: 12, why: 'no more is left of a ring' },
    'The cut through the weld and the new bevel, {3/8 in} to {1/2 in}; 0 where rings serve once. Rings cut into bend straps do not come back.',
  ),
  ringLeast: size(
    'Shortest ring that is welded',
    { us: '3', metric: '75' },
    { min: 0.5, max: 24, why: 'a shorter one cannot be held' },
    'Shorter rings get too hot and give no bend specimens.',
  ),
  spareMetal: share('Spare pieces', '5', 'For wrong cuts.'),
} as const satisfies Inputs;

/** How often a padding plate serves. */
export const sides = ['both sides', 'one side'] as const;
/** Whether padding plates are turned over for a second attempt. */
export const plateSides = {
  label: 'Padding plates are used on',
  choices: sides,
  example: 'both sides',
  obtain: 'The second attempt goes on the back of the first.',
} as const satisfies ChoiceInput;

/** Spare electrodes, by the stage of the course: common practice, no source. */
export const rodSettings = {
  spareEarly: share('Spare electrodes, first beads', '40', 'Stuck electrodes, long stubs.'),
  spareMiddle: share('Spare electrodes, flat and horizontal', '25', 'Fewer sticks by now.'),
  spareLate: share('Spare electrodes, after that', '15', 'Steady hands.'),
} as const satisfies Inputs;

/** Work at the bench. */
export const workSettings = {
  grooveMinutes: minutes('Minutes to bevel a groove coupon', '30', 'Both plates, scale off.'),
  pipeMinutes: minutes('Minutes to bevel a pipe joint', '60', 'Cut out, bevel, face both ends.'),
  otherHours: {
    label: 'Other bench hours in the term',
    symbol: 'h',
    unit: 'h',
    limits: { min: 0, max: 5000, why: 'more than a year of work' },
    example: '0',
    obtain: 'A helper, the instructor, a weekday; beside the hours of those without a booth.',
  },
} as const satisfies Inputs;

/** All of them, in the order of the form. */
export const settings = {
  ...termSettings,
  ...metalSettings,
  plateSides,
  ...rodSettings,
  ...workSettings,
} as const satisfies Inputs;
export type SettingName = keyof typeof settings;

/** What is set for one exercise of the plan. Empty fields take the exercise's or the class's own. */
export const turnFields = {
  attempts: {
    label: 'Attempts',
    symbol: 'a',
    unit: '1',
    limits: { min: 0, max: 100, why: 'nobody does one exercise oftener' },
    example: '1',
    obtain: 'Of each learner, before repeats.',
  },
  learners: {
    label: 'Learners',
    symbol: 'n',
    unit: '1',
    whole: true,
    limits: { min: 0, max: 1000, why: 'the plan is for one class' },
    example: '16',
    obtain: 'Empty: all of them.',
  },
  minutes: {
    label: 'Minutes',
    symbol: 't',
    unit: 'min',
    limits: { min: 0, max: 6000, why: 'longer than that is a project' },
    example: '60',
    obtain: 'For one attempt.',
  },
  repeats: share('Repeats', '50', 'Empty: as the class.'),
  week: {
    label: 'Week',
    symbol: 'w',
    unit: '1',
    whole: true,
    limits: { min: 1, max: 400, why: 'a week of the term' },
    example: '1',
    obtain: 'Empty: as soon as there is room.',
  },
} as const satisfies Inputs;
export type TurnField = keyof typeof turnFields;
