import type { ComponentChildren } from 'preact';
import Dimension from './Dimension.tsx';
import Label, { Size } from './Label.tsx';
import Metal from './Metal.tsx';
import Sketch from './Sketch.tsx';
import { fitted, type Point } from './scale.ts';
import Weld from './Weld.tsx';

interface Props {
  /** Along the lower plate and along the upper one, and the throat, in inches. */
  legA: number;
  legB: number;
  throat: number;
  /** Between the plates, in degrees. */
  angle: number;
  /** Legs that were measured print as the rule shows them, to this fraction. */
  fraction?: 32;
  caption: ComponentChildren;
}

const inch = 25.4;

/** A fillet in section: two plates at their angle, both legs, and the throat from root to face. */
export default function FilletSection({
  legA,
  legB,
  throat,
  angle: degrees,
  fraction,
  caption,
}: Props) {
  const [a, b] = [legA * inch, legB * inch];
  const angle = (degrees * Math.PI) / 180;
  const along = (length: number, offset = 0): Point => [
    length * Math.cos(angle) - offset * Math.sin(angle),
    length * Math.sin(angle) + offset * Math.cos(angle),
  ];
  const reach = 1.35 * Math.max(a, b);
  const plate = 0.45 * Math.max(a, b);
  const toeA: Point = [a, 0];
  const toeB = along(b);
  const foot = nearest(toeA, toeB);
  /** The end of the upper plate is cut to lie on the lower one. */
  const heel = along(Math.min(0.9 * reach, Math.max(-plate, -plate / Math.tan(angle))), plate);
  const left = Math.min(-plate, heel[0] - plate / 4);
  const lower: Point[] = [
    [left, 0],
    [reach, 0],
    [reach, -plate],
    [left, -plate],
  ];
  const upper: Point[] = [[0, 0], along(reach), along(reach, plate), heel];
  const all = [...lower, ...upper, toeA, toeB];
  const scale = fitted(
    {
      left: Math.min(...all.map(([x]) => x)),
      right: Math.max(...all.map(([x]) => x)),
      bottom: -plate,
      top: Math.max(...all.map(([, y]) => y)),
    },
    { left: 78, right: 26, bottom: 34 },
    230,
  );
  const at = ([x, y]: Point) => [scale.x(x), scale.y(y)] as const;
  const turned = (share: number, radius: number): Point => [
    radius * Math.cos(angle * share),
    radius * Math.sin(angle * share),
  ];
  const arc = Array.from({ length: 9 }, (_, step) => turned(step / 8, 0.3 * Math.min(a, b)));
  const arcLabel = turned(0.22, 0.34 * Math.min(a, b));
  return (
    <Sketch
      height={scale.height}
      name="Section of a fillet weld with its legs and its throat"
      caption={caption}
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
        <Size value={legA} unit="in" {...(fraction && { fraction })} />
      </Dimension>
      <Dimension from={at([0, 0])} to={at(toeB)} off={scale.factor * plate + 12}>
        <Size value={legB} unit="in" {...(fraction && { fraction })} />
      </Dimension>
      <path d={scale.path(arc, false)} fill="none" stroke="currentColor" stroke-width="0.8" />
      <Label x={scale.x(arcLabel[0])} y={scale.y(arcLabel[1]) + 4} anchor="start">
        {Math.round(degrees)}°
      </Label>
    </Sketch>
  );
}

/** The point of the face nearest to the root. */
function nearest([ax, ay]: Point, [bx, by]: Point): Point {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.min(1, Math.max(0, -(ax * dx + ay * dy) / (dx * dx + dy * dy)));
  return [ax + dx * share, ay + dy * share];
}
