import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import Both from '../Units/Both.tsx';

/** The symbol of a fillet on the arrow side, with its arrow on the joint. As in AWS A2.4. */
export default function FilletSymbol() {
  return (
    <Sketch
      height={92}
      name="A fillet symbol, its arrow on the corner of a tee"
      caption="Below the line: weld the side that the arrow points to."
    >
      <Plate outline={box(34, 8, 10, 54)} />
      <Plate outline={box(6, 62, 68, 10)} />
      <path d="M312 32H140L46 60" fill="none" stroke="currentColor" stroke-width="1.6" />
      <path d="M45 61L54 53L57 61Z" fill="currentColor" />
      <path d="M210 32V54L232 32" fill="none" stroke="currentColor" stroke-width="2" />
      <Label x={204} y={50} anchor="end" bold>
        <Both as="tspan" us="5/16" metric="8" />
      </Label>
      <Label x={240} y={50} anchor="start" bold>
        <Both as="tspan" us="8" metric="200" />
      </Label>
      <Label x={190} y={80}>
        leg
      </Label>
      <Label x={254} y={80}>
        length
      </Label>
      <path d="M190 66V56M250 66V56" stroke="currentColor" />
    </Sketch>
  );
}
