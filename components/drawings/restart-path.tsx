import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';

/** The way of the tip at a restart, seen from the side: ahead, back to the rear edge, wait, go. */
export default function RestartPath() {
  return (
    <Sketch
      height={146}
      name="A restart from the side, in four steps"
      caption="Not to scale. The crater lies between the full bead and its thin front lip."
    >
      <Plate outline={box(4, 112, 312, 18)} spacing={18} />
      <path
        d="M4 112V90Q60 84 112 88Q124 90 130 100Q142 110 162 104Q172 104 178 112Z"
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.6"
      />
      <g fill="none" stroke="currentColor" stroke-width="1.6">
        <path d="M254 110l-8 -9M254 110v-12M254 110l8 -9" />
        <path d="M246 88H134M141 83l-8 5l8 5" stroke-dasharray="5 4" />
        <path d="M124 46V80M124 46H306M299 41l8 5l-8 5" />
      </g>
      <Label x={254} y={92} anchor="start" bold>
        1 strike
      </Label>
      <Label x={190} y={78} bold>
        2 come back
      </Label>
      <Label x={118} y={66} anchor="end" bold>
        3 wait
      </Label>
      <Label x={215} y={36} bold>
        4 go, over the strike
      </Label>
      <Label x={50} y={106}>
        full bead
      </Label>
    </Sketch>
  );
}
