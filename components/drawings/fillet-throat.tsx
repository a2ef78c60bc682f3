import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Metal from '../Sketch/Metal.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { fitted, type Point } from '../Sketch/scale.ts';
import Weld from '../Sketch/Weld.tsx';

const inch = 25.4;

/** A fillet in section: two plates at their angle, both legs, and the throat from root to face. */
export default function FilletSection({ given, results }: DrawingProps) {
  const [a, b] = [(given.legA as number) * inch, (given.legB as number) * inch];
  const angle = ((given.angle as number) * Math.PI) / 180;
  const along = (length: number, offset = 0): Point => [
    length * Math.cos(angle) - offset * Math.sin(angle),
    length * Math.sin(angle) + offset * Math.cos(angle),
  ];
  const reach = 1.35 * Math.max(a, b);
  const plate = 0.45 * Math.max(a, b);
  const toeA: Point = [a, 0];
  const toeB = along(b);
  const foot = nearest(toeA, toeB);
  const lower: Point[] = [
    [-plate, 0],
    [reach, 0],
    [reach, -plate],
    [-plate, -plate],
  ];
  const upper: Point[] = [[0, 0], along(reach), along(reach, plate), along(0, plate)];
  const all = [...lower, ...upper, toeA, toeB];
  const scale = fitted(
    {
      left: Math.min(...all.map(([x]) => x)),
      right: Math.max(...all.map(([x]) => x)),
      bottom: -plate,
      top: Math.max(...all.map(([, y]) => y)),
    },
    { left: 12, right: 56, bottom: 34 },
    230,
  );
  const at = ([x, y]: Point) => [scale.x(x), scale.y(y)] as const;
  const throat = results.throat as number;
  return (
    <Sketch
      height={scale.height}
      name="Section of a fillet weld with its legs and its throat"
      caption={
        <>
          To scale. Legs <Size as="span" value={given.legA as number} unit="in" fraction={32} /> and{' '}
          <Size as="span" value={given.legB as number} unit="in" fraction={32} />, throat{' '}
          <Size as="span" value={throat} unit="in" />, face{' '}
          <Size as="span" value={results.faceWidth as number} unit="in" />.
        </>
      }
    >
      <Metal scale={scale} outline={upper} />
      <Metal scale={scale} outline={lower} />
      <Weld scale={scale} outline={[[0, 0], toeA, toeB]} />
      <path
        d={scale.path([[0, 0], foot], false)}
        stroke="currentColor"
        stroke-width="1.2"
        stroke-dasharray="4 3"
      />
      <Label x={scale.x(foot[0]) + 6} y={scale.y(foot[1]) - 4} anchor="start" bold>
        <Size value={throat} unit="in" />
      </Label>
      <Dimension from={at(toeA)} to={at([0, 0])} off={scale.factor * plate + 14}>
        <Size value={given.legA as number} unit="in" fraction={32} />
      </Dimension>
    </Sketch>
  );
}

/** The point of the face nearest to the root. */
function nearest([ax, ay]: Point, [bx, by]: Point): Point {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.min(1, Math.max(0, -(ax * dx + ay * dy) / (dx * dx + dy * dy)));
  return [ax + dx * share, ay + dy * share];
}
