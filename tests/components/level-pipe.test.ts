/** The level pipe hour by hour: the electrode where the lesson says that it points. */
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import LevelPipe from '../../components/drawings/level-pipe.tsx';

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
