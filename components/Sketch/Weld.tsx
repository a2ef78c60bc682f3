import Label from './Label.tsx';
import type { Point, Scale } from './scale.ts';

interface Props {
  scale: Scale;
  /** In millimeters. */
  outline: readonly Point[];
  /** Its place in the order of passes. */
  number?: number;
  /** The number in small letters. */
  small?: boolean;
  /** Where the number stands; the middle of the outline when left out. */
  at?: Point;
  /** Not run yet: an outline without metal. */
  ghost?: boolean;
}

/** A pass in section: filled with the color of weld metal, numbered in the order it is run. */
export default function Weld(props: Props) {
  const { scale, outline, number, small, at = middle(outline), ghost } = props;
  if (ghost)
    return (
      <path
        d={scale.path(outline)}
        fill="none"
        stroke="currentColor"
        stroke-width="0.6"
        stroke-dasharray="2 3"
      />
    );
  return (
    <>
      <path
        d={scale.path(outline)}
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.6"
        stroke-linejoin="round"
      />
      {number !== undefined && (
        <Label x={scale.x(at[0])} y={scale.y(at[1]) + (small ? 3 : 4.5)} bold small={small}>
          {number}
        </Label>
      )}
    </>
  );
}

/** The center of the area that an outline encloses. */
function middle(outline: readonly Point[]): Point {
  let area = 0;
  let x = 0;
  let y = 0;
  outline.forEach(([ax, ay], index) => {
    const [bx, by] = outline[(index + 1) % outline.length] as Point;
    const cross = ax * by - bx * ay;
    area += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  });
  return area === 0 ? (outline[0] ?? [0, 0]) : [x / (3 * area), y / (3 * area)];
}
