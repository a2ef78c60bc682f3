/**
 * The test pipes that AWS D1.1 named up to the early 2000s, and the sizes that each pair of them
 * qualified (from memory).
 */
import type { Printed } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import type { QualifiedSizes } from './qualified-sizes.ts';

const size = (us: number, metric: number): PrintedFigure => ({ us, metric });

const namedPipes = [
  {
    pipes: [
      { outside: size(2.375, 60.3), wall: size(0.218, 5.54) },
      { outside: size(3.5, 88.9), wall: size(0.216, 5.49) },
    ],
    thickness: [size(0.063, 1.6), size(0.674, 17.1)] as const,
    diameter: [size(3 / 4, 19), size(4, 102)] as const,
  },
  {
    pipes: [
      { outside: size(6.625, 168.3), wall: size(0.562, 14.27) },
      { outside: size(8.625, 219.1), wall: size(0.5, 12.7) },
    ],
    thickness: [size(0.187, 4.7), 'unlimited'] as const,
    diameter: [size(4, 102), 'unlimited'] as const,
  },
];

/** A measured pipe is the named one within this share: wider than a caliper errs, narrower than the next size. */
const slack = 0.015;

const isSame = ({ value, system }: Printed, named: PrintedFigure): boolean =>
  Math.abs(value - named[system]) <= slack * named[system];

/** Throws NoAnswer for a pipe that those editions do not name. */
export function sizesByNamedPipe(wall: Printed, outside: Printed): QualifiedSizes {
  const row = namedPipes.find(({ pipes }) =>
    pipes.some((pipe) => isSame(outside, pipe.outside) && isSame(wall, pipe.wall)),
  );
  if (!row)
    throw new NoAnswer(
      'Outside diameter and wall are none of the test pipes that those editions name: NPS 2 Sch 80, NPS 3 Sch 40, NPS 6 Sch 120, NPS 8 Sch 80',
      'outsideDiameter',
    );
  return {
    thicknessFrom: row.thickness[0],
    thicknessTo: row.thickness[1],
    diameterFrom: row.diameter[0],
    diameterTo: row.diameter[1],
    cite: {
      source: 'aws-d1.1',
      at: 'editions to the early 2000s, standard pipe tests',
      known: 'memory',
    },
    notes: ['Editions to the early 2000s go by the named test pipe, and this is one of them.'],
  };
}
