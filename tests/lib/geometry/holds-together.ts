import { expect } from 'vitest';
import type { Outline } from '../../../lib/geometry/outline.ts';
import type { PassMap } from '../../../lib/geometry/pass-map.ts';
import { areaOf, areaOutside, areaShared } from './polygon-oracle.ts';

/**
 * The passes of a map fill the joint: each is as large as it says, none reaches out of the joint
 * or into its neighbor or the plates, and together they have the joint's area.
 */
export function expectToFill(map: PassMap, joint: Outline): void {
  const whole = areaOf(joint);
  const little = whole / 1000;
  let sum = 0;
  for (const [index, pass] of map.passes.entries()) {
    const drawn = areaOf(pass.outline);
    expect(Math.abs(drawn - pass.area), `pass ${pass.number} is drawn ${drawn}`).toBeLessThan(
      little,
    );
    expect(areaOutside(pass.outline, joint), `pass ${pass.number} in the joint`).toBeLessThan(
      little,
    );
    for (const other of map.passes.slice(index + 1))
      expect(
        areaShared(pass.outline, other.outline),
        `passes ${pass.number} and ${other.number}`,
      ).toBeLessThan(little);
    for (const { part, outline } of map.base)
      expect(areaShared(pass.outline, outline), `pass ${pass.number} in ${part}`).toBeLessThan(
        little,
      );
    sum += drawn;
  }
  expect(Math.abs(sum - whole)).toBeLessThan(little);
  const statedSum = map.passes.reduce((total, { area }) => total + area, 0);
  expect(Math.abs(statedSum - whole)).toBeLessThan(little);
}
