/**
 * A plan as typed, turned into numbers. What cannot be read is told by its field, and counted with
 * the standard value meanwhile, so that the rest of the plan stands.
 */
import type { Input } from '../calculation.ts';
import type { ClassPlan, PlannedExercise } from '../files/class-plan.ts';
import { quoted } from '../text/quoted.ts';
import type { ClassExercise } from './class-exercise.ts';
import type { ClassChoices } from './class-needs.ts';
import { readField } from './read-field.ts';
import { type SettingName, settings, type TurnField, turnFields } from './settings.ts';
import type { Turn } from './turns.ts';

export interface ReadPlan {
  turns: Turn[];
  choices: ClassChoices;
  /** Money a piece, by section, kind or disc. */
  prices: Map<string, number>;
  /** Sentences by field: `learners`, `fillet-2f.attempts`, `price.E7018 {1/8 in}`, or `exercises`. */
  problems: Map<string, string>;
}

const standard = (name: SettingName): string => {
  const { example } = settings[name];
  return typeof example === 'string' ? example : example.us;
};

/** A standard value, which can always be read. */
function readStandard(name: SettingName): number | string {
  const read = readField(settings[name], standard(name));
  if ('problem' in read) throw new TypeError(`standard value: ${read.problem}`);
  return read.value;
}

/**
 * Lengths come out in inches, times in hours, shares as fractions of one. Throws for nothing that
 * was typed.
 */
export function readPlan(plan: ClassPlan, exercises: readonly ClassExercise[]): ReadPlan {
  const problems = new Map<string, string>();
  const number = (name: SettingName) => Number(setting(name));
  const setting = (name: SettingName) => {
    const text = plan.settings[name].trim();
    const read = readField(settings[name], text || standard(name), text ? plan.units : 'us');
    if ('value' in read) return read.value;
    problems.set(name, `${read.problem}. Counted with ${standard(name)} until it can be read`);
    return readStandard(name);
  };
  const share = (name: SettingName) => number(name) / 100;
  const hours = (name: SettingName) => number(name) / 60;
  const learners = number('learners');
  const repeats = share('repeats');
  const kerf = number('kerf');
  const trim = number('trim');
  const choices: ClassChoices = {
    term: {
      learners,
      booths: number('booths'),
      evenings: number('evenings'),
      perWeek: number('perWeek'),
      start: number('start'),
      end: number('end'),
      lockUp: number('lockUp'),
      setUp: hours('setUp'),
      clearing: hours('clearing'),
      watch: hours('watch'),
    },
    metal: {
      bar: { length: number('barLength'), kerf, trim },
      pipe: { length: number('pipeLength'), kerf, trim },
      facing: number('facing'),
      ringLoss: number('ringLoss'),
      ringLeast: number('ringLeast'),
      spare: share('spareMetal'),
      bothSides: setting('plateSides') === 'both sides',
    },
    spare: { early: share('spareEarly'), middle: share('spareMiddle'), late: share('spareLate') },
    preparation: {
      grooveMinutes: number('grooveMinutes'),
      pipeMinutes: number('pipeMinutes'),
      otherHours: number('otherHours'),
    },
  };
  const turns = exercises.flatMap((exercise): Turn[] => {
    const row = plan.exercises.find((it) => it.exercise === exercise.slug);
    if (!row) return [];
    const field = <T extends number | undefined>(name: TurnField, otherwise: T): number | T => {
      const text = row[name].trim();
      if (text === '') return otherwise;
      const read = readField(turnFields[name] as Input, text, plan.units);
      if ('value' in read) return Number(read.value);
      problems.set(`${exercise.slug}.${name}`, read.problem);
      return otherwise;
    };
    const week = field('week', undefined);
    const last = Math.ceil(choices.term.evenings / choices.term.perWeek);
    if (week !== undefined && week > last)
      problems.set(`${exercise.slug}.week`, `Week must be at most ${last}: the term has no more`);
    const percent = field('repeats', undefined);
    return [
      {
        exercise,
        attempts: field('attempts', exercise.attempts),
        learners: field('learners', learners),
        minutes: field('minutes', exercise.minutes),
        repeats: percent === undefined ? repeats : percent / 100,
        ...(week !== undefined && week <= last && { week }),
      },
    ];
  });
  const known = new Set(exercises.map(({ slug }) => slug));
  const strange = plan.exercises.filter(({ exercise }) => !known.has(exercise));
  if (strange.length > 0)
    problems.set(
      'exercises',
      `This site has no exercise ${strange.map((it) => quoted(it.exercise, 40)).join(', ')}; the plan keeps it and does not count it`,
    );
  return { turns, choices, prices: pricesOf(plan, problems), problems };
}

const priceField = {
  label: 'Price',
  symbol: 'p',
  unit: '1',
  limits: { min: 0, max: 1_000_000, why: 'a price for one' },
  example: '1',
  obtain: 'Supplier’s list.',
} as const;

function pricesOf({ prices }: ClassPlan, problems: Map<string, string>): Map<string, number> {
  const read = new Map<string, number>();
  for (const [thing, text] of Object.entries(prices)) {
    if (text.trim() === '') continue;
    const price = readField(priceField, text);
    if ('value' in price) read.set(thing, Number(price.value));
    else problems.set(`price.${thing}`, price.problem);
  }
  return read;
}

/** An exercise newly put into a plan: everything as the exercise and the class have it. */
export const planned = (exercise: string): PlannedExercise => ({
  exercise,
  attempts: '',
  learners: '',
  minutes: '',
  repeats: '',
  week: '',
});
