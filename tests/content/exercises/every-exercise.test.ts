import { describe, expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';
import { readingOrder } from '../../../content/reading-order.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';
import { speakBoth } from '../../../lib/text/say.ts';

const exercises = readExercises();
const slugs = exercises.map(({ slug }) => slug);
const lessons: string[] = readingOrder.flatMap((unit) => [...unit.lessons]);
const atLesson = (lesson: string) => lessons.indexOf(lesson);

/** A figure with its unit that stands in a sentence without braces would not follow the reader's units. */
const bareQuantity = /(?<![{\w/-])\d[\d./-]*\s?(?:in|ft|mm|cm|lb|kg|A|V|degF|°F|°C|deg|°)(?!\w)/;

function amps(text: string): number {
  const read = readQuantity(text, 'A');
  if ('problem' in read) throw new Error(`${text} ${read.problem}`);
  return read.value;
}

describe.each(exercises)('$slug', (exercise) => {
  const sentences = [
    exercise.summary,
    exercise.handIn,
    ...exercise.steps,
    ...exercise.holdPoints,
    ...exercise.selfCheck,
    ...(exercise.questions ?? []).flatMap(({ ask, answer }) => [ask, answer]),
    ...exercise.coupon.flatMap(({ note }) => note ?? []),
    ...(exercise.procedure
      ? [
          exercise.procedure.preheat,
          exercise.procedure.cleaning,
          exercise.procedure.technique,
          exercise.procedure.position,
        ]
      : []),
  ];

  it('belongs to a lesson of the course', () => {
    expect(lessons).toContain(exercise.lesson);
  });

  it.each(sentences)('can be said in both systems of units: %s', (text) => {
    expect(() => speakBoth(text)).not.toThrow();
    expect(text.replace(/\{[^{}]*\}/g, '')).not.toMatch(bareQuantity);
    expect(text.length, 'too long to read between two electrodes').toBeLessThan(400);
  });

  it.each(exercise.grading)('says where the limit for $item is from', (criterion) => {
    const { limit, amount, metric, source, at, known } = criterion;
    expect(() => speakBoth(limit)).not.toThrow();
    if (amount) {
      const first = limit.indexOf(amount);
      expect(first, 'the amount is not in its sentence').toBeGreaterThanOrEqual(0);
      expect(limit.slice(0, first), 'its figure is part of another').not.toMatch(/[\d{/.-]$/);
    }
    const rest = (amount ? limit.replace(amount, '') : limit).replace(/\{[^{}]*\}/g, '');
    expect(rest).not.toMatch(bareQuantity);
    if (known === 'read' || known === 'memory') {
      expect(source, 'a value from a publication names it').toBeDefined();
      expect(at, 'and the place in it').toBeDefined();
    } else expect(source, 'common practice has no publication').toBeUndefined();
    if (metric) expect(amount).toBeDefined();
  });

  it('starts inside its own current range', () => {
    const { procedure, electrodes } = exercise;
    const settings = [
      ...(procedure ? [procedure] : []),
      ...electrodes.filter((it) => it.current !== undefined),
    ];
    for (const { current = '', currentRange } of settings) {
      expect(currentRange, `${current} has no range`).toBeDefined();
      const [low, high] = (currentRange ?? ['', '']).map(amps) as [number, number];
      expect(amps(current)).toBeGreaterThanOrEqual(low);
      expect(amps(current)).toBeLessThanOrEqual(high);
    }
  });

  it('has a procedure wherever an arc burns, and a position with it', () => {
    const burns = exercise.electrodes.length > 0;
    expect(exercise.procedure !== undefined).toBe(burns);
    if (burns) expect(exercise.position).not.toHaveLength(0);
  });

  it('travels so fast that an electrode of its run-out burns for 45 to 105 seconds', () => {
    const speed = exercise.procedure?.speed;
    const [runOut] = exercise.numbers.flatMap(({ given }) => given.runOut ?? []);
    if (!speed || !runOut) return;
    const size = (text: string, unit: 'in' | 'in/min') => {
      const read = readQuantity(text, unit);
      if ('problem' in read) throw new Error(`${text} ${read.problem}`);
      return read.value;
    };
    const seconds = [speed.from, speed.to].map(
      (at) => (60 * size(runOut, 'in')) / size(at, 'in/min'),
    );
    expect(Math.max(...seconds), `${runOut} at ${speed.from}`).toBeLessThan(105);
    expect(Math.min(...seconds), `${runOut} at ${speed.to}`).toBeGreaterThan(45);
  });

  it('pays for its metal, or names the exercise that does', () => {
    const { metalFrom = [], coupon } = exercise;
    for (const slug of metalFrom) {
      expect(slugs).toContain(slug);
      expect(exercises.find((it) => it.slug === slug)?.coupon).not.toHaveLength(0);
    }
    if (metalFrom.length > 0) expect(coupon).toHaveLength(0);
    for (const piece of coupon) {
      const pipe = piece.piece === 'pipe';
      expect(Boolean(piece.nps && piece.schedule)).toBe(pipe);
      expect(piece.section === undefined).toBe(pipe);
    }
  });

  it('assesses only what it practises', () => {
    for (const skill of exercise.assesses) expect(exercise.practises).toContain(skill);
    expect(exercise.assesses).not.toHaveLength(0);
  });

  it('asks somebody else to look at a groove before the cover', () => {
    if (!/^(groove|pipe-[256])/.test(exercise.slug)) return;
    const [fitUp, root, cover] = exercise.holdPoints;
    expect([fitUp, root, cover].join('|')).toMatch(/fit-up.*\|.*root.*\|.*cover/s);
  });

  it('judges a test coupon as a test coupon', () => {
    // The two-inches-in-twelve allowance and the 1/16 in of thick plate belong to production welds.
    const undercut = exercise.grading.filter(({ item }) => item === 'undercut');
    for (const { amount } of undercut) expect(amount).toBe('1/32 in');
  });
});

describe('the exercises together', () => {
  it('leave no skill practised without being assessed somewhere', () => {
    const assessed = new Set(exercises.flatMap((it) => it.assesses));
    const practised = new Set(exercises.flatMap((it) => it.practises));
    expect([...practised].filter((skill) => !assessed.has(skill))).toEqual([]);
  });

  it('assess a skill no later than the first exercise that relies on it', () => {
    const first = new Map<string, number>();
    for (const { lesson, assesses } of exercises)
      for (const skill of assesses)
        first.set(skill, Math.min(first.get(skill) ?? Infinity, atLesson(lesson)));
    for (const { slug, lesson, practises } of exercises)
      for (const skill of practises)
        expect(first.get(skill), `${slug} practises ${skill}`).toBeLessThanOrEqual(
          atLesson(lesson),
        );
  });

  it('let nobody strike before the gate', () => {
    const gate = exercises.find(({ slug }) => slug === 'safety-gate');
    expect(gate?.electrodes).toEqual([]);
    const burning = exercises.filter(({ electrodes }) => electrodes.length > 0);
    for (const { slug, lesson } of burning)
      expect(atLesson(lesson), slug).toBeGreaterThan(atLesson(gate?.lesson ?? ''));
  });
});
