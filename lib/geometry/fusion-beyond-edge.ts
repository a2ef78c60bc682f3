/** How far a fusion line lies beyond the edge of a plate as it was prepared. */
import { keptWhere, minus } from './marked-lines.ts';
import type { Outline, Point } from './outline.ts';

/**
 * Least and greatest distance of the fusion line beyond the edge, where it runs beside it; below 0 on
 * the side of the weld, where `inside` lies. Undefined where the edge has fewer than two corners or
 * the line nowhere runs beside it.
 */
export function fusionBeyondEdge(
  edge: Outline,
  fusion: Outline,
  inside: Point,
): { least: number; most: number } | undefined {
  if (edge.length < 2) return undefined;
  const [top, bottom] = [edge[0], edge.at(-1)] as [Point, Point];
  const besideTop = pastEnd(top, edge[1] as Point);
  const besideBottom = pastEnd(bottom, edge.at(-2) as Point);
  const beside = keptWhere(keptWhere(fusion, besideTop), besideBottom);
  if (beside.length === 0) return undefined;
  const depths = beside.map((point) => depthBeyond(point, edge, inside));
  return { least: Math.min(...depths), most: Math.max(...depths) };
}

/** How far along a point lies from the end of an edge toward its inside; below 0 past the end. */
const pastEnd = (end: Point, next: Point) => {
  const [x, y] = minus(next, end);
  return (point: Point) => x * (point[0] - end[0]) + y * (point[1] - end[1]);
};

/** Distance from the nearest piece of the edge, below 0 on the weld's own side of it. */
function depthBeyond([x, y]: Point, edge: Outline, inside: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  let depth = 0;
  for (let i = 1; i < edge.length; i++) {
    const [ax, ay] = edge[i - 1] as Point;
    const [bx, by] = edge[i] as Point;
    const [dx, dy] = [bx - ax, by - ay];
    const share = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
    const on = Math.max(0, Math.min(1, share));
    const away = (ax + on * dx - x) ** 2 + (ay + on * dy - y) ** 2;
    if (away >= nearest) continue;
    nearest = away;
    const side = dx * (y - ay) - dy * (x - ax);
    const inner = dx * (inside[1] - ay) - dy * (inside[0] - ax);
    depth = Math.sqrt(away) * (side * inner > 0 ? -1 : 1);
  }
  return depth;
}
