/** Which row of the position figures holds. Angles in degrees; the face at 180° looks up. */
import { type PositionRow, positionRows } from '../tables/weld-positions.ts';

/** Sines and their inverses leave the last bits loose; a limit is met within this. */
const near = 1e-9;
const inside = (value: number, [from, to]: readonly [number, number]) =>
  value >= from - near && value <= to + near;

/** Whether a row holds for these angles, its limits included. */
export const rowHolds = (row: PositionRow, inclination: number, rotation: number): boolean =>
  inside(inclination, row.inclination) && row.rotation.some((range) => inside(rotation, range));

/** Inclination 0 to 90, rotation 0 to 360: the rows leave no gap there. */
export const positionRow = (
  weld: 'groove' | 'fillet',
  inclination: number,
  rotation: number,
): PositionRow =>
  positionRows[weld].find((row) => rowHolds(row, inclination, rotation)) as PositionRow;

/** A row in words, for the reasons under an answer. */
export const rowText = ({ area, position, inclination, rotation }: PositionRow): string =>
  `Area ${area}, ${position}: axis {${inclination[0]} deg} to {${inclination[1]} deg} from level, face ${rotation
    .map(([from, to]) => `{${from} deg} to {${to} deg}`)
    .join(' or ')}.`;
