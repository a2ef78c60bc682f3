/**
 * Chance that can be had again: the same seed gives the same numbers anywhere, so that set 4021 is
 * set 4021 for everybody. Mulberry32, a public-domain generator; good enough for picking problems.
 */
export function seeded(...seed: (string | number)[]): () => number {
  let state = 2166136261;
  for (const letter of seed.join('|')) state = Math.imul(state ^ letter.charCodeAt(0), 16777619);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
