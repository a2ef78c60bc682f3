import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';

/** An etched slice of a fillet in three passes, with what is looked for on it. */
export default function EtchedSlice() {
  return (
    <Sketch
      height={206}
      name="An etched slice of a fillet"
      caption="A sound slice, not to scale. Dashed: the old edges. Passes by number."
    >
      <Plate outline={box(92, 8, 36, 132)} spacing={14} />
      <Plate outline={box(40, 140, 220, 36)} spacing={14} />
      <path
        d="M128 38Q104 60 110 98Q106 154 134 160Q186 168 214 140"
        fill="none"
        stroke="currentColor"
        stroke-dasharray="1 3"
        stroke-width="2.4"
      />
      <path
        d="M128 48Q116 66 120 96Q114 144 136 150Q180 156 202 140Q192 82 128 48Z"
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.6"
      />
      <path
        d="M120 94Q156 102 166 151M140 104Q162 94 181 98M128 140L84 108M119 76L84 60M176 162L186 186"
        fill="none"
        stroke="currentColor"
      />
      <path d="M128 48V140H202" fill="none" stroke="currentColor" stroke-dasharray="5 4" />
      <Label x={144} y={128} bold>
        1
      </Label>
      <Label x={178} y={126} bold>
        2
      </Label>
      <Label x={144} y={84} bold>
        3
      </Label>
      <Label x={80} y={62} anchor="end">
        weld edge
      </Label>
      <Label x={80} y={110} anchor="end">
        old corner
      </Label>
      <Label x={190} y={199}>
        heat-affected zone
      </Label>
    </Sketch>
  );
}
