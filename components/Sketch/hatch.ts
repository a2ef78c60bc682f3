/**
 * Section lining of base metal: slanted lines inside an outline, as one path. Drawn as lines, not
 * as a pattern, since a pattern needs an id and many drawings share a page. Each line is told from
 * the end of the one before: lines between parallel edges then read alike and pack small.
 */
import { round } from './Sketch.tsx';
import type { Point } from './scale.ts';

/** `outline` in sheet units. Lines rise to the right, `spacing` apart. */
export function hatch(outline: readonly Point[], spacing = 12): string {
  const offsets = outline.map(([x, y]) => x + y);
  const first = Math.ceil(Math.min(...offsets) / spacing) * spacing;
  const last = Math.max(...offsets);
  let path = '';
  let pen: Point = [0, 0];
  const to = (x: number, y: number): string => {
    const step = `${round(x - pen[0])} ${round(y - pen[1])}`;
    pen = [x, y];
    return step;
  };
  for (let offset = first; offset < last; offset += spacing) {
    const cuts = crossings(outline, offset);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      // A tenth of a unit is kept, so that the rounding of one line does not shift the next.
      const [from, end] = [round(cuts[i] as number), round(cuts[i + 1] as number)];
      path += `m${to(from, round(offset - from))} ${to(end, round(offset - end))}`;
    }
  }
  return path;
}

/** Where the line x + y = offset enters and leaves the outline, from left to right. */
function crossings(outline: readonly Point[], offset: number): number[] {
  const cuts: number[] = [];
  outline.forEach(([ax, ay], index) => {
    const [bx, by] = outline[(index + 1) % outline.length] as Point;
    const a = ax + ay - offset;
    const b = bx + by - offset;
    if (a < 0 === b < 0) return;
    cuts.push(ax + ((bx - ax) * a) / (a - b));
  });
  return cuts.sort((a, b) => a - b);
}
