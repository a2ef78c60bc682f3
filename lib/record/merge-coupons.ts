/**
 * Coupons of two records in one. A coupon that waits in one and is graded in the other, of the same
 * exercise and day, is one coupon: the grade stands, and no reading of either is lost.
 */
import type { Coupon } from '../files/learner-record.ts';

/** Which of the two comes first matters only for the order of a day; merging again changes nothing. */
export function mergeCoupons(own: readonly Coupon[], other: readonly Coupon[]): Coupon[] {
  const key = ({ exercise, on }: Coupon) => `${exercise} ${on}`;
  const mine = Map.groupBy(own, key);
  const theirs = Map.groupBy(other, key);
  return [...new Set([...mine.keys(), ...theirs.keys()])].flatMap((day) =>
    mergeDay(mine.get(day) ?? [], theirs.get(day) ?? []),
  );
}

/** Pairs one coupon of mine with one of theirs, the closest first; what finds no partner stays. */
function mergeDay(mine: readonly Coupon[], theirs: readonly Coupon[]): Coupon[] {
  const pairs = mine
    .flatMap((a) =>
      theirs.flatMap((b) => {
        const joined = join(a, b);
        return joined ? [{ a, b, ...joined }] : [];
      }),
    )
    .sort((one, two) => one.rank - two.rank || compare(text(one.coupon), text(two.coupon)));
  const partner = new Map<Coupon, Coupon>();
  const taken = new Set<Coupon>();
  for (const { a, b, coupon } of pairs) {
    if (partner.has(a) || taken.has(b)) continue;
    partner.set(a, coupon);
    taken.add(b);
  }
  // The order of a day stands: it tells which coupon came last.
  return [...mine.map((it) => partner.get(it) ?? it), ...theirs.filter((it) => !taken.has(it))];
}

/**
 * The two as one, if they can be: equal; graded alike, where one has more readings; graded and
 * waiting. `rank` is lower the surer it is.
 */
function join(a: Coupon, b: Coupon): { coupon: Coupon; rank: number } | undefined {
  if (text(a) === text(b)) return { coupon: a, rank: 0 };
  const graded = [a, b].filter(({ result }) => result !== 'waiting');
  if (graded.length === 2) {
    const alike = (it: Coupon) => text({ ...it, readings: [], note: '' });
    if (alike(a) !== alike(b)) return undefined;
    if (holds(a, b)) return { coupon: a, rank: 1 };
    return holds(b, a) ? { coupon: b, rank: 1 } : undefined;
  }
  const [grade] = graded;
  if (!grade) return undefined;
  const waiting = grade === a ? b : a;
  if (holds(grade, waiting)) return { coupon: grade, rank: 2 };
  const more = waiting.readings.filter((one) => !has(grade, one));
  const notes = [grade, waiting].map((it) => it.note).filter((it) => it !== '');
  const note = grade.note.includes(waiting.note) ? grade.note : notes.join(' / ').slice(0, 2000);
  return { coupon: { ...grade, note, readings: [...grade.readings, ...more] }, rank: 3 };
}

type Reading = Coupon['readings'][number];
const has = ({ readings }: Coupon, { item, reading }: Reading): boolean =>
  readings.some((it) => it.item === item && it.reading === reading);
const holds = (a: Coupon, b: Coupon): boolean =>
  b.readings.every((one) => has(a, one)) && a.note.includes(b.note);

/** The same text for the same coupon, in whatever order its fields stand. */
const text = (it: Coupon): string =>
  JSON.stringify(Object.entries(it).sort(([a], [b]) => compare(a, b)));
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
