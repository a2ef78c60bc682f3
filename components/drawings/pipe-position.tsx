import { positionRegions } from '../../lib/geometry/position-regions.ts';
import { clockFace } from '../../lib/text/clock-text.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { dial } from '../Drawing/dial.ts';
import Handle, { typeInto } from '../Drawing/Handle.tsx';
import Arc from '../Sketch/Arc.tsx';
import { electrode } from '../Sketch/electrode.ts';
import { type Lean, type Position, pipeLeans } from '../Sketch/electrode-angles.ts';
import Label, { Size } from '../Sketch/Label.tsx';
import PositionRing, { around, ring } from '../Sketch/PositionRing.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

/** The joint as a clock: which position it has where, the electrode at one hour, and the pipe from the side. */
export default function PipeClock({ given, results }: DrawingProps) {
  const { pipeInclination, clockAngle } = given as Record<'pipeInclination' | 'clockAngle', number>;
  const { position, clock } = results as Record<'position' | 'clock', string>;
  const { axisInclination, faceRotation } = results as Record<string, number>;
  const lean = pipeLeans[position as Position];
  const travel = said(lean);
  const slope = Math.round(axisInclination as number);
  return (
    <Sketch
      height={420}
      name="The joint seen along the pipe as a clock, divided into positions, and the pipe from the side"
      handles={
        <>
          <Handle
            label="Round the joint"
            min={0}
            max={360}
            step={5}
            value={clockAngle}
            says={`${clock}, ${position}`}
            onMove={(value, handle) => typeInto('clockAngle', value, handle)}
          />
          <Handle
            label="Pipe"
            min={0}
            max={90}
            step={5}
            value={pipeInclination}
            says={`${Math.round(pipeInclination)}°`}
            onMove={(value, handle) => typeInto('pipeInclination', value, handle)}
          />
        </>
      }
      caption={
        <>
          Not to scale. From the top down, either side alike:{' '}
          {positionRegions(pipeInclination).map(({ position: name, to }, index) => (
            <>
              {index > 0 && ', '}
              {name} ({name[0]?.toUpperCase()}) to {clockFace(to)}
            </>
          ))}
          . The pipe rises at <Size as="span" value={pipeInclination} unit="deg" />. At {clock} the
          weld is {position}: slope <Size as="span" value={slope} unit="deg" />
          {faceRotation !== undefined && (
            <>
              , rotation <Size as="span" value={Math.round(faceRotation)} unit="deg" />
            </>
          )}
          . Electrode, by common practice and going up: {travel}.
        </>
      }
    >
      <PositionRing pipeInclination={pipeInclination} />
      <Tip clockAngle={clockAngle} lean={lean} />
      <Label x={ring.x} y={ring.y - 2} bold>
        {clock}
      </Label>
      <Label x={ring.x} y={ring.y + 16}>
        {position}
      </Label>
      <FromTheSide pipeInclination={pipeInclination} clockAngle={clockAngle} />
      <Label x={186} y={342} anchor="start">
        slope <Size value={slope} unit="deg" />
      </Label>
      {faceRotation !== undefined && (
        <Label x={186} y={364} anchor="start">
          rotation <Size value={Math.round(faceRotation)} unit="deg" />
        </Label>
      )}
      <Label x={186} y={386} anchor="start" bold>
        {travel}
      </Label>
    </Sketch>
  );
}

const said = ({ way, travel: [from, to] }: Lean): string => `${way} ${from}° to ${to}°`;

/** The electrode at its hour, going up; and the knob to take it round. */
function Tip({ clockAngle, lean }: { clockAngle: number; lean: Lean }) {
  const [tipX, tipY] = around(clockAngle, ring.outer + 2);
  const [knobX, knobY] = around(clockAngle, (ring.inner + ring.outer) / 2);
  const outward = 90 - clockAngle;
  /** Going up, a push leaves the stub behind, which is lower, and a drag takes it ahead. */
  const tilt = ((lean.travel[0] + lean.travel[1]) / 2) * (lean.way === 'push' ? -1 : 1);
  const ahead = clockAngle % 360 <= 180 ? 1 : -1;
  const { covering, core } = electrode(tipX, tipY, outward + ahead * tilt, 48);
  return (
    <>
      <path d={core} stroke="currentColor" stroke-width="2.6" />
      <path d={covering} class="electrode-covering" stroke="currentColor" stroke-width="1.2" />
      <circle
        cx={knobX}
        cy={knobY}
        r="13"
        class="electrode-covering"
        stroke="currentColor"
        stroke-width="3"
      />
      <circle
        cx={knobX}
        cy={knobY}
        r="22"
        fill="transparent"
        class="dial-knob"
        {...dial(ring.x, ring.y, (degrees, knob) => typeInto('clockAngle', degrees, knob))}
      />
    </>
  );
}

/** The pipe from three o'clock's side: the joint across it, and the hour on it. */
function FromTheSide(of: { pipeInclination: number; clockAngle: number }) {
  const [middleX, middleY, half, radius] = [96, 352, 58, 19];
  const turn = (of.pipeInclination * Math.PI) / 180;
  const at = (along: number, out: number): readonly [number, number] => [
    round(middleX + along * Math.cos(turn) - out * Math.sin(turn)),
    round(middleY - along * Math.sin(turn) - out * Math.cos(turn)),
  ];
  const path = (...points: (readonly [number, number])[]) =>
    `M${points.map((point) => point.join(' ')).join('L')}`;
  const [dotX, dotY] = at(0, radius * Math.cos((of.clockAngle * Math.PI) / 180));
  const near = of.clockAngle % 360 <= 180;
  const [lowX, lowY] = at(-half, -radius);
  return (
    <>
      <path
        d={`${path(at(-half, radius), at(half, radius), at(half, -radius), at(-half, -radius))}Z`}
        class="electrode-covering"
        stroke="currentColor"
        stroke-width="1.6"
      />
      <path d={path(at(0, radius), at(0, -radius))} stroke="currentColor" stroke-width="5" />
      <circle
        cx={dotX}
        cy={dotY}
        r="6"
        class={near ? undefined : 'electrode-covering'}
        fill={near ? 'currentColor' : undefined}
        stroke="currentColor"
        stroke-width="2"
      />
      {of.pipeInclination > 10 && (
        <>
          <path
            d={`M${lowX} ${lowY}H${round(lowX + 62)}`}
            stroke="currentColor"
            stroke-width="0.8"
            stroke-dasharray="3 3"
          />
          <Arc x={lowX} y={lowY} radius={44} from={0} to={of.pipeInclination} off={18}>
            <Size value={Math.round(of.pipeInclination)} unit="deg" />
          </Arc>
        </>
      )}
      <Label x={at(0, radius + 14)[0]} y={round(at(0, radius + 14)[1] + 4.5)}>
        12
      </Label>
    </>
  );
}
