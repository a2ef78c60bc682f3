import { hatch } from './hatch.ts';
import type { Point, Scale } from './scale.ts';

/** Base metal in section: outlined and hatched. The outline is in millimeters. */
export default function Metal({ scale, outline }: { scale: Scale; outline: readonly Point[] }) {
  const onSheet = outline.map(([x, y]): Point => [scale.x(x), scale.y(y)]);
  return (
    <g fill="none" stroke="currentColor">
      <path d={hatch(onSheet)} stroke-width="0.7" opacity="0.55" />
      <path d={scale.path(outline)} stroke-width="1.6" />
    </g>
  );
}
