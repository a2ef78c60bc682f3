/**
 * AISC 360 J2.2b: the largest leg along the edge of a lapped part. Up to the edge of thin parts, a
 * little back from the edge of others. Figures as printed in both systems.
 */
import type { Citation, Printed, Reason } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { convert } from '../units.ts';

const cite: Citation = { source: 'aisc-360', at: 'J2.2b (2005 text)', known: 'read' };
/** From this thickness on the edge has to stay. */
const thickFrom: PrintedFigure = { us: 1 / 4, metric: 6 };
const setBack: PrintedFigure = { us: 1 / 16, metric: 2 };

/** @param part thickness of the part along whose edge the weld runs */
export function largestLegAtEdge(part: Printed): { leg: PrintedFigure; because: Reason } {
  const { us, metric } = inBothSystems(part);
  if (part.value < thickFrom[part.system])
    return {
      leg: { us, metric },
      because: {
        kind: 'rule',
        text: 'Along an edge under {1/4 in|6 mm} thick the leg may reach the edge.',
        cite,
      },
    };
  return {
    leg: { us: us - setBack.us, metric: metric - setBack.metric },
    because: {
      kind: 'rule',
      text: 'Along an edge {1/4 in|6 mm} thick or more the leg stops {1/16 in|2 mm} short, so that the edge is still there to measure from. A drawing may ask for it built out.',
      cite,
    },
  };
}

/** A size that somebody typed, converted into the other system as well. */
export const inBothSystems = ({ value, system }: Printed): PrintedFigure =>
  system === 'us'
    ? { us: value, metric: convert(value, 'in', 'mm') }
    : { us: convert(value, 'mm', 'in'), metric: value };
