/** Drawings that belong to a lesson and to no calculation: on their sheet, and true to what the lesson says. */
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import BendStraps from '../../components/drawings/lesson/bend-straps.tsx';
import FeatheredEnd from '../../components/drawings/lesson/feathered-end.tsx';
import Keyholes from '../../components/drawings/lesson/keyhole.tsx';
import LevelPipe from '../../components/drawings/lesson/level-pipe.tsx';
import RoofAndWall from '../../components/drawings/lesson/roof-and-wall.tsx';
import Shelf from '../../components/drawings/lesson/shelf.tsx';
import { sheetFaults } from './sheet-faults.ts';

it.each([
  ['keyhole', Keyholes],
  ['level-pipe', LevelPipe],
  ['bend-straps', BendStraps],
  ['roof-and-wall', RoofAndWall],
  ['shelf', Shelf],
  ['feathered-end', FeatheredEnd],
] as const)('%s stays on its sheet', (_, Drawing) => {
  expect(sheetFaults(renderToString(h(Drawing, {})))).toEqual([]);
});

/** Where a line begins and ends. */
const ends = (path: string) => {
  const numbers = (path.match(/-?[\d.]+/g) ?? []).map(Number) as [number, number, number, number];
  return {
    tip: numbers.slice(0, 2) as [number, number],
    stub: numbers.slice(2) as [number, number],
  };
};

it('points every electrode at the pipe, and a little ahead of its middle', () => {
  const svg = renderToString(h(LevelPipe, {}));
  const cores = [
    ...svg.matchAll(/d="(M[\d. ]+L[\d. ]+)" stroke="currentColor" stroke-width="2.6"/g),
  ];
  expect(cores).toHaveLength(7);
  for (const [, path = ''] of cores) {
    const { tip, stub } = ends(path);
    const [middleX, middleY] = [160, 152];
    const out = Math.atan2(tip[0] - middleX, middleY - tip[1]);
    const along = Math.atan2(stub[0] - tip[0], tip[1] - stub[1]);
    const behind = ((along - out) * 180) / Math.PI;
    // Clock angles fall on the way up this half, so a stub that trails has the larger one.
    expect(behind).toBeGreaterThan(4);
    expect(behind).toBeLessThan(11);
  }
});
