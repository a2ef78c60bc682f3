/** Leg and convexity of a fillet. */
import { citeConvexity, convexityLimits, faceRow } from '../tables/convexity-d1.1.ts';
import { table2000, testClause, undersize } from '../tables/visual-limits.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import {
  atMost,
  type Item,
  inSystem,
  isWithin,
  printSize,
  reaches,
  rowOf,
  saidLimit,
  unread,
} from './visual-item.ts';

/** Both by AWS D1.1; the leg by the tables of production, or by the test’s own clause. */
export const filletItems = (it: GaugeReadings): Item[] => [legItem(it), convexityItem(it)];

function legItem({ filletSize, leg, purpose }: GaugeReadings): Item {
  if (!filletSize || !leg) return unread('Leg', 'the size on the drawing', table2000);
  const { value: size, system } = filletSize;
  const short = size - inSystem(leg, system);
  const reading = printSize(leg.value, leg.system);
  if (purpose === 'welder’s test coupon')
    return {
      item: 'Leg',
      verdict: reaches(inSystem(leg, system), size) ? 'pass' : 'fail',
      reading,
      limit: `at least the size, ${printSize(size, system)}`,
      cite: testClause,
    };
  const { by } = rowOf(undersize, filletSize);
  return {
    item: 'Leg',
    verdict: inProduction(short, by[system]),
    reading,
    limit: `the size; below it by at most ${saidLimit(by)} for at most a tenth of the length`,
    cite: table2000,
  };
}

/** Below its size by a little a leg passes over a tenth of the length; how much of it is, one reading cannot tell. */
function inProduction(short: number, allowed: number): Item['verdict'] {
  if (short <= 1e-9) return 'pass';
  return isWithin(short, allowed) ? 'cannot be judged from this' : 'fail';
}

function convexityItem({ faceWidth, convexity }: GaugeReadings): Item {
  if (!faceWidth) return unread('Convexity', 'by the width of the face', citeConvexity);
  const largest = convexityLimits[faceRow(faceWidth.value, faceWidth.system)];
  return atMost('Convexity', convexity, largest, citeConvexity);
}
