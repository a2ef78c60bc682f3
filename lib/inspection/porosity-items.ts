/**
 * Piping porosity in production welds under AWS D1.1: diameters added up under static load, pores
 * counted under cyclic load, and none at all in a groove across the tension.
 */
import {
  largestPore,
  mostPores,
  noPores,
  porosityPerFoot,
  porosityPerInch,
} from '../tables/visual-limits.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import { atMost, type Item, saidLimit, unread } from './visual-item.ts';

/** One item or two, as the load asks. */
export function porosityItems(it: GaugeReadings): Item[] {
  if (it.weld !== 'fillet' && it.transverseToTension === 'yes')
    return [
      atMost(
        'Piping porosity',
        it.porosityPerInch,
        noPores.at,
        noPores.cite,
        'none in a groove across the tension',
      ),
    ];
  if (it.purpose === 'production, cyclic load') return countedPores(it);
  return [
    atMost(
      'Pores, diameters added up in an inch',
      it.porosityPerInch,
      porosityPerInch.at,
      porosityPerInch.cite,
    ),
    atMost(
      'Pores, diameters added up in a foot',
      it.porosityPerFoot,
      porosityPerFoot.at,
      porosityPerFoot.cite,
    ),
  ];
}

/** Under cyclic load each pore counts, however small, and none may be large. */
function countedPores(it: GaugeReadings): Item[] {
  return [countItem(it), atMost('Largest pore', it.largestPore, largestPore.at, largestPore.cite)];
}

function countItem({ weld, poreCount }: GaugeReadings): Item {
  const { count, in: length, cite } = mostPores;
  const stiffener =
    weld === 'fillet' ? '; the fillet of a stiffener to its web goes by the static row' : '';
  const limit = `at most one in any ${saidLimit(length)} of weld${stiffener}`;
  if (poreCount === undefined) return unread('Pores counted', limit, cite);
  return {
    item: 'Pores counted',
    verdict: poreCount <= count ? 'pass' : 'fail',
    reading: String(poreCount),
    limit,
    cite,
  };
}
