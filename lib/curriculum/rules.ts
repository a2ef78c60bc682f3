/** The rules of a sound sequence, and a course held to them. */
import type { Curriculum } from './curriculum.ts';
import type { Finding, Name, Rule } from './rule.ts';
import { calculationsAsListed } from './rules/as-listed.ts';
import { exerciseWithAcceptance } from './rules/exercise-with-acceptance.ts';
import { hazardsPrecedeExposure } from './rules/hazards-precede-exposure.ts';
import { hoursAddUp } from './rules/hours-add-up.ts';
import { introducedOnce } from './rules/introduced-once.ts';
import { needsComeFirst } from './rules/needs-come-first.ts';
import { noLaterSkill } from './rules/no-later-skill.ts';
import {
  noOrphanCalculation,
  noOrphanExercise,
  noOrphanSource,
  noOrphanTerm,
} from './rules/no-orphans.ts';
import { numbersAreChecked } from './rules/numbers-are-checked.ts';
import { oneStepAtATime } from './rules/one-step-at-a-time.ts';
import { practisedAndAssessed } from './rules/practised-and-assessed.ts';
import { reachableInOrder } from './rules/reachable-in-order.ts';
import { safetyGateFirst } from './rules/safety-gate-first.ts';
import { spacedBeforeTest } from './rules/spaced-before-test.ts';
import { trainedBeforeTested } from './rules/trained-before-tested.ts';

/** In the order of the audit. */
export const rules: readonly Rule[] = [
  reachableInOrder,
  safetyGateFirst,
  hazardsPrecedeExposure,
  needsComeFirst,
  introducedOnce,
  practisedAndAssessed,
  noLaterSkill,
  oneStepAtATime,
  trainedBeforeTested,
  spacedBeforeTest,
  exerciseWithAcceptance,
  hoursAddUp,
  numbersAreChecked,
  calculationsAsListed,
  noOrphanExercise,
  noOrphanCalculation,
  noOrphanSource,
  noOrphanTerm,
];

export interface Verdict {
  rule: Rule;
  /** Every place that was looked at. */
  findings: Finding[];
  broken: Finding[];
}

/**
 * Every rule, with all the places where it was looked for. What is found is named by its id, or as
 * `name` says.
 */
export const audit = (course: Curriculum, name: Name = (_, id) => id): Verdict[] =>
  rules.map((rule) => {
    const findings = rule.look(course, name);
    return { rule, findings, broken: findings.filter(({ holds }) => !holds) };
  });
