/** A visual check item by item: which items a code asks about, for a kind of weld and its purpose. */
import * as limits from '../tables/visual-limits.ts';
import { besideTheWeld } from './beside-the-weld.ts';
import { filletItems } from './fillet-items.ts';
import type { GaugeReadings } from './gauge-readings.ts';
import { pipingItems } from './piping-items.ts';
import { porosityItems } from './porosity-items.ts';
import { rootItems } from './root-items.ts';
import { undercutItem } from './undercut-item.ts';
import { atMost, byEye, type Item, rowOf } from './visual-item.ts';

/** Every item that was read or should have been, in the order in which a weld is looked over. */
export function visualItems(it: GaugeReadings): Item[] {
  if (it.code === 'ASME B31.3') return pipingItems(it);
  const isTest = it.purpose === 'welder’s test coupon';
  const cite =
    it.code === 'ASME IX' ? limits.sectionNine : isTest ? limits.testClause : limits.table2000;
  const fused = [
    byEye('Crack', it.crack, cite),
    byEye('Incomplete fusion', it.incompleteFusion, cite),
  ];
  if (it.code === 'ASME IX') return [...fused, ...rootItems(it, cite)];
  return [
    ...fused,
    byEye('Craters filled', it.craterFilled, cite, 'yes', 'filled to the size of the weld'),
    byEye('Overlap', it.overlap, limits.profiles),
    undercutItem(it),
    ...(it.weld === 'fillet' ? filletItems(it) : [coverItem(it)]),
    ...(isTest ? [] : porosityItems(it)),
    ...rootItems(it, cite),
    ...besideTheWeld(it),
  ];
}

function coverItem({ purpose, reinforcement, thickness }: GaugeReadings): Item {
  const item = 'Height of the cover pass';
  const { reinforcementTest, reinforcementCite } = limits;
  if (purpose === 'welder’s test coupon')
    return atMost(item, reinforcement, reinforcementTest.at, reinforcementTest.cite);
  const { most } = rowOf(limits.reinforcement, thickness);
  return atMost(item, reinforcement, most, reinforcementCite);
}
