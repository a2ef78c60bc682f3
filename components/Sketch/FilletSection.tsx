import type { ComponentChildren } from 'preact';
import Dimension from './Dimension.tsx';
import Label, { Size } from './Label.tsx';
import Metal from './Metal.tsx';
import Sketch, { round } from './Sketch.tsx';
import { fitted, type Point } from './scale.ts';
import Weld from './Weld.tsx';

interface Props {
  /** Along the lower plate and along the upper one, and the throat, in inches. */
  legA: number;
  legB: number;
  throat: number;
  /** The face from the lower toe to the upper one, the toes left out, in millimeters. */
  face?: readonly Point[];
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
  face: between = [],
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
  const face = [toeA, ...between, toeB];
  const all = [...lower, ...upper, ...face];
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
  /** The words on the throat stand clear of a face that bulges. */
  const [crownX, crownY] = between[between.length >> 1] ?? foot;
  const at = ([x, y]: Point) => [scale.x(x), scale.y(y)] as const;
  const square = Math.abs(degrees - 90) < 0.5;
  const side = 0.14 * Math.min(a, b);
  const turned = (turn: number, far: number) => [
    round(scale.x(0) + far * Math.cos((turn * Math.PI) / 180)),
    round(scale.y(0) - far * Math.sin((turn * Math.PI) / 180)),
  ];
  const radius = round(0.3 * Math.min(a, b) * scale.factor);
  const [wordX = 0, wordY = 0] = turned(0.2 * degrees, radius + 15);
  const corner: Point[] = [
    [side, 0],
    [side, side],
    [0, side],
  ];
  return (
    <Sketch
      height={scale.height}
      name="Section of a fillet weld, its legs and its throat"
      caption={caption}
    >
      <Metal scale={scale} outline={upper} />
      <Metal scale={scale} outline={lower} />
      <Weld scale={scale} outline={[[0, 0], ...face]} />
      <path
        d={
          scale.path([[0, 0], foot], false) +
          (between.length === 0 ? '' : scale.path([toeA, toeB], false))
        }
        stroke="currentColor"
        stroke-width="1.2"
        stroke-dasharray="4 3"
      />
      <Label
        x={scale.x(Math.max(foot[0], crownX)) + 6}
        y={scale.y(Math.max(foot[1], crownY)) - 4}
        anchor="start"
        bold
      >
        <Size value={throat} unit="in" />
      </Label>
      <Dimension from={at(toeA)} to={at([0, 0])} off={scale.factor * plate + 14}>
        <Size value={legA} unit="in" {...(fraction && { fraction })} />
      </Dimension>
      <Dimension from={at([0, 0])} to={at(toeB)} off={scale.factor * plate + 12}>
        <Size value={legB} unit="in" {...(fraction && { fraction })} />
      </Dimension>
      {square ? (
        <path d={scale.path(corner, false)} fill="none" stroke="currentColor" stroke-width="0.8" />
      ) : (
        <>
          <path
            d={`M${round(scale.x(0) + radius)} ${scale.y(0)}A${radius} ${radius} 0 0 0 ${turned(degrees, radius).join(' ')}`}
            fill="none"
            stroke="currentColor"
            stroke-width="0.8"
          />
          <Label x={wordX} y={wordY + 4}>
            {Math.round(degrees)}°
          </Label>
        </>
      )}
    </Sketch>
  );
}

/** The point of the face nearest to the root. */
function nearest([ax, ay]: Point, [bx, by]: Point): Point {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.min(1, Math.max(0, -(ax * dx + ay * dy) / (dx * dx + dy * dy)));
  return [ax + dx * share, ay + dy * share];
}
