/** A measured opening and angle against what a joint may have, as drawn or after fit-up. */
import type { Printed, Reason } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import {
  citeOtherWidest,
  type JointDetail,
  type JointName,
  jointDetails,
  otherWidest,
  type Stage,
} from '../tables/joint-details.ts';
import { printFraction } from '../text/inches.ts';

export const fitUpVerdicts = ['fits', 'does not fit', 'sources differ'] as const;

interface FitUp {
  joint: JointName;
  stage: Stage;
  rootOpening: Printed;
  /** Of both bevels together, in degrees. */
  includedAngle: number;
}

/** Readings at a limit, within what a rule can show. */
const hair = 1e-6;

/** The verdict, the row it comes from, and every way in which the joint misses it. */
export function judgedFitUp({ joint, stage, rootOpening, includedAngle }: FitUp): {
  verdict: (typeof fitUpVerdicts)[number];
  because: Reason[];
} {
  const detail: JointDetail = jointDetails[joint];
  const { opening, angle } = detail.may[stage];
  const { value, system } = rootOpening;
  const faults = [
    value < opening.from[system] - hair &&
      'The opening is too narrow: the electrode does not reach the root.',
    value > opening.to[system] + hair &&
      'The opening is too wide: more metal, more shrinkage, and a root that sags.',
    includedAngle < angle.from - hair && 'The groove is too steep: slag stays in the corners.',
    includedAngle > angle.to + hair &&
      'The groove is too open: more metal and more pull than the joint needs.',
  ].filter((fault) => fault !== false);
  const because: Reason[] = [
    {
      kind: 'row',
      text: `${stage === 'after fit-up' ? 'After fit-up' : 'As drawn'} this joint has an opening of ${said(opening.from)} to ${said(opening.to)} and an angle of ${angle.from}° to ${angle.to}°.`,
      cite: detail.cite,
    },
    ...faults.map((text): Reason => ({ kind: 'caution', text, cite: detail.cite })),
  ];
  if (faults.length > 0) return { verdict: 'does not fit', because };
  const isDoubted =
    joint === 'on a strip, 45°' && stage === 'after fit-up' && value > otherWidest[system] + hair;
  if (!isDoubted) return { verdict: 'fits', because };
  because.push({
    kind: 'caution',
    text: `Another quotation of the same figure ends at ${said(otherWidest)}. Your opening lies between the two: look at the edition of your contract.`,
    cite: citeOtherWidest,
  });
  return { verdict: 'sources differ', because };
}

const said = ({ us, metric }: PrintedFigure): string =>
  `{${printFraction(us, 32)} in|${metric} mm}`;
