/**
 * Undercut, by purpose: a test coupon, cyclic load, a thick part, or a thin one, where undercut may
 * be deeper over a short length, counted in the worst window along the weld.
 */
import {
  undercut,
  undercutSum,
  undercutThickFrom,
  undercutWindow,
} from '../tables/visual-limits.ts';
import type { System } from '../units.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import { worstWindow } from './undercut-window.ts';
import {
  atMost,
  type Item,
  inSystem,
  isWithin,
  printSize,
  reaches,
  saidLimit,
} from './visual-item.ts';

/** One item, held against the row of AWS D1.1 for this purpose and thickness. */
export function undercutItem(it: GaugeReadings): Item {
  const { undercutDepth: depth, thickness } = it;
  if (it.purpose === 'welder’s test coupon')
    return atMost('Undercut', depth, undercut.test.at, undercut.test.cite);
  if (it.purpose === 'production, cyclic load') {
    const row = it.transverseToTension === 'no' ? undercut.cyclicOther : undercut.cyclicPrimary;
    const where = it.transverseToTension === 'no' ? '' : ', in primary members across the tension';
    return atMost('Undercut', depth, row.at, row.cite, `at most ${saidLimit(row.at)}${where}`);
  }
  if (reaches(thickness.value, undercutThickFrom[thickness.system]))
    return atMost('Undercut', depth, undercut.thick.at, undercut.thick.cite);
  return inThinPart(it);
}

/** Deeper than the plain limit, but not too deep, the places decide. */
function inThinPart({ undercutDepth: depth, undercutPlaces: places }: GaugeReadings): Item {
  const { thin, thinShort } = undercut;
  const limit = `at most ${saidLimit(thin.at)}; up to ${saidLimit(thinShort.at)} for ${saidLimit(undercutSum)} added up in any ${saidLimit(undercutWindow)}`;
  const plain = atMost('Undercut', depth, thin.at, thin.cite, limit);
  if (plain.verdict !== 'fail' || !depth) return plain;
  if (!isWithin(depth.value, thinShort.at[depth.system])) return plain;
  if (!places || places.length === 0)
    return {
      ...plain,
      verdict: 'cannot be judged from this',
      reading: `${plain.reading}; list the places`,
    };
  return { ...plain, ...byPlaces(places, depth.system) };
}

/** Only places deeper than the plain limit are added up. */
function byPlaces(
  places: NonNullable<GaugeReadings['undercutPlaces']>,
  system: System,
): Pick<Item, 'verdict' | 'reading'> {
  const { thin, thinShort } = undercut;
  const listed = places.map(({ from, to, depth }) => ({
    from: inSystem(from, system),
    to: inSystem(to, system),
    depth: inSystem(depth, system),
  }));
  const deepest = Math.max(...listed.map(({ depth }) => depth));
  const counted = listed.filter(({ depth }) => !isWithin(depth, thin.at[system]));
  const sum = worstWindow(counted, undercutWindow[system]);
  const good = isWithin(deepest, thinShort.at[system]) && isWithin(sum, undercutSum[system]);
  return {
    verdict: good ? 'pass' : 'fail',
    reading: `${printSize(deepest, system)} deep, ${printSize(Number(sum.toFixed(4)), system)} in the worst ${printSize(undercutWindow[system], system)}`,
  };
}
