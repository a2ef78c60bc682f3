/**
 * Which fillers and which backing a deposit covers in a welder's test. ASME IX QW-433 (from
 * memory): a group with backing covers itself and the lower ones with backing; without backing it
 * covers itself both ways, and the lower groups with backing. AWS D1.1 looks at the group alone.
 */
export type FNumber = 'F1' | 'F2' | 'F3' | 'F4';
export type Backing = 'with backing' | 'without backing';

export interface Tested {
  fNumber: FNumber;
  backing: Backing;
}

const rank = (f: FNumber): number => Number(f.slice(1));

/** May a welder tested with `tested` deposit `wanted`, by ASME IX? */
export function covers(tested: Tested, wanted: Tested): boolean {
  if (tested.fNumber === wanted.fNumber)
    return tested.backing === 'without backing' || wanted.backing === 'with backing';
  return rank(tested.fNumber) > rank(wanted.fNumber) && wanted.backing === 'with backing';
}
