/**
 * The lines beside a list of lessons: a trunk leaves its lesson to the left, runs down a lane and
 * turns back to each lesson that builds on it. All lines end where the labels begin, so that none
 * can cross one.
 */
import type { Trunk } from './sequence-graph.ts';

/** Height of one row of the list, in units of the drawing: 16 to the rem. */
export const rowHeight = 48;
const laneWidth = 9;
const corner = 6;
/** Lines leave below the middle of a row and arrive above it, so that they keep apart. */
const aside = 7;
const gap = 8;

export interface TrunkLines {
  /** The labels begin here. */
  width: number;
  height: number;
  lines: { from: number; lane: number; path: string; tips: { x: number; y: number }[] }[];
}

/**
 * @param rows lessons in the list
 * @returns paths in units of the drawing, and where their arrowheads go
 */
export function trunkLines(trunks: readonly Trunk[], rows: number): TrunkLines {
  const lanes = Math.max(0, ...trunks.map(({ lane }) => lane + 1));
  const width = lanes * laneWidth + corner + gap;
  const lines = trunks.map(({ from, to, lane }) => {
    const x = width - gap - corner - (lane + 0.5) * laneWidth;
    const leave = (from + 0.5) * rowHeight + aside;
    const arrive = (row: number) => (row + 0.5) * rowHeight - aside;
    const last = Math.max(...to);
    const down = `M${width - 2} ${leave}H${x + corner}Q${x} ${leave} ${x} ${leave + corner}V${arrive(last) - corner}`;
    const back = to.map(
      (row) =>
        `M${x} ${arrive(row) - corner}Q${x} ${arrive(row)} ${x + corner} ${arrive(row)}H${width - 2}`,
    );
    return {
      from,
      lane,
      path: down + back.join(''),
      tips: to.map((row) => ({ x: width - 1, y: arrive(row) })),
    };
  });
  return { width, height: rows * rowHeight, lines };
}
