/**
 * Who welds where tonight. Those who have most to catch up choose first, then those furthest back in
 * the course. Each takes the weakest free machine that burns the electrode of the exercise, so that a
 * strong one is left for whom it takes. Who finds none works beside the booths. Without a signed safety
 * gate nobody gets a booth.
 */
import type { BoardBooth } from '../files/class-board.ts';
import type { BoardExercise, Standing } from './standing.ts';

export interface Evening {
  booths: { booth: BoardBooth; standing: Standing }[];
  beside: { standing: Standing; why: string }[];
  /** Booths that stay free. */
  free: BoardBooth[];
}

/** The rule in words, beside the suggestion. */
export const boothRule =
  'Nobody without a signed safety gate. Most to catch up first, then furthest back in the course. Each takes the weakest free machine that burns the electrode of the exercise. Who finds none works beside the booths.';

/** Every sheet of the course asks for electrode positive, so a machine for AC alone burns none of them. */
export const canBurn = (booth: BoardBooth, exercise: BoardExercise): boolean =>
  exercise.largest === 0 ||
  (booth.largest >= exercise.largest - 1e-9 &&
    booth.current !== 'AC' &&
    (booth.most === undefined || booth.most >= (exercise.current ?? 0)));

/** `booths` in the order in which they stand; those that are down are left out. */
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
    if (!standing.mayStrike) {
      evening.beside.push({ standing, why: 'the safety gate is not signed: no arc before it' });
      continue;
    }
    const able = free.filter((it) => canBurn(it, next));
    const [booth] = able.sort(
      (a, b) => a.largest - b.largest || booths.indexOf(a) - booths.indexOf(b),
    );
    if (!booth) {
      const some = booths.some((it) => !it.down && canBurn(it, next));
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
