/** The data of a booth sheet from an exercise and its lesson, at build. */
import type { CollectionEntry } from 'astro:content';
import type { ExerciseSheet, SheetNumbers, SheetPoint } from '../../lib/booth/exercise-sheet.ts';
import { sourceName } from '../../lib/text/source-name.ts';
import { plateForBeads } from '../Coupon/plate-for-beads.ts';
import { metalTexts, rodTexts } from '../Exercise/needs-texts.ts';
import { currentsOf, procedureFacts } from '../ExercisePage/procedure-facts.ts';

type Exercise = CollectionEntry<'exercises'>['data'];

/** More would not be read between two electrodes. */
const mostFaults = 4;

export async function makeSheet(
  exercise: CollectionEntry<'exercises'>,
  lesson: CollectionEntry<'lessons'>,
): Promise<ExerciseSheet> {
  const { data } = exercise;
  const { title, summary, position, joint, minutes, attempts, coupon, electrodes } = data;
  const plate = plateForBeads(data);
  return {
    slug: exercise.id,
    title,
    lesson: { slug: lesson.id, title: lesson.data.title },
    summary,
    position,
    joint,
    minutes,
    attempts,
    metal: metalTexts(coupon, false),
    rods: await rodTexts(electrodes),
    procedure: data.procedure ? procedureFacts(data.procedure, electrodes) : [],
    currents: data.procedure
      ? currentsOf(data.procedure, electrodes).map(({ name, start, range: [low, high], root }) => ({
          electrode: name,
          start,
          low,
          high,
          ...(root && { root }),
        }))
      : [],
    usual: usualOf(data),
    ...(plate && { plate }),
    numbers: numbersOf(data),
    holdPoints: data.holdPoints,
    selfCheck: data.selfCheck,
    handIn: data.handIn,
    points: data.grading.map(pointOf),
    faults: lesson.data.faults.slice(0, mostFaults).map(({ see, change }) => ({ see, change })),
  };
}

/** Those that the exercise names, then what holds for every arc of its electrode and current. */
function numbersOf({ numbers, procedure, electrodes, position }: Exercise): SheetNumbers[] {
  const [main] = electrodes;
  if (!procedure || !main) return numbers;
  const where = position.find((it) => ['flat', 'horizontal', 'vertical', 'overhead'].includes(it));
  const { diameter } = main;
  return [
    ...numbers,
    {
      of: 'filter-shade',
      given: { diameter, current: procedure.current },
      want: ['startShade', 'minimumShade'],
    },
    ...(where
      ? [{ of: 'arc-length-guide', given: { diameter, position: where }, want: ['longest'] }]
      : []),
  ];
}

function usualOf({ electrodes, procedure, coupon }: Exercise): ExerciseSheet['usual'] {
  const [thickness] = coupon[0]?.section?.split(/\s+x\s+/) ?? [];
  const metal = thickness ? { thickness } : {};
  const currents = procedure ? currentsOf(procedure, electrodes) : [];
  const root = currents.find((it) => it.root);
  const fill = currents.filter((it) => !it.root).at(-1);
  if (root && fill)
    return {
      ...metal,
      ...setting('rootclass', root.classification),
      ...setting('rootelectrode', root.diameter),
      rootcurrent: root.start,
      ...setting('class', fill.classification),
      ...setting('electrode', fill.diameter),
      current: fill.start,
    };
  return {
    ...(electrodes[0] && {
      class: electrodes[0].classification,
      electrode: electrodes[0].diameter,
    }),
    ...(procedure && { current: procedure.current }),
    ...metal,
  };
}

const setting = (word: string, text: string | undefined) =>
  text === undefined ? {} : { [word]: text };

function pointOf({ item, limit, amount, metric, source, at, known }: Exercise['grading'][number]) {
  const braced = metric ? `{${amount}|${metric}}` : `{${amount}}`;
  const point: SheetPoint = {
    item,
    limit: amount && limit.includes(amount) ? limit.replace(amount, braced) : limit,
    known,
  };
  if (amount) point.amount = amount;
  if (metric) point.metric = metric;
  if (source) point.source = `${sourceName(source)}${at ? `, ${at}` : ''}`;
  return point;
}
