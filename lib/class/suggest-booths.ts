/**
 * Who welds where tonight. Those who have most to catch up choose first, then those furthest back in
 * the course. Each takes the weakest free machine that burns the electrode of the exercise, so that a
 * strong one is left for whom it takes. Who finds none works beside the booths.
 */
import type { BoardBooth } from '../files/class-board.ts';
import type { Standing } from './standing.ts';

export interface Evening {
  booths: { booth: BoardBooth; standing: Standing }[];
  beside: { standing: Standing; why: string }[];
  /** Booths that stay free. */
  free: BoardBooth[];
}

export const boothRule =
  'Most to catch up first, then furthest back in the course. Each takes the weakest free machine that burns the electrode of the exercise. Who finds none works beside the booths.';

export function suggestBooths(
  standings: readonly Standing[],
  booths: readonly BoardBooth[],
): Evening {
  const free = booths.filter(({ down }) => !down);
  const evening: Evening = { booths: [], beside: [], free: [] };
  const waiting = standings
    .filter(({ learner }) => learner.here)
    .sort((a, b) => b.catchUp - a.catchUp || a.place - b.place);
  for (const standing of waiting) {
    const { next } = standing;
    if (!next || next.station === 'side') {
      evening.beside.push({ standing, why: next ? next.title : 'all exercises passed' });
      continue;
    }
    const able = free.filter(({ largest }) => largest >= next.largest - 1e-9);
    const [booth] = able.sort(
      (a, b) => a.largest - b.largest || booths.indexOf(a) - booths.indexOf(b),
    );
    if (!booth) {
      const some = booths.some((it) => !it.down && it.largest >= next.largest - 1e-9);
      evening.beside.push({
        standing,
        why: some ? 'every booth that could is taken' : 'no machine here burns that electrode',
      });
      continue;
    }
    free.splice(free.indexOf(booth), 1);
    evening.booths.push({ booth, standing });
  }
  evening.booths.sort((a, b) => booths.indexOf(a.booth) - booths.indexOf(b.booth));
  evening.free = free;
  return evening;
}
