import { expect, it } from 'vitest';
import type { Outline } from '../../../lib/geometry/outline.ts';
import { withoutSpikes } from '../../../lib/geometry/without-spikes.ts';

const square: Outline = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];

it('keeps an outline that has none', () => {
  expect(withoutSpikes(square)).toEqual(square);
});
it('drops a way out and back, wherever it begins', () => {
  const spiked: Outline = [
    [0, 0],
    [2, 0],
    [3, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ];
  for (let turn = 0; turn < spiked.length; turn++) {
    const turned = [...spiked.slice(turn), ...spiked.slice(0, turn)];
    const kept = withoutSpikes(turned);
    expect(kept).toHaveLength(4);
    expect(kept).not.toContainEqual([3, 0]);
  }
});
it('drops a corner that stands twice', () => {
  expect(
    withoutSpikes([
      [0, 0],
      [2, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]),
  ).toEqual(square);
});
