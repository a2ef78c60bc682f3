/**
 * The switch that the changed code asks: which change is on, and which changes a test passes through.
 * One for a process, on the global object, since changed code and runner are loaded apart.
 */

/** How often each change was passed through, by its id. */
export type Counts = Map<string, number>;

export interface Switch {
  /** The change that is on. */
  on: string | undefined;
  /** How often its code ran, and how often it may: a loop without an end stops there. */
  times: number;
  most: number;
  /** Where to count, while the tests run unchanged. */
  counts: Counts | undefined;
}

const place = globalThis as typeof globalThis & { changeSwitch?: Switch };
place.changeSwitch ??= { on: undefined, times: 0, most: Infinity, counts: undefined };
export const theSwitch = place.changeSwitch;

/** The instrumenter's own three functions count at every step; these stand in for them and count only when asked. */
const ourHead = `
function stryNS_9fa48() {}
function stryCov_9fa48(...ids) {
  const { counts } = globalThis.changeSwitch;
  if (counts) for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
}
function stryMutAct_9fa48(id) {
  const change = globalThis.changeSwitch;
  if (change.on !== id) return false;
  if (++change.times > change.most) throw new Error('this change does not come to an end');
  return true;
}
`;
const theirHead =
  /function stryNS_9fa48\(\) \{[\s\S]*?\nfunction stryMutAct_9fa48\(id\) \{[\s\S]*?\n\}\n/;

/** Changed code as the instrumenter wrote it, asking this switch. */
export function withSwitch(code: string): string {
  return code.replace(theirHead, () => ourHead);
}
