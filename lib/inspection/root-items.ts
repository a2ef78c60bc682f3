/** The back of an open root, as far as it can be seen. */
import type { Citation } from '../calculation.ts';
import { meltThrough, rootConcavity } from '../tables/visual-limits.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import { isHollowCovered } from './hollow-root.ts';
import { atMost, type Item, saidLimit } from './visual-item.ts';

/** None where the root cannot be seen. `cite`: the clause that asks for full penetration. */
export function rootItems(it: GaugeReadings, cite: Citation): Item[] {
  if (it.weld !== 'groove, open root') return [];
  const nothing = { us: 0, metric: 0 };
  const penetration = atMost(
    'Incomplete penetration',
    it.incompletePenetration,
    nothing,
    cite,
    'none',
  );
  if (it.code === 'ASME IX') return [penetration];
  return [
    penetration,
    concavityItem(it),
    atMost('Melt-through', it.meltThrough, meltThrough.at, meltThrough.cite),
  ];
}

/** A shallow hollow passes where the cover pass makes it good. */
function concavityItem({ rootConcavity: hollow, reinforcement }: GaugeReadings): Item {
  const item = atMost(
    'Root concavity',
    hollow,
    rootConcavity.at,
    rootConcavity.cite,
    `at most ${saidLimit(rootConcavity.at)}, and the joint, cover pass included, nowhere thinner than the plate`,
  );
  if (item.verdict !== 'pass' || !hollow || hollow.value === 0) return item;
  if (!reinforcement)
    return {
      ...item,
      verdict: 'cannot be judged from this',
      reading: `${item.reading}; read the cover pass too`,
    };
  return isHollowCovered(hollow, reinforcement) ? item : { ...item, verdict: 'fail' };
}
