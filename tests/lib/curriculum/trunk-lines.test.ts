import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { arrows, trunks, withoutDetours } from '../../../lib/curriculum/sequence-graph.ts';
import { rowHeight, trunkLines } from '../../../lib/curriculum/trunk-lines.ts';

const course = await readCurriculum();
const drawn = trunkLines(trunks(withoutDetours(arrows(course))), course.lessons.length);
const points = drawn.lines.flatMap(({ path }) => cornersOf(path));

/** The points that a path of M, H, V and Q goes through. */
function cornersOf(path: string): { x: number; y: number }[] {
  const found: { x: number; y: number }[] = [];
  let [x, y] = [0, 0];
  for (const [, letter, rest = ''] of path.matchAll(/([MHVQ])([^MHVQ]*)/g)) {
    const numbers = rest.trim().split(/\s+/).map(Number);
    if (letter === 'H') x = numbers[0] ?? Number.NaN;
    else if (letter === 'V') y = numbers[0] ?? Number.NaN;
    else [x, y] = numbers.slice(-2) as [number, number];
    found.push({ x, y });
  }
  return found;
}

it('a line leaves its lesson below the middle of its row, goes down its lane and arrives above', () => {
  // Rows of 48, lanes of 9, corners of 6, 7 beside the middle: two lanes, labels 8 behind them.
  const { width, height, lines } = trunkLines(
    [
      { from: 0, to: [1, 3], lane: 1 },
      { from: 1, to: [2], lane: 0 },
    ],
    4,
  );
  expect([width, height]).toEqual([2 * 9 + 6 + 8, 4 * 48]);
  // Outer lane: 32 − 8 − 6 − 1.5 · 9 = 4.5; inner: 32 − 8 − 6 − 4.5 = 13.5.
  expect(lines).toEqual([
    {
      from: 0,
      lane: 1,
      path:
        'M30 31H10.5Q4.5 31 4.5 37V155' +
        'M4.5 59Q4.5 65 10.5 65H30' +
        'M4.5 155Q4.5 161 10.5 161H30',
      tips: [
        { x: 31, y: 65 },
        { x: 31, y: 161 },
      ],
    },
    {
      from: 1,
      lane: 0,
      path: 'M30 79H19.5Q13.5 79 13.5 85V107' + 'M13.5 107Q13.5 113 19.5 113H30',
      tips: [{ x: 31, y: 113 }],
    },
  ]);
  expect(trunkLines([], 3)).toEqual({ width: 14, height: 144, lines: [] });
});

describe('the lines of the sequence', () => {
  it('are there', () => {
    expect(points.length).toBeGreaterThan(100);
  });
  it('never reach the labels, which begin where the drawing ends', () => {
    expect(Math.max(...points.map(({ x }) => x))).toBeLessThan(drawn.width);
    expect(Math.min(...points.map(({ x }) => x))).toBeGreaterThan(0);
  });
  it('leave room for a title on a phone of 360 pixels', () => {
    expect(drawn.width).toBeLessThanOrEqual(100);
  });
  it('stay beside the list', () => {
    expect(Math.min(...points.map(({ y }) => y))).toBeGreaterThan(0);
    expect(Math.max(...points.map(({ y }) => y))).toBeLessThan(drawn.height);
  });
  it('arrive in the row of the lesson they lead to', () => {
    const rows = drawn.lines.flatMap(({ tips }) => tips.map(({ y }) => Math.floor(y / rowHeight)));
    const targets = withoutDetours(arrows(course)).map(({ to }) => to);
    expect(rows.sort((a, b) => a - b)).toEqual(targets.sort((a, b) => a - b));
  });
  it('keep a gap between two that run side by side', () => {
    const lanes = drawn.lines.map(({ path }) => Math.min(...cornersOf(path).map(({ x }) => x)));
    const apart = [...new Set(lanes)].sort((a, b) => a - b);
    for (const [index, x] of apart.slice(1).entries())
      expect(x - (apart[index] as number)).toBeGreaterThanOrEqual(8);
  });
});
