import { electrode } from '../Sketch/electrode.ts';
import { hatch } from '../Sketch/hatch.ts';
import Label from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import type { Point } from '../Sketch/scale.ts';

/** The weld's way: from the low end of the roof to the bend, and up the wall. */
const [low, bend, top] = [
  [18, 196],
  [166, 110.6],
  [166, 12],
] as const;
/** The bent bar stands off from it by its thickness, outside the bend. */
const bar: Point[] = [low, bend, top, [142, 12], [142, 96.7], [8, 174]];

/** Where the electrode is shown: along which leg, how far, leaning to how many degrees, with its words. */
const places = [
  { on: [92, 153.3], leans: -53, says: 'drag', at: [166, 218] },
  { on: [166, 110.6], leans: -30, says: 'square', at: [236, 174] },
  { on: [166, 56], leans: -7, says: 'push', at: [246, 52] },
] as const;

/** The bent bar from the side, the way of the bead under and up it, and how the electrode turns. */
export default function RoofAndWall() {
  return (
    <Sketch
      height={232}
      name="A bar that slopes like a roof and turns up like a wall, from the side, with the electrode in three places"
      caption={
        <>
          From the side; the bar that makes the tee stands behind the electrodes. Drag under the
          roof, square in the turn, push up the wall. Common practice.
        </>
      }
    >
      <g fill="none" stroke="currentColor">
        <path d={hatch(bar)} stroke-width="0.7" opacity="0.55" />
        <path d={`M${bar.map((spot) => spot.join(' ')).join('L')}Z`} stroke-width="1.6" />
      </g>
      {places.map(({ on, leans, says, at }) => {
        const { covering, core } = electrode(on[0], on[1], leans, 74);
        return (
          <g key={says}>
            <path d={core} stroke="currentColor" stroke-width="2.6" />
            <path
              d={covering}
              class="electrode-covering"
              stroke="currentColor"
              stroke-width="1.2"
            />
            <Label x={at[0]} y={at[1]} bold>
              {says}
            </Label>
          </g>
        );
      })}
      <path
        d={`M${low[0]} ${low[1]}H96`}
        stroke="currentColor"
        stroke-width="0.8"
        stroke-dasharray="3 3"
      />
      <Label x={70} y={190}>
        30°
      </Label>
      <path
        d="M118 158L146 142M137.9 142H146L141.9 149M290 90V34M285 41l5 -7l5 7"
        fill="none"
        stroke="currentColor"
        stroke-width="1.8"
      />
    </Sketch>
  );
}
