/** What was there before, step by step, and the way back forward. Never changes what it is given. */
export interface Undo<T> {
  readonly now: T;
  readonly before: readonly T[];
  readonly after: readonly T[];
}

const longest = 100;

/** The beginning: nothing to go back to. */
export const undoOf = <T>(now: T): Undo<T> => ({ now, before: [], after: [] });

/** A new state; what had been undone is given up. The last hundred states are remembered. */
export const changed = <T>({ now, before }: Undo<T>, next: T): Undo<T> => ({
  now: next,
  before: [...before, now].slice(-longest),
  after: [],
});

/** One step back; the same when there is none. */
export function undone<T>(state: Undo<T>): Undo<T> {
  const last = state.before.at(-1);
  if (state.before.length === 0) return state;
  return {
    now: last as T,
    before: state.before.slice(0, -1),
    after: [state.now, ...state.after],
  };
}

/** One step forward again; the same when nothing was undone. */
export function redone<T>(state: Undo<T>): Undo<T> {
  const [next, ...after] = state.after;
  if (state.after.length === 0) return state;
  return { now: next as T, before: [...state.before, state.now], after };
}
