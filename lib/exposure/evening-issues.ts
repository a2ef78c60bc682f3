/** Which electrodes go out to the booths when, and when what is left of them has to be back. */
import { wallClock } from '../text/clock-text.ts';

/** Clock times in hours. */
interface Evening {
  booths: number;
  /** Electrodes that one booth burns. */
  perHour: number;
  firstArc: number;
  lastArc: number;
  /** Hours that one issue has to last. */
  issueEvery: number;
  /** In percent. */
  spare: number;
}

/**
 * One issue after the other from the first arc to the last, each rounded up so that every booth gets
 * whole electrodes.
 * @param limit longest time in open air, in hours
 */
export function eveningIssues(
  { booths, perHour, firstArc, lastArc, issueEvery, spare }: Evening,
  limit: number,
) {
  const length = lastArc - firstArc;
  const count = Math.ceil(length / issueEvery - 1e-9);
  return Array.from({ length: count }, (_, index) => {
    const at = firstArc + index * issueEvery;
    const covers = Math.min(issueEvery, lastArc - at);
    const perBooth = Math.ceil(perHour * covers * (1 + spare / 100) - 1e-9);
    return {
      at: wallClock(at),
      electrodes: perBooth * booths,
      perBooth,
      backBy: wallClock(Math.min(at + limit, lastArc)),
    };
  });
}
