/** The rules for low-hydrogen electrodes in words, as reasons under an answer. */
import type { Reason } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { type Bake, ovenRules } from '../tables/exposure-d1.1.ts';

const { hold } = ovenRules;
const both = ({ us, metric }: PrintedFigure) => `{${us} degF|${metric} degC}`;

export const holdRule: Reason = {
  kind: 'rule',
  text: `Inside their time they may go back: at least ${hold.hours} h at ${both(hold.least)} or more, then the clock starts afresh. A shorter return does not stop it.`,
  cite: hold.cite,
};

/** The rule of the rebake, with the bake that these electrodes take. */
export const rebakeRuleOf = (rebake: Bake): Reason => ({
  kind: 'rule',
  text: `Past that time they may be rebaked once, at ${both(rebake.from)} to ${both(rebake.to)} for at least ${rebake.hours} h. They start in an oven at no more than half that temperature for half an hour, and the time counts once it is hot. Wet electrodes never.`,
  cite: rebake.cite,
});

export const rebakeRule = rebakeRuleOf(ovenRules.rebake);

export const tagRule: Reason = {
  kind: 'rule',
  text: 'What is past saving as low-hydrogen is tagged or banded with paint beside its print, so that none gets into a test coupon.',
  cite: { source: 'common-practice', known: 'practice' },
};
