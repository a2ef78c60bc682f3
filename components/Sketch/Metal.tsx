import { hatch } from './hatch.ts';
import type { Point, Scale } from './scale.ts';

interface Props {
  scale: Scale;
  /** In millimeters. */
  outline: readonly Point[];
  /** The edges to draw, where some are left open because the metal goes on; all when left out. */
  edges?: readonly (readonly Point[])[];
}

/** Base metal in section: outlined and hatched. */
export default function Metal({ scale, outline, edges }: Props) {
  const onSheet = outline.map(([x, y]): Point => [scale.x(x), scale.y(y)]);
  return (
    <g fill="none" stroke="currentColor">
      <path d={hatch(onSheet)} stroke-width="0.7" opacity="0.55" />
      <path
        d={edges ? edges.map((edge) => scale.path(edge, false)).join('') : scale.path(outline)}
        stroke-width="1.6"
      />
    </g>
  );
}
