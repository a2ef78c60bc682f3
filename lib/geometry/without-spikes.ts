/**
 * An outline without corners that it visits twice on the way to nowhere. Where layers are split
 * near an edge, a border can run out along a line and back along the same one: it encloses nothing,
 * but it would be drawn as a stray line.
 */
import type { Outline } from './outline.ts';

const close = 1e-9;

/** The same area and the same corners otherwise; at least three are left. */
export function withoutSpikes(outline: Outline): Outline {
  const corners = [...outline];
  for (let i = 0; corners.length > 3 && i < corners.length; ) {
    const [x, y] = corners[i] as Outline[number];
    const after = (steps: number) => corners[(i + steps) % corners.length] as Outline[number];
    const meets = ([a, b]: Outline[number]) => Math.abs(a - x) < close && Math.abs(b - y) < close;
    if (meets(after(1))) corners.splice((i + 1) % corners.length, 1);
    else if (meets(after(2))) {
      const drop = new Set([after(1), after(2)]);
      corners.splice(0, corners.length, ...corners.filter((corner) => !drop.has(corner)));
    } else {
      i++;
      continue;
    }
    i = 0;
  }
  return corners;
}
