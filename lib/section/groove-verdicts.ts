/**
 * A measured groove section against the drawing and the code, item by item. A section of a groove shows
 * one place of it: the codes judge a welder's groove by eye and by bends or a radiograph.
 */
import type { Citation, Printed } from '../calculation.ts';
import * as limits from '../tables/macro-limits.ts';
import * as visual from '../tables/visual-limits.ts';
import { convert, type System } from '../units.ts';
import type { Measured } from './measured.ts';
import type { MeasuredGroove } from './picture-groove.ts';
import {
  atMost,
  judged,
  never,
  notBelowZero,
  nothing,
  type SectionItem,
  type Seen,
  stated,
  text,
} from './section-item.ts';

export interface GrooveCase {
  code: limits.GrooveCode;
  /** Whose printed figures are used. */
  system: System;
  /** The weld's size on the drawing; none where it goes through the whole plate. */
  size: Printed | undefined;
  onStrip: boolean;
  found: MeasuredGroove;
  cracks: Seen;
  unfused: Seen;
}

/** One item for each thing the code asks of a section, in the order of the page. */
export function grooveItems(it: GrooveCase): SectionItem[] {
  const cite = it.code === 'AWS D1.1' ? limits.grooveMacro : visual.sectionNine;
  const seen = [
    never('Cracks', it.cracks, cite),
    never('Places not fused, between passes or to the plates', it.unfused, cite),
  ];
  const walls = [
    fusedTo('edge of plate A', it, it.found.sidewallA, cite),
    fusedTo('edge of plate B', it, it.found.sidewallB, cite),
    ...(it.onStrip ? [fusedTo('backing strip', it, it.found.rootHeight, cite)] : []),
  ];
  const through = it.size ? [] : [throughTo('A', it, cite), throughTo('B', it, cite)];
  if (it.code === 'ASME IX, welder’s test') return [...through, ...walls, ...seen];
  return [...through, ...walls, ...structuralItems(it), ...seen];
}

/** All of the edge that was marked lies inside the melted metal. */
const fusedTo = (
  what: string,
  { system }: GrooveCase,
  reading: Measured | undefined,
  cite: Citation,
): SectionItem => ({
  item: `Fused to the ${what}`,
  verdict: reading ? judged(reading, 0, 'at least') : 'not judged',
  reading: reading ? text(reading, system) : nothing,
  limit: 'all of it, with no gap anywhere',
  cite,
});

/** No picture shows a gap of nothing: what is smaller than the give or take counts as none seen. */
function throughTo(plate: 'A' | 'B', { found, system }: GrooveCase, cite: Citation): SectionItem {
  const gap = found[`unfused${plate}`];
  return {
    item: `Fused through to the back of plate ${plate}`,
    verdict: !gap ? 'not judged' : gap.value > gap.uncertainty ? 'fail' : 'pass',
    reading: gap ? `${text(notBelowZero(gap), system)} not fused` : nothing,
    limit: 'all the way; a gap smaller than the give or take cannot be seen here',
    cite,
  };
}

function structuralItems(it: GrooveCase): SectionItem[] {
  const { capHeight, rootHeight, rootHollow, undercutA, undercutB } = it.found;
  const undercut = [undercutA, undercutB]
    .filter((one) => one !== undefined)
    .toSorted((a, b) => b.value - a.value)[0];
  const most = (item: string, reading: Measured | undefined, { at, cite }: visual.Limit) =>
    atMost(it, item, reading && notBelowZero(reading), at, cite);
  return [
    thickEnough(it),
    most('Height of the cap', capHeight, visual.reinforcementTest),
    most('Undercut', undercut, visual.undercut.test),
    ...(it.onStrip
      ? []
      : [
          most('Root concavity', rootHollow, visual.rootConcavity),
          most('Melt-through', rootHeight, visual.meltThrough),
        ]),
  ];
}

/** The size of the drawing without cap and root bead; or all that is there, against the plate. */
function thickEnough({ size, found, system, onStrip }: GrooveCase): SectionItem {
  const { throat, wholeThickness, thickness } = found;
  if (size) {
    const needed = convert(size.value, size.system === 'us' ? 'in' : 'mm', 'mm');
    return {
      item: 'Weld size',
      verdict: throat ? judged(throat, needed, 'at least') : 'not judged',
      reading: throat ? text(throat, system) : nothing,
      limit: `at least the drawing’s size, ${stated(size)}`,
      cite: limits.grooveMacro,
    };
  }
  const whole = onStrip ? throat : wholeThickness;
  // The two are measured from the same marks; taking them as independent makes the doubt larger.
  const over = whole &&
    thickness && {
      value: whole.value - thickness.value,
      uncertainty: Math.hypot(whole.uncertainty, thickness.uncertainty),
    };
  return {
    item: 'As thick as the plate everywhere',
    verdict: !over ? 'not judged' : over.value + over.uncertainty < 0 ? 'fail' : 'pass',
    reading: whole ? text(whole, system) : nothing,
    limit: thickness
      ? `the plate, ${text(thickness, system)}; thinner by less than the give or take cannot be seen here`
      : 'the plate: mark both faces of it',
    cite: visual.testClause,
  };
}
