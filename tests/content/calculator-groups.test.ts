import { expect, it } from 'vitest';
import { calculatorGroups } from '../../content/calculator-groups.ts';
import { calculationIds } from '../../content/commands/calculation-ids.ts';

const listed = calculatorGroups.flatMap(({ ids }) => ids);

it('lists every calculation in one group, and none twice', () => {
  expect(calculationIds().filter((id) => !listed.includes(id))).toEqual([]);
  expect(listed.length).toBe(new Set(listed).size);
});
