import { electrode } from '../Sketch/electrode.ts';
import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import type { Point } from '../Sketch/scale.ts';

const left: Point[] = [
  [4, 52],
  [44, 52],
  [61, 92],
  [4, 92],
];
const right = left.map(([x, y]): Point => [154 - x, y]);

function Groove() {
  return (
    <>
      <Plate outline={left} spacing={14} />
      <Plate outline={right} spacing={14} />
      <Plate outline={box(34, 92, 86, 14)} spacing={14} />
    </>
  );
}

/** A groove on a strip: where the tip goes in the root, and what a high bead leaves beside it. */
export default function GrooveFloor() {
  const { covering, core } = electrode(90, 88, 90, 76);
  return (
    <Sketch
      height={134}
      name="A root pass in the corner, and a high bead with slag on both sides"
      caption="Not to scale. The filled corners are slag."
    >
      <Groove />
      <path
        d="M54 74Q70 78 79 92Q64 99 57 88Z"
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.4"
      />
      <path
        d="M100 74Q84 77 76 87L79 92Q90 99 97 88Z"
        fill="none"
        stroke="currentColor"
        stroke-dasharray="2 3"
      />
      <path d={covering} class="electrode-covering" stroke="currentColor" stroke-width="1.2" />
      <path d={core} stroke="currentColor" stroke-width="2.6" />
      <Label x={77} y={126}>
        tip in the corner
      </Label>
      <g transform="translate(162 0)">
        <Groove />
        <path
          d="M59 90Q77 34 95 90Q77 98 59 90Z"
          class="weld-metal"
          stroke="currentColor"
          stroke-width="1.4"
        />
        <path d="M54 74L60 90L66 74ZM100 74L94 90L88 74Z" fill="currentColor" />
        <Label x={77} y={126}>
          a hump, two ditches
        </Label>
      </g>
    </Sketch>
  );
}
