/** The demo shop, read from its file; the plans that a class can start from. */
import { readFileSync } from 'node:fs';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import type { ClassExercise } from '../lib/class/class-exercise.ts';
import { planned } from '../lib/class/read-plan.ts';
import { settings } from '../lib/class/settings.ts';
import { machineCurrents, machineSettings } from '../lib/files/class-board.ts';
import type { ClassPlan } from '../lib/files/class-plan.ts';
import { readingOrder } from './reading-order.ts';
import { keysOf } from './schemas/words.ts';

const lessons = readingOrder.flatMap((unit): readonly string[] => unit.lessons);
const lesson = z.enum(lessons as [string, ...string[]]);

const shopSchema = z.strictObject({
  shop: z.string().describe('Name of the invented shop.'),
  settings: z
    .partialRecord(z.enum(keysOf(settings)), z.string())
    .describe('What its class plan sets, as typed; the standard values stand for the rest.'),
  once: z.array(z.string()).describe('Exercises that nobody repeats.'),
  terms: z
    .array(
      z.strictObject({
        name: z.string(),
        from: lesson.describe('Its first lesson.'),
        to: lesson.describe('Its last lesson.'),
      }),
    )
    .describe('The terms of the course, one after another.'),
  learners: z
    .array(
      z.strictObject({
        learner: z.string().describe('A number or initials.'),
        at: z.string().describe('The exercise.'),
        waiting: z.array(z.string()).default([]).describe('Days of coupons not graded yet.'),
        repeat: z.array(z.string()).default([]).describe('Days of coupons to be repeated.'),
        away: z.array(z.string()).default([]).describe('Evenings missed.'),
        tested: z.string().default('').describe('Day of a test passed.'),
        here: z.boolean().default(true),
      }),
    )
    .describe('One evening of its class board.'),
  gate: z.string().describe('Day on which the class signed the safety gate.'),
  machines: z.array(
    z.strictObject({
      booths: z.array(z.number().int().positive()),
      name: z.string().describe('What is written on the machines.'),
      most: z.string().describe('Highest current on the plate.'),
      largest: z.string().describe('Largest electrode that it can burn all evening.'),
      current: z.enum(machineCurrents).describe('What comes out.'),
      setBy: z.enum(machineSettings).describe('How the current is set.'),
      offsets: z
        .record(z.string(), z.string())
        .default({})
        .describe('By booth: clamp meter less dial, where somebody has measured.'),
    }),
  ),
});

export const readDemo = (file = 'content/demo/tollgate-lane.yaml') =>
  shopSchema.parse(parse(readFileSync(file, 'utf8')));

export interface DemoPlan {
  plan: ClassPlan;
  /** Places of its first and last lesson in the course, from 1. */
  from: number;
  to: number;
}

/** A class plan for each term of the demo shop. */
export function demoPlans(exercises: readonly ClassExercise[]): DemoPlan[] {
  const shop = readDemo();
  const empty = Object.fromEntries(Object.keys(settings).map((name) => [name, '']));
  return shop.terms.map(({ name, from, to }) => {
    const place = (slug: string) => lessons.indexOf(slug) + 1;
    const term = exercises.filter((it) => it.lesson >= place(from) && it.lesson <= place(to));
    return {
      from: place(from),
      to: place(to),
      plan: {
        name: `${shop.shop}: ${name.toLowerCase()}`,
        units: 'us',
        settings: { ...empty, ...shop.settings } as ClassPlan['settings'],
        exercises: term.map(({ slug }) => ({
          ...planned(slug),
          repeats: shop.once.includes(slug) ? '0' : '',
        })),
        prices: {},
      },
    };
  });
}
