import { hatch } from './hatch.ts';
import type { Point } from './scale.ts';

interface Props {
  /** On the sheet, not in millimeters: for drawings that are not to scale. */
  outline: readonly Point[];
  /** Between the lines of the lining. */
  spacing?: number;
}

/** Base metal of a drawing that is not to scale: outlined and hatched. */
export default function Plate({ outline, spacing = 12 }: Props) {
  return (
    <g fill="none" stroke="currentColor">
      <path d={hatch(outline, spacing)} stroke-width="0.7" opacity="0.55" />
      <path d={`M${outline.map((point) => point.join(' ')).join('L')}Z`} stroke-width="1.6" />
    </g>
  );
}

/** The corners of a level bar. */
export const box = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
