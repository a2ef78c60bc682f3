/** What lessons say of an evening at the demo shop is what its class plan counts with. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { classExercises } from '../../content/class-exercises.ts';
import { demoPlans } from '../../content/demo.ts';
import { classNeeds } from '../../lib/class/class-needs.ts';
import { readPlan } from '../../lib/class/read-plan.ts';
import { wallClock } from '../../lib/text/clock-text.ts';

const lesson = (slug: string) => readFileSync(`content/lessons/${slug}.mdx`, 'utf8');
const exercises = await classExercises();

it.each(demoPlans(exercises).map(({ plan }) => [plan.name, plan] as const))(
  '%s: first and last arc and the fire watch are those of the lessons',
  (_, plan) => {
    const { turns, choices } = readPlan(plan, exercises);
    const { supply } = classNeeds(turns, choices);
    const [, last, watched] =
      /last arc goes out at (\d+:\d+),.*?until (\d+:\d+)/.exec(lesson('booth-safety')) ?? [];
    expect(wallClock(supply.lastArc)).toBe(last);
    expect(wallClock(supply.lastArc + choices.term.watch)).toBe(watched);
    const [, opened] =
      /event: 'opened', at: '(\d+:\d+)'/.exec(lesson('low-hydrogen-electrodes')) ?? [];
    expect(wallClock(supply.firstArc)).toBe(opened);
  },
);
