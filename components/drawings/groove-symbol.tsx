import Label from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import Both from '../Units/Both.tsx';

/** The symbol of a V groove on a strip that comes off, with its arrow. As in AWS A2.4. */
export default function GrooveSymbol() {
  return (
    <Sketch
      height={112}
      name="A groove symbol with opening, angle and backing"
      caption="The groove of tonight. The strip comes off afterward."
    >
      <path
        d="M312 44H100L60 74M196 22V44M164 44V22H196M150 76L180 44L210 76"
        fill="none"
        stroke="currentColor"
        stroke-width="2"
      />
      <path d="M52 80L63 77L58 69Z" fill="currentColor" />
      <Label x={180} y={38} bold>
        R
      </Label>
      <Label x={180} y={74} bold>
        <Both as="tspan" us="1/4" metric="6" />
      </Label>
      <Label x={180} y={98} bold>
        45°
      </Label>
      <Label x={206} y={30} anchor="start">
        backing
      </Label>
      <Label x={222} y={72} anchor="start">
        opening
      </Label>
      <Label x={200} y={98} anchor="start">
        groove angle
      </Label>
    </Sketch>
  );
}
