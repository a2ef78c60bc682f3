import { readQuantity } from '../../lib/text/quantity-text.ts';
import { convert } from '../../lib/units.ts';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Metal from '../Sketch/Metal.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { fitted } from '../Sketch/scale.ts';
import Both from '../Units/Both.tsx';

/** The code prints its least zone in both systems, and rounds it. */
const Zone = ({ as, inches }: { as: 'span' | 'tspan'; inches: number }) =>
  inches === 3 ? (
    <Both as={as} us={'3\u00a0in'} metric={'75\u00a0mm'} />
  ) : (
    <Size as={as} value={inches} unit="in" fraction={8} />
  );

/** A plate edge in section: how far to warm, and where to measure away from the flame. */
export default function PreheatZone({ thickness }: { thickness: string }) {
  const read = readQuantity(thickness, 'in');
  if ('problem' in read) throw new TypeError(`preheat-zone: thickness ${read.problem}`);
  const t = convert(read.value, read.unit, 'in');
  const zone = Math.max(3, t);
  const mm = (inches: number) => inches * 25.4;
  const half = mm(zone * 1.35);
  const scale = fitted(
    { left: -half, right: half, bottom: -mm(t), top: mm(0.2) },
    { top: 40, bottom: 44, left: 10, right: 10 },
    120,
  );
  const y = scale.y(-mm(t) / 2);
  return (
    <Sketch
      height={scale.height}
      name="Section across a joint: the zone to warm and the place to measure"
      caption={
        <>
          Warm at least <Zone as="span" inches={zone} /> to each side, and through the whole
          thickness of <Size as="span" value={t} unit="in" fraction={8} />. Heat from one side,
          measure on the other.
        </>
      }
    >
      <Metal
        scale={scale}
        outline={[
          [-half, 0],
          [-mm(0.12), 0],
          [-mm(0.12), -mm(t)],
          [-half, -mm(t)],
        ]}
      />
      <Metal
        scale={scale}
        outline={[
          [mm(0.12), 0],
          [half, 0],
          [half, -mm(t)],
          [mm(0.12), -mm(t)],
        ]}
      />
      <path
        d={`M${scale.x(-mm(zone))} ${scale.y(0)}H${scale.x(mm(zone))}V${scale.y(-mm(t))}H${scale.x(-mm(zone))}Z`}
        class="weld-metal"
        fill-opacity="0.55"
        stroke="currentColor"
        stroke-dasharray="5 4"
      />
      <Dimension from={[scale.x(0), scale.y(0)]} to={[scale.x(mm(zone)), scale.y(0)]} off={14}>
        <Zone as="tspan" inches={zone} />
      </Dimension>
      <Label x={scale.x(0)} y={y + 4} bold>
        joint
      </Label>
      <Label x={scale.x(-mm(zone) / 2)} y={scale.y(0) - 8}>
        ▼ measure here
      </Label>
      <Label x={scale.x(-mm(zone) / 2)} y={scale.y(-mm(t)) + 20}>
        ▲ flame here
      </Label>
    </Sketch>
  );
}
