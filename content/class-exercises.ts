/** The exercises as a class plan counts them: sizes read, electrodes computed, metal weighed. */
import { electrodesNeeded } from '../components/Exercise/electrodes-needed.ts';
import type { ClassExercise, CouponPiece, RodLot, Stage } from '../lib/class/class-exercise.ts';
import { rodMass } from '../lib/class/rod-mass.ts';
import type { Nps, Schedule } from '../lib/tables/pipe-b36.10.ts';
import { readQuantity } from '../lib/text/quantity-text.ts';
import { convert } from '../lib/units.ts';
import { pipeSize, poundsPerFoot } from '../lib/welds/pipe-size.ts';
import { readExercises } from './read-exercises.ts';
import { readingOrder, type Unit } from './reading-order.ts';
import type { Exercise } from './schemas/exercise.ts';

const steel = 0.2836;
const early = ['before-the-arc', 'flat'];
const middle = ['flat-and-horizontal'];

/** In the order in which their lessons are read. */
export async function classExercises(): Promise<ClassExercise[]> {
  const places = readingOrder.flatMap((unit: Unit) =>
    unit.lessons.map((lesson) => ({ lesson, stage: stageOf(unit.id) })),
  );
  const all = readExercises();
  const ordered = places.flatMap(({ lesson, stage }, at) =>
    all
      .filter((exercise) => exercise.lesson === lesson)
      .map((exercise) => described(exercise, exercise.slug, at + 1, stage)),
  );
  return Promise.all(ordered);
}

const stageOf = (unit: string): Stage =>
  early.includes(unit) ? 'early' : middle.includes(unit) ? 'middle' : 'late';

async function described(
  exercise: Exercise,
  slug: string,
  lesson: number,
  stage: Stage,
): Promise<ClassExercise> {
  const { title, station, minutes, attempts, coupon, electrodes, joint, passes } = exercise;
  const work = joint.includes('pipe groove')
    ? 'pipe'
    : joint.includes('groove')
      ? 'groove'
      : joint.some((it) => it === 'tee' || it === 'lap' || it === 'corner')
        ? 'tee'
        : 'other';
  return {
    slug,
    title,
    lesson,
    stage,
    station,
    minutes,
    attempts,
    coupon: coupon.map(pieceOf),
    rods: await Promise.all(electrodes.map(lotOf)),
    work,
    ...(exercise.practises.includes('judge-bend') && { bends: true as const }),
    ...(passes !== undefined && { passes }),
  };
}

function pieceOf(piece: Exercise['coupon'][number]): CouponPiece {
  const rest = {
    length: inches(piece.length),
    count: piece.count,
    ...(piece.sides && { twoSided: true as const }),
    ...(piece.bevel && { bevel: piece.bevel }),
  };
  if (piece.nps && piece.schedule) {
    const { outside, wall } = pipeSize(piece.nps as Nps, piece.schedule as Schedule);
    return {
      section: `pipe NPS ${piece.nps} Sch ${piece.schedule}`,
      pipe: true,
      perInch: poundsPerFoot(outside.us, wall.us) / 12,
      ...rest,
    };
  }
  const sizes = (piece.section ?? '').split(/\s+x\s+/);
  const [thickness = 0, width = 0] = sizes.map(inches);
  return {
    section: `${piece.piece} ${sizes.map((size) => `{${size}}`).join(' × ')}`,
    perInch: thickness * width * steel,
    ...rest,
  };
}

async function lotOf(lot: Exercise['electrodes'][number]): Promise<RodLot> {
  return {
    kind: `${lot.classification} {${lot.diameter}}`,
    each: rodMass(lot.classification, inches(lot.diameter)),
    count: await electrodesNeeded(lot),
  };
}

function inches(text: string): number {
  const reading = readQuantity(text, 'in');
  if ('problem' in reading) throw new Error(`an exercise has a size that ${reading.problem}`);
  return convert(reading.value, reading.unit, 'in');
}
