import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';

/** Four joints in section, and under them the parts of a groove on a strip. */
export default function JointParts() {
  return (
    <Sketch
      height={222}
      name="Tee, lap, corner and butt joint, and the parts of a groove on a strip"
      caption="Each joint with one weld. Below, the pair that you bevel today."
    >
      <Plate outline={box(34, 6, 10, 44)} />
      <Plate outline={box(8, 50, 62, 10)} />
      <Plate outline={box(88, 50, 48, 10)} />
      <Plate outline={box(108, 40, 46, 10)} />
      <Plate outline={box(176, 50, 48, 10)} />
      <Plate outline={box(166, 16, 10, 34)} />
      <Plate outline={box(246, 44, 32, 12)} />
      <Plate outline={box(282, 44, 32, 12)} />
      <path
        d="M44 38V50H56ZM108 40V50H98ZM166 50H176V60Q166 60 166 50ZM275 44Q280 38 285 44L282 56H278Z"
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.4"
      />
      <Label x={39} y={78}>
        tee
      </Label>
      <Label x={121} y={78}>
        lap
      </Label>
      <Label x={195} y={78}>
        corner
      </Label>
      <Label x={280} y={78}>
        butt
      </Label>
      <Plate
        outline={[
          [20, 128],
          [127, 128],
          [145, 172],
          [20, 172],
        ]}
      />
      <Plate
        outline={[
          [193, 128],
          [300, 128],
          [300, 172],
          [175, 172],
        ]}
      />
      <Plate outline={box(84, 172, 152, 16)} />
      <path
        d="M127 128L122 116Q160 104 198 116L193 128M145 172V122M137 140L108 122M145 188V202M175 188V202M145 197H175"
        fill="none"
        stroke="currentColor"
      />
      <Label x={160} y={104}>
        groove angle
      </Label>
      <Label x={64} y={120}>
        bevel angle
      </Label>
      <Label x={160} y={216}>
        root opening
      </Label>
      <Label x={242} y={185} anchor="start">
        backing
      </Label>
    </Sketch>
  );
}
