import { readQuantity } from '../../lib/text/quantity-text.ts';
import { stated } from '../../lib/text/say.ts';
import { convert } from '../../lib/units.ts';
import Dimension from '../Sketch/Dimension.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { fitted } from '../Sketch/scale.ts';
import Both from '../Units/Both.tsx';

interface Props {
  /** As an exercise states them: `8 in`. */
  length: string;
  width: string;
  /** On this side, one for each bead. */
  lines: number;
}

const inMillimeters = (text: string): number => {
  const read = readQuantity(text, 'in');
  if ('problem' in read) throw new TypeError(`“${text}” ${read.problem}`);
  return convert(read.value, read.unit, 'mm');
};

/** A plate for single beads from above: its sizes, and lines to lay beads on. */
export default function PlateFromAbove({ length, width, lines }: Props) {
  const [long, wide] = [inMillimeters(length), inMillimeters(width)];
  const scale = fitted(
    { left: 0, right: long, bottom: 0, top: wide },
    { left: 16, right: 58, top: 34, bottom: 12 },
    200,
  );
  const at = (bead: number) => (wide * (bead + 0.5)) / lines;
  return (
    <Sketch
      height={scale.height}
      name="The plate from above, with lines for single beads"
      caption="The plate is to scale. Draw the lines with soapstone, one for each bead."
    >
      <path
        d={scale.path([
          [0, 0],
          [long, 0],
          [long, wide],
          [0, wide],
        ])}
        fill="none"
        stroke="currentColor"
        stroke-width="1.6"
      />
      {Array.from({ length: lines }, (_, bead) => (
        <path
          key={bead}
          d={scale.path(
            [
              [6, at(bead)],
              [long - 6, at(bead)],
            ],
            false,
          )}
          fill="none"
          stroke="currentColor"
          stroke-width="0.8"
          stroke-dasharray="7 3 1.5 3"
        />
      ))}
      <Dimension from={[scale.x(0), scale.y(wide)]} to={[scale.x(long), scale.y(wide)]}>
        <Both as="tspan" {...stated(length)} />
      </Dimension>
      <Dimension from={[scale.x(long), scale.y(wide)]} to={[scale.x(long), scale.y(0)]}>
        <Both as="tspan" {...stated(width)} />
      </Dimension>
    </Sketch>
  );
}
