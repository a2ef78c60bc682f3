/** The demo class on one evening, and what a class board knows of the exercises. */
import type { BoardExercise } from '../lib/class/standing.ts';
import { type ClassBoard, newLearner } from '../lib/files/class-board.ts';
import type { Coupon } from '../lib/files/learner-record.ts';
import { readQuantity } from '../lib/text/quantity-text.ts';
import { convert } from '../lib/units.ts';
import { readDemo } from './demo.ts';
import { readExercises } from './read-exercises.ts';
import { readingOrder, type Unit } from './reading-order.ts';
import type { Exercise } from './schemas/exercise.ts';

/** The evening on which the demo class is shown. */
export const demoDay = '2026-03-26';

const gate = 'safety-gate';
/** Exercises sized like a code's test plate or test pipe. */
const tests = ['groove-3g-one-inch', 'groove-4g-one-inch', 'pipe-6g-nps-6', 'pipe-6g-nps-2'];

/** In the order in which their lessons are read; what comes first in a lesson stands first. */
export async function boardExercises(): Promise<BoardExercise[]> {
  const all = readExercises();
  const lessons = readingOrder.flatMap((unit: Unit) => unit.lessons);
  return lessons.flatMap((lesson) =>
    all
      .filter((exercise) => exercise.lesson === lesson)
      .sort((a, b) => Number(tests.includes(a.slug)) - Number(tests.includes(b.slug)))
      .map(({ slug, title, station, electrodes, procedure }) => ({
        slug,
        title,
        station,
        largest: Math.max(0, ...electrodes.map(({ diameter }) => inches(diameter))),
        current: highestStart(procedure, electrodes),
        ...(tests.includes(slug) && { test: true as const }),
        ...(slug === gate && { gate: true as const }),
      })),
  );
}

export function demoBoard(): ClassBoard {
  const { shop, machines, learners, gate: signed } = readDemo();
  return {
    name: shop,
    code: 'AWS D1.1',
    learners: learners.map(({ learner, at, waiting, repeat, away, tested, here }) => {
      const coupon = (exercise: string, result: Coupon['result'], on: string): Coupon => ({
        exercise,
        on,
        result,
        readings: [],
        grader: result === 'waiting' ? '' : 'T',
        note: '',
      });
      return {
        ...newLearner(learner),
        at,
        here,
        coupons: [
          ...repeat.map((on) => coupon(at, 'repeat', on)),
          ...waiting.map((on) => coupon(at, 'waiting', on)),
        ],
        absences: away.map((on) => ({ on, minutes: 165 })),
        tested,
        gate: signed,
      };
    }),
    booths: machines.flatMap(({ booths, name, largest, most, current, setBy, offsets }) =>
      booths.map((booth) => ({
        booth: String(booth),
        machine: name,
        largest: inches(largest),
        most: amperes(most),
        current,
        setBy,
        ...(offsets[booth] !== undefined && { offset: amperes(offsets[booth]) }),
        down: false,
      })),
    ),
  };
}

function highestStart(
  procedure: Exercise['procedure'],
  electrodes: Exercise['electrodes'],
): number {
  const starts = [procedure?.current, ...electrodes.map(({ current }) => current)];
  return Math.max(0, ...starts.map((text) => (text ? amperes(text) : 0)));
}

const inches = (text: string): number => sizeIn(text, 'in');
const amperes = (text: string): number => sizeIn(text, 'A');

function sizeIn(text: string, unit: 'in' | 'A'): number {
  const reading = readQuantity(text, unit);
  if ('problem' in reading) throw new Error(`a size ${reading.problem}`);
  return convert(reading.value, reading.unit, unit);
}
