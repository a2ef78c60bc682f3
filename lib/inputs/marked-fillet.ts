/**
 * The marks of an etched fillet on its picture, as a calculation asks for them. Coordinates are in any
 * one unit of the picture, across to the right and down; the scale says how long that unit is.
 */
import type { Inputs, ListInput, QuantityInput } from '../calculation.ts';

const coordinate = (label: string, symbol: string) =>
  ({
    label,
    symbol,
    unit: '1',
    limits: { min: -100_000, max: 100_000, why: 'no picture is larger' },
    example: '0',
    obtain: 'Point at it in the picture and read the coordinate.',
  }) as const satisfies QuantityInput;

const point = { x: coordinate('Across', 'x'), y: coordinate('Down', 'y') } as const;

const marks = (label: string, obtain: string, points: readonly (readonly [number, number])[]) =>
  ({
    label,
    list: point,
    example: points.map(([x, y]) => ({ x: String(x), y: String(y) })),
    obtain,
  }) as const satisfies ListInput;

export const markedFillet = {
  root: marks('Root: where the plates meet', 'The corner, one point.', [[200, 600]]),
  toes: marks(
    'Toes: plate A first, then plate B',
    'Where the face meets each plate, one point each.',
    [
      [520, 600],
      [200, 285],
    ],
  ),
  face: {
    ...marks('Points along the face', 'From toe to toe, five or more, closer where it bends.', [
      [478, 545],
      [425, 488],
      [372, 434],
      [316, 382],
      [258, 333],
    ]),
    optional: true,
  },
  fusion: {
    ...marks(
      'Points along the edge of the melted metal',
      'From toe to toe behind the root, seven or more. The etch shows it as a change of gray.',
      [
        [470, 630],
        [400, 645],
        [320, 643],
        [240, 634],
        [180, 622],
        [158, 570],
        [154, 500],
        [160, 420],
        [178, 340],
      ],
    ),
    optional: true,
  },
  plateA: {
    ...marks('Points on the face of plate A', 'Past the toe, where it was not melted.', [
      [560, 600],
      [680, 600],
    ]),
    optional: true,
  },
  plateB: {
    ...marks('Points on the face of plate B', 'Past the toe, where it was not melted.', [
      [200, 250],
      [200, 120],
    ]),
    optional: true,
  },
  scale: {
    label: 'Length of one unit of the picture',
    symbol: 's',
    unit: 'mm',
    limits: { min: 1e-5, max: 100, why: 'outside this it is no picture of a weld section' },
    example: { us: '0.000984', metric: '0.025' },
    obtain:
      'Lay a ruler beside the section before you take the picture. Divide a length on it by its length in the picture.',
  },
  scaleError: {
    label: 'Uncertainty of the scale',
    symbol: 'u_s',
    unit: 'percent',
    limits: { min: 0, max: 20, why: 'with a worse scale nothing is measured' },
    usual: { min: 0.1, max: 5, why: 'a ruler in the picture is good to about half a percent' },
    example: '0.5',
    default: '0.5',
    obtain:
      'Take the scale from two stretches of the ruler and compare. The ruler must lie in the plane of the section.',
  },
  markingError: {
    label: 'Marking error',
    symbol: 'u_m',
    unit: '1',
    limits: { min: 0, max: 1000, why: 'with larger errors nothing is measured' },
    example: '2',
    default: '2',
    obtain: 'In units of the picture. Mark one toe five times over and take half of the spread.',
  },
} as const satisfies Inputs;
