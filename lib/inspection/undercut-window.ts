/** Undercut listed by place, added up in the worst window along the weld. */
export interface Place {
  from: number;
  to: number;
  depth: number;
}

/**
 * The longest accumulated length of `places` inside any window of `length`. A window that begins
 * where a place begins is as bad as any other, so only those are tried. Places that overlap count
 * once.
 */
export function worstWindow(places: readonly Place[], length: number): number {
  const joined = joinUp(places);
  const inside = (start: number) =>
    joined.reduce(
      (sum, { from, to }) =>
        sum + Math.max(0, Math.min(to, start + length) - Math.max(from, start)),
      0,
    );
  return Math.max(0, ...joined.map(({ from }) => inside(from)));
}

function joinUp(places: readonly Place[]): { from: number; to: number }[] {
  const sorted = places
    .map(({ from, to }) => ({ from: Math.min(from, to), to: Math.max(from, to) }))
    .sort((a, b) => a.from - b.from);
  const joined: { from: number; to: number }[] = [];
  for (const place of sorted) {
    const last = joined.at(-1);
    if (last && place.from <= last.to) last.to = Math.max(last.to, place.to);
    else joined.push({ ...place });
  }
  return joined;
}
