/** The rules by which the log counts, each with its source: on the page, on the sheet, in a card. */
import type { Reason } from '../calculation.ts';
import { holdRule, rebakeRule, tagRule } from '../exposure/oven-rules.ts';
import { exposureOf } from '../tables/exposure-d1.1.ts';
import { durationText } from '../text/clock-text.ts';

const plain = exposureOf('E7018', 'none');
const resistant = exposureOf('E7018', 'R');

/** In the order of the page. */
export const countedBy: readonly Reason[] = [
  {
    text: `${plain.row}: at most ${durationText(plain.hours)} in open air.`,
    cite: plain.cite,
  },
  {
    text: `${resistant.row}: at most ${durationText(resistant.hours)} in open air. The R is printed after the classification.`,
    cite: resistant.cite,
  },
  holdRule,
  rebakeRule,
  tagRule,
  {
    text: 'E6010, E6011 and the other electrodes that are not low-hydrogen: nothing is counted. The first two need some moisture in their covering, so no oven: they stay in their can, dry, at room temperature.',
    cite: { source: 'common-practice', known: 'practice' },
  },
];
