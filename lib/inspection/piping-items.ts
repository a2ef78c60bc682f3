/** ASME B31.3, normal fluid service: girth welds and fillets of a piping system. */
import {
  incompletePenetrationPiping,
  processPiping,
  reinforcementPiping,
  undercut,
} from '../tables/visual-limits.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import { isHollowCovered } from './hollow-root.ts';
import {
  atMost,
  byEye,
  type Item,
  orShareOf,
  printSize,
  rowOf,
  saidLimit,
  unread,
} from './visual-item.ts';

/** The items of a girth weld or a fillet, the root’s only where it is open. */
export function pipingItems(it: GaugeReadings): Item[] {
  const items = [
    byEye('Crack', it.crack, processPiping('crack')),
    byEye('Incomplete fusion', it.incompleteFusion, processPiping('lack of fusion')),
    atMost(
      'Undercut',
      it.undercutDepth,
      orShareOf(undercut.piping.at, 1 / 4, it.thickness),
      undercut.piping.cite,
      `at most ${saidLimit(undercut.piping.at)}, and a quarter of the wall`,
    ),
    atMost(
      'Surface pores',
      it.porosityPerInch,
      { us: 0, metric: 0 },
      processPiping('surface porosity'),
      'none',
    ),
  ];
  if (it.weld === 'fillet') return items;
  const cover = atMost(
    'Height of the cover pass',
    it.reinforcement,
    rowOf(reinforcementPiping, it.thickness).most,
    processPiping('reinforcement'),
  );
  return [...items, cover, ...(it.weld === 'groove, open root' ? openRootItems(it) : [])];
}

function openRootItems(it: GaugeReadings): Item[] {
  const { depth, share, cite } = incompletePenetrationPiping;
  return [
    concavityItem(it),
    atMost(
      'Incomplete penetration',
      it.incompletePenetration,
      orShareOf(depth, share, it.thickness),
      cite,
      `at most ${saidLimit(depth)} and a fifth of the wall deep; {1-1/2 in|38 mm} in any {6 in|150 mm}`,
    ),
    atMost(
      'Protrusion at the root',
      it.meltThrough,
      rowOf(reinforcementPiping, it.thickness).most,
      processPiping('reinforcement or protrusion'),
    ),
  ];
}

/** Of any depth that the cover pass makes good. */
function concavityItem({ rootConcavity: hollow, reinforcement }: GaugeReadings): Item {
  const item = 'Root concavity';
  const limit = 'the joint, cover pass included, nowhere thinner than the wall';
  const cite = processPiping('concave root surface');
  if (!hollow || !reinforcement) return unread(item, limit, cite);
  return {
    item,
    verdict: isHollowCovered(hollow, reinforcement) ? 'pass' : 'fail',
    reading: printSize(hollow.value, hollow.system),
    limit,
    cite,
  };
}
