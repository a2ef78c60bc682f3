/** The cover of fillers as a table, cell by cell: ASME IX QW-433, from memory. */
import { expect, it } from 'vitest';
import { type Backing, covers, type FNumber } from '../../../lib/welds/filler-cover.ts';

const strip: Backing = 'with backing';
const open: Backing = 'without backing';

it.each<[FNumber, Backing, string]>([
  ['F4', strip, 'F1+ F2+ F3+ F4+'],
  ['F4', open, 'F1+ F2+ F3+ F4+ F4-'],
  ['F3', strip, 'F1+ F2+ F3+'],
  ['F3', open, 'F1+ F2+ F3+ F3-'],
  ['F1', strip, 'F1+'],
])('%s %s covers %s', (fNumber, backing, cells) => {
  const wanted = (['F1', 'F2', 'F3', 'F4'] as const).flatMap((group) =>
    ([strip, open] as const)
      .filter((one) => covers({ fNumber, backing }, { fNumber: group, backing: one }))
      .map((one) => group + (one === strip ? '+' : '-')),
  );
  expect(wanted.join(' ')).toBe(cells);
});

it('covers its own group both ways only where it was welded open', () => {
  const own = (fNumber: FNumber, backing: Backing, wanted: Backing) =>
    covers({ fNumber, backing }, { fNumber, backing: wanted });
  for (const group of ['F1', 'F2', 'F3', 'F4'] as const)
    expect([own(group, strip, strip), own(group, strip, open), own(group, open, open)]).toEqual([
      true,
      false,
      true,
    ]);
});
