import type { CollectionEntry } from 'astro:content';

type Exercise = CollectionEntry<'exercises'>['data'];

/** The settings of a practice procedure, each with its name. */
export function procedureFacts(
  procedure: NonNullable<Exercise['procedure']>,
  electrodes: Exercise['electrodes'],
): { name: string; text: string }[] {
  const { progression, interpass, voltage, speed } = procedure;
  const current = (from: string, [low, high]: readonly [string, string]) =>
    `Start from {${from}}; {${low}} to {${high}}`;
  return [
    { name: 'Steel', text: procedure.steel },
    { name: 'Polarity', text: procedure.polarity },
    ...currentsOf(procedure, electrodes).map(({ name, start, range }) => ({
      name,
      text: current(start, range),
    })),
    { name: 'Arc voltage to expect', text: `{${voltage.from}} to {${voltage.to}}` },
    ...(speed
      ? [{ name: 'Travel speed to expect', text: `{${speed.from}} to {${speed.to}}` }]
      : []),
    { name: 'Position', text: procedure.position },
    ...(progression === 'none' ? [] : [{ name: 'Progression', text: progression }]),
    { name: 'Preheat', text: procedure.preheat },
    { name: 'Between passes, at most', text: `{${interpass.max}}` },
    { name: 'Cleaning', text: procedure.cleaning },
    { name: 'Technique', text: procedure.technique },
  ];
}

interface Current {
  name: string;
  /** The electrode it belongs to; none where the procedure names one for all. */
  diameter: string | undefined;
  classification: string | undefined;
  /** It is for the root alone. */
  root: boolean;
  start: string;
  range: readonly [string, string];
}

/** Each electrode's current; where one has its own, the procedure's belongs to the other. */
export function currentsOf(
  procedure: NonNullable<Exercise['procedure']>,
  electrodes: Exercise['electrodes'],
): Current[] {
  const main = electrodes.some((it) => it.current) && electrodes.find((it) => !it.current);
  const nameOf = (it: Exercise['electrodes'][number]) =>
    [`Current, ${it.classification} {${it.diameter}}`, it.for].filter(Boolean).join(', ');
  return [
    {
      name: main ? nameOf(main) : 'Current',
      ...rodOf(main || electrodes[0]),
      start: procedure.current,
      range: procedure.currentRange,
    },
    ...electrodes.flatMap((it): Current[] =>
      it.current && it.currentRange
        ? [{ name: nameOf(it), ...rodOf(it), start: it.current, range: it.currentRange }]
        : [],
    ),
  ];
}

const rodOf = (it: Exercise['electrodes'][number] | undefined) => ({
  diameter: it?.diameter,
  classification: it?.classification,
  root: /^root\b/.test(it?.for ?? ''),
});
