import { electrode } from '../Sketch/electrode.ts';
import { hatch } from '../Sketch/hatch.ts';
import Label from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import type { Point } from '../Sketch/scale.ts';

/** The pool from its top on the plate to its lower lip on the front of the shelf, by state. */
const states = [
  { x: 4, lip: [78, 56, 61, 57, 60, 70, 59, 80, 62, 80], name: 'tight lip', change: 'climb on' },
  {
    x: 112,
    lip: [78, 56, 58, 58, 51, 78, 47, 95, 60, 95],
    name: 'it swells',
    change: 'move up now',
  },
  {
    x: 220,
    lip: [78, 56, 60, 58, 54, 80, 44, 110, 50, 124, 57, 130, 59, 104],
    name: 'it lets go',
    change: 'stop, grind',
  },
];

/** The outline of a pool: from its first point through curves, and back along the shelf. */
const pool = (x: number, [fromX = 0, fromY = 0, ...rest]: readonly number[]): string => {
  const curves = rest.map((value, at) => (at % 2 === 0 ? x + value : value));
  return `M${x + fromX} ${fromY}Q${curves.join(' ')}L${x + 62} 76H${x + 78}Z`;
};

/** A bead that climbs, from the side: frozen bead, shelf and pool, with the lip that tells how it fares. */
export default function Shelf() {
  return (
    <Sketch
      height={206}
      name="The pool on its shelf from the side: with a tight lip, swelling, and letting go"
      caption={
        <>
          From the side; the plate is hatched, the bead below the shelf is frozen. Watch the lower
          lip. Common practice.
        </>
      }
    >
      {states.map(({ x, lip, name, change }) => {
        const plate: Point[] = [
          [x + 78, 8],
          [x + 94, 8],
          [x + 94, 156],
          [x + 78, 156],
        ];
        const { covering, core } = electrode(x + 66, 60, 187, 60);
        return (
          <g key={name}>
            <g fill="none" stroke="currentColor">
              <path d={hatch(plate)} stroke-width="0.7" opacity="0.55" />
              <path d={`M${plate.map((spot) => spot.join(' ')).join('L')}Z`} stroke-width="1.6" />
            </g>
            <path
              d={`M${x + 78} 156V76H${x + 62}Q${x + 58} 116 ${x + 60} 156Z`}
              class="weld-metal"
              stroke="currentColor"
              stroke-width="1.4"
            />
            <path d={pool(x, lip)} fill="currentColor" />
            <path d={core} stroke="currentColor" stroke-width="2.6" />
            <path
              d={covering}
              class="electrode-covering"
              stroke="currentColor"
              stroke-width="1.2"
            />
            <Label x={x + 48} y={178} bold>
              {name}
            </Label>
            <Label x={x + 48} y={196}>
              {change}
            </Label>
          </g>
        );
      })}
    </Sketch>
  );
}
