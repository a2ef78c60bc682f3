import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Metal from '../Sketch/Metal.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { fitted, type Point } from '../Sketch/scale.ts';

const inch = 25.4;

/** A specimen bent to a U under its mandrel; the dashed middle keeps its length. */
export default function BendSection({ given, results }: DrawingProps) {
  const thickness = (given.thickness as number) * inch;
  const radius = ((given.mandrelDiameter as number) * inch) / 2;
  const outer = radius + thickness;
  const legs = 1.15 * radius;
  const scale = fitted(
    { left: -outer, right: outer, bottom: -outer, top: legs },
    { left: 30, right: 30, top: 42, bottom: 28 },
    210,
  );
  const bow = (r: number): Point[] => [
    [-r, legs],
    ...Array.from({ length: 25 }, (_, step): Point => {
      const angle = Math.PI * (1 + step / 24);
      return [r * Math.cos(angle), r * Math.sin(angle)];
    }),
    [r, legs],
  ];
  const at = (x: number, y: number) => [scale.x(x), scale.y(y)] as const;
  return (
    <Sketch
      height={scale.height}
      name="A bend specimen round its mandrel, in section"
      caption={
        <>
          To scale, without the thinning of the bend. Specimen{' '}
          <Size as="span" value={given.thickness as number} unit="in" />, mandrel{' '}
          <Size as="span" value={given.mandrelDiameter as number} unit="in" /> across: the outer
          face is stretched by <Size as="span" value={results.strain as number} unit="percent" />,
          the dashed middle not at all.
        </>
      }
    >
      <Metal scale={scale} outline={[...bow(outer), ...bow(radius).reverse()]} />
      <path
        d={scale.path(bow(radius + thickness / 2), false)}
        fill="none"
        stroke="currentColor"
        stroke-width="1.2"
        stroke-dasharray="5 4"
      />
      <circle
        cx={scale.x(0)}
        cy={scale.y(0)}
        r={Math.round(radius * scale.factor * 10) / 10}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
      />
      <Dimension from={at(-radius, legs)} to={at(radius, legs)} off={12}>
        <Size value={given.mandrelDiameter as number} unit="in" />
      </Dimension>
      <Label x={scale.x(0)} y={scale.y(-outer) + 18} bold>
        + <Size value={results.strain as number} unit="percent" />
      </Label>
    </Sketch>
  );
}
