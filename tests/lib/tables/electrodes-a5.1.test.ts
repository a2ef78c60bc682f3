/**
 * Every classification of the course beside what AWS A5.1 Table 1 says of it, and beside its F-number
 * in ASME IX QW-432 and AWS D1.1 Table 6.13 (all from memory; what was read is on the check page).
 */
import { describe, expect, it } from 'vitest';
import { classifications } from '../../../lib/tables/classifications.ts';
import { readDigits } from '../../../lib/tables/electrodes-a5.1.ts';

const everywhere = 'flat, horizontal, vertical and overhead';
const flatAndLevel = 'flat, and fillets in the horizontal position';
const downhill = 'flat, horizontal, overhead, and vertical downhill';
const either = 'AC, or DC with either polarity';

/** Classification, ksi, positions, covering, current, group. */
const printed: [string, number, string, string, string, string][] = [
  ['E6010', 60, everywhere, 'cellulose, sodium', 'DCEP', 'F3'],
  ['E6011', 60, everywhere, 'cellulose, potassium', 'AC or DCEP', 'F3'],
  ['E6012', 60, everywhere, 'titania, sodium', 'AC or DCEN', 'F2'],
  ['E6013', 60, everywhere, 'titania, potassium', either, 'F2'],
  ['E6019', 60, everywhere, 'iron oxide and titania, potassium', either, 'F2'],
  ['E6020', 60, flatAndLevel, 'iron oxide, sodium', 'AC or DCEN', 'F1'],
  ['E6027', 60, flatAndLevel, 'iron oxide, iron powder 50 %', either, 'F1'],
  ['E7014', 70, everywhere, 'titania, iron powder 25 to 40 %', either, 'F2'],
  ['E7015', 70, everywhere, 'low-hydrogen, sodium', 'DCEP', 'F4'],
  ['E7016', 70, everywhere, 'low-hydrogen, potassium', 'AC or DCEP', 'F4'],
  ['E7016-1', 70, everywhere, 'low-hydrogen, potassium', 'AC or DCEP', 'F4'],
  ['E7018', 70, everywhere, 'low-hydrogen, iron powder 25 to 40 %', 'AC or DCEP', 'F4'],
  ['E7018-1', 70, everywhere, 'low-hydrogen, iron powder 25 to 40 %', 'AC or DCEP', 'F4'],
  ['E7018M', 70, everywhere, 'low-hydrogen, iron powder 25 to 40 %', 'DCEP', 'F4'],
  ['E7024', 70, flatAndLevel, 'titania, iron powder 50 %', either, 'F1'],
  ['E7024-1', 70, flatAndLevel, 'titania, iron powder 50 %', either, 'F1'],
  ['E7027', 70, flatAndLevel, 'iron oxide, iron powder 50 %', either, 'F1'],
  ['E7028', 70, flatAndLevel, 'low-hydrogen, iron powder 50 %', 'AC or DCEP', 'F1'],
  ['E7048', 70, downhill, 'low-hydrogen, iron powder 25 to 40 %', 'AC or DCEP', 'F4'],
];

describe('a classification', () => {
  it.each(printed)(
    '%s means %i ksi, %s, %s, %s, %s',
    (name, ksi, position, covering, current, group) => {
      const read = readDigits(name as (typeof classifications)[number]);
      expect(read.strength).toEqual({ us: ksi, metric: ksi === 60 ? 430 : 490 });
      expect(read.position).toBe(position);
      expect(read.covering).toMatchObject({
        covering,
        current,
        fNumber: group,
        lowHydrogen: covering.startsWith('low-hydrogen'),
      });
      expect(`E${ksi}${read.positionDigit}`).toBe(name.slice(0, 4));
      expect(name.endsWith(read.ending) && read.ending).toBe(name.slice(5));
    },
  );

  it('is one of these, and there is no other', () => {
    expect([...classifications].sort()).toEqual(printed.map(([name]) => name).sort());
  });
});
