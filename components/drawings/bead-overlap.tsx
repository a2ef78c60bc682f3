import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Metal from '../Sketch/Metal.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';
import { fitted, type Point } from '../Sketch/scale.ts';

const inch = 25.4;
const beads = 4;

/** A row of beads in section, each a parabola, with their spacing and the valley between crowns. */
export default function BeadRow({ given, results }: DrawingProps) {
  const width = (given.width as number) * inch;
  const height = (given.height as number) * inch;
  const pitch = (results.pitch as number) * inch;
  const valley = (results.valleyDepth as number) * inch;
  const plate = Math.max(height, width / 4);
  const right = pitch * (beads - 1) + width;
  const scale = fitted(
    { left: 0, right, bottom: -plate, top: height },
    { top: 40, bottom: 8 },
    170,
  );
  const crown = (index: number) => width / 2 + pitch * index;
  const between = (crown(0) + crown(1)) / 2;
  return (
    <Sketch
      height={scale.height}
      name="A row of overlapping beads on a plate, in section"
      caption={
        <>
          To scale. Spacing <Size as="span" value={results.pitch as number} unit="in" />, valley{' '}
          <Size as="span" value={results.valleyDepth as number} unit="in" digits={2} /> below the
          crowns before the metal flows, mean layer{' '}
          <Size as="span" value={results.layerHeight as number} unit="in" />.
        </>
      }
    >
      <Metal
        scale={scale}
        outline={[
          [0, 0],
          [right, 0],
          [right, -plate],
          [0, -plate],
        ]}
      />
      <path
        d={scale.path(rowOutline(width, height, pitch))}
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.6"
      />
      {Array.from({ length: beads - 1 }, (_, index) => (
        <path
          key={crown(index)}
          d={scale.path(hidden(width, height, crown(index), crown(index + 1)), false)}
          fill="none"
          stroke="currentColor"
          stroke-width="0.8"
          stroke-dasharray="3 3"
        />
      ))}
      <Dimension
        from={[scale.x(crown(1)), scale.y(height)]}
        to={[scale.x(crown(2)), scale.y(height)]}
        off={16}
      >
        <Size value={results.pitch as number} unit="in" />
      </Dimension>
      <path
        d={`M${scale.x(between)} ${scale.y(height)}V${scale.y(height - valley)}`}
        stroke="currentColor"
        stroke-width="3"
      />
      <Label x={scale.x(between)} y={round(scale.y(height) - 6)}>
        valley
      </Label>
    </Sketch>
  );
}

const parabola = (width: number, height: number, from: number) =>
  Math.max(0, height * (1 - (2 * from) ** 2 / width ** 2));

/** The upper edge of all beads together, closed along the plate. */
function rowOutline(width: number, height: number, pitch: number): Point[] {
  const right = pitch * (beads - 1) + width;
  const steps = 96;
  const top = Array.from({ length: steps + 1 }, (_, step): Point => {
    const x = (right * step) / steps;
    const heights = Array.from({ length: beads }, (_, index) =>
      parabola(width, height, x - width / 2 - pitch * index),
    );
    return [x, Math.max(...heights)];
  });
  return top;
}

/** The edge of a bead that the next one covers. */
function hidden(width: number, height: number, crown: number, next: number): Point[] {
  const from = (crown + next) / 2;
  const to = crown + width / 2;
  return Array.from({ length: 13 }, (_, step): Point => {
    const x = from + ((to - from) * step) / 12;
    return [x, parabola(width, height, x - crown)];
  });
}
