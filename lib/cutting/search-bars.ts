/**
 * A search for a plan with fewer bars than one already known: each piece, longest first, into the
 * fullest bar that takes it, then into emptier ones. It stops after `looks` looks at a bar, whatever
 * it has found by then, so that its time has a bound. Undefined when it found none better.
 */
export function searchBars(
  falling: readonly number[],
  capacity: number,
  known: number,
  lowerBound: number,
  looks: number,
): number[][] | undefined {
  const left = new Float64Array(known);
  const pieces: number[][] = [];
  let best: number[][] | undefined;
  let fewest = known;
  let budget = looks;
  const place = (index: number): void => {
    if (pieces.length >= fewest) return;
    const length = falling[index];
    if (length === undefined) {
      best = pieces.map((bar) => [...bar]);
      fewest = best.length;
      return;
    }
    let tried = length - 1;
    for (;;) {
      // The fullest bar with room that is emptier than those tried: equal room, equal plans.
      let at = -1;
      budget -= pieces.length + 1;
      for (let bar = 0; bar < pieces.length; bar++) {
        const room = left[bar] as number;
        if (room > tried && (at < 0 || room < (left[at] as number))) at = bar;
      }
      if (at < 0) break;
      tried = left[at] as number;
      left[at] = tried - length;
      const bar = pieces[at] as number[];
      bar.push(length);
      place(index + 1);
      bar.pop();
      left[at] = tried;
      if (budget <= 0 || fewest === lowerBound) return;
      // A perfect fit, and nothing that goes elsewhere could do better.
      if (tried === length) return;
    }
    left[pieces.length] = capacity - length;
    pieces.push([length]);
    place(index + 1);
    pieces.pop();
  };
  place(0);
  return best;
}
