/** What lies beside the weld, or was wrong before it: told only where somebody looked. */
import { misalignment as allowed, spatterCite, strikeCite } from '../tables/visual-limits.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import { atMost, byEye, type Item, orShareOf, saidLimit } from './visual-item.ts';

/** No item for what nobody looked at. */
export function besideTheWeld(it: GaugeReadings): Item[] {
  const { arcStrike, looseSpatter, misalignment } = it;
  const items: Item[] = [];
  if (arcStrike !== undefined)
    items.push(
      byEye(
        'Arc strike outside the weld',
        arcStrike,
        strikeCite,
        'no',
        'none; ground smooth where one is',
      ),
    );
  if (looseSpatter !== undefined)
    items.push(
      byEye(
        'Loose spatter and slag',
        looseSpatter,
        spatterCite,
        'no',
        'brushed off; what sticks fast may stay, unless another test or the paint asks for it off',
      ),
    );
  if (misalignment !== undefined && it.weld !== 'fillet')
    items.push(
      atMost(
        'Misalignment',
        misalignment,
        orShareOf(allowed.at, allowed.share, it.thickness),
        allowed.cite,
        `at most a tenth of the thinner part, and ${saidLimit(allowed.at)}`,
      ),
    );
  return items;
}
