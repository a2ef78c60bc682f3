/** A measured fillet section against the drawing and the code, item by item. */
import type { Citation, Printed } from '../calculation.ts';
import { citeConvexity, convexityLimits, faceRow } from '../tables/convexity-d1.1.ts';
import * as limits from '../tables/macro-limits.ts';
import { convert, type System } from '../units.ts';
import type { Measured } from './measured.ts';
import type { MeasuredFillet } from './measured-fillet.ts';
import { printMeasured } from './measured-text.ts';
import {
  atMost,
  judged,
  never,
  notBelowZero,
  nothing,
  own,
  type SectionItem,
  type Seen,
  size,
  stated,
  text,
} from './section-item.ts';

export interface FilletCase {
  code: limits.MacroCode;
  /** Whose printed figures are used. */
  system: System;
  /** The fillet's size on the drawing. */
  size: Printed | undefined;
  found: MeasuredFillet;
  cracks: Seen;
  unfused: Seen;
}

/** One item for each thing the code asks of a section, in the order of the page. */
export function filletItems(it: FilletCase): SectionItem[] {
  const seen = [
    never('Cracks', it.cracks, citeOf(it.code)),
    never('Places not fused, between passes or to the plates', it.unfused, citeOf(it.code)),
  ];
  if (it.code === 'AWS D1.1') return [...structuralItems(it), ...seen];
  const { legA, legB } = it.found;
  const difference: Measured = {
    value: Math.abs(legA.value - legB.value),
    uncertainty: Math.hypot(legA.uncertainty, legB.uncertainty),
  };
  const legs = atMost(
    it,
    'Difference of the legs',
    difference,
    limits.legDifference,
    citeOf(it.code),
  );
  if (it.code === 'ASME IX, procedure test') return [...sizeItems(it), legs, ...seen];
  const { rise, hollow, penetration } = it.found;
  return [
    ...sizeItems(it),
    atMost(
      it,
      'Unfused at the root',
      penetration && notBelowZero({ ...penetration, value: -penetration.value }),
      limits.rootIndication,
      limits.welderTest,
    ),
    legs,
    atMost(it, 'Convexity', rise && notBelowZero(rise), limits.faceCurve, limits.welderTest),
    atMost(it, 'Concavity', hollow && notBelowZero(hollow), limits.faceCurve, limits.welderTest),
    ...seen,
  ];
}

const citeOf = (code: limits.MacroCode): Citation =>
  code === 'AWS D1.1'
    ? limits.structuralMacro
    : code === 'ASME IX, welder’s test'
      ? limits.welderTest
      : limits.procedureTest;

function structuralItems(it: FilletCase): SectionItem[] {
  const { penetration, rise, faceWidth, undercutA, undercutB } = it.found;
  const undercut = [undercutA, undercutB]
    .filter((one) => one !== undefined)
    .reduce<Measured | undefined>(
      (worst, one) => (worst && worst.value > one.value ? worst : one),
      undefined,
    );
  return [
    {
      item: 'Fused to the root',
      verdict: penetration ? judged(penetration, 0, 'at least') : 'not judged',
      reading: penetration ? text(penetration, it.system) : nothing,
      limit: 'to the root, not necessarily beyond',
      cite: limits.fusedToRoot,
    },
    ...sizeItems(it),
    convexityItem(it, rise && notBelowZero(rise), faceWidth),
    atMost(
      it,
      'Undercut',
      undercut && notBelowZero(undercut),
      limits.structuralUndercut,
      limits.structuralMacro,
    ),
  ];
}

/** Near the width where the limit changes, both limits are asked. */
function convexityItem(it: FilletCase, rise: Measured | undefined, width: Measured): SectionItem {
  const limitAt = (mm: number) => convexityLimits[faceRow(own(mm, it.system), it.system)];
  const [narrow, wide] = [
    limitAt(width.value - width.uncertainty),
    limitAt(width.value + width.uncertainty),
  ];
  const one = atMost(it, 'Convexity', rise, narrow, citeConvexity);
  if (narrow === wide) return one;
  const other = atMost(it, 'Convexity', rise, wide, citeConvexity);
  const verdict = one.verdict === other.verdict ? one.verdict : 'too close to tell';
  return { ...other, verdict, limit: `${one.limit} or ${size(wide)}, by the width of the face` };
}

function sizeItems(it: FilletCase): SectionItem[] {
  const { legA, legB, angle } = it.found;
  if (!it.size) return [];
  const drawn = convert(it.size.value, it.size.system === 'us' ? 'in' : 'mm', 'mm');
  const asDrawn = `the drawing’s size, ${stated(it.size)}`;
  const legs = (
    [
      ['A', legA],
      ['B', legB],
    ] as const
  ).map(
    ([plate, leg]): SectionItem => ({
      item: `Leg on plate ${plate}`,
      verdict: judged(leg, drawn, 'at least'),
      reading: text(leg, it.system),
      limit: `at least ${asDrawn}`,
      cite: limits.structuralMacro,
    }),
  );
  const { throat } = it.found;
  const needed = drawn * Math.SQRT1_2;
  const applies = angle.value + angle.uncertainty >= 80 && angle.value - angle.uncertainty <= 100;
  return [
    ...legs,
    {
      item: 'Throat that counts',
      verdict: applies ? judged(throat, needed, 'at least') : 'does not apply',
      reading: text(throat, it.system),
      limit: applies
        ? `at least 0.707 of the size, ${printMeasured({ value: needed, uncertainty: 0 }, 'mm', it.system)}`
        : 'the size stands for a throat only between 80° and 100°',
      cite: limits.throatThatCounts,
    },
  ];
}
