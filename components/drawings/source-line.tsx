import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

const [left, top, width, height] = [40, 24, 260, 180];
const numbers = (of: Record<string, unknown>) => of as Record<string, number>;

/** Volts over amperes: the machine's line, and where this arc and one twice as long burn on it. */
export default function MachineAndArc({ given, results }: DrawingProps) {
  const open = given.openCircuitVoltage as number;
  const short = given.shortCircuitCurrent as number;
  const { arcVoltageAtZero = 0, voltsPerMm = 0, arcLength = 0 } = numbers(given);
  const { voltage = 0, current = 0, power = 0 } = numbers(results);
  const x = (amperes: number) => round(left + (width * amperes) / short);
  const y = (volts: number) => round(top + height * (1 - volts / open));
  const longVoltage = arcVoltageAtZero + voltsPerMm * arcLength * 2;
  const longCurrent = short * (1 - longVoltage / open);
  const burns = longCurrent > 0;
  return (
    <Sketch
      height={250}
      name="Voltage over current: the line of the machine and the points where the arc burns"
      caption={
        <>
          Volts upward, amperes to the right. The arc burns at{' '}
          <Size as="span" value={voltage} unit="V" digits={2} /> and{' '}
          <Size as="span" value={current} unit="A" digits={2} />; the shaded area is its power,{' '}
          <Size as="span" value={power} unit="kW" digits={2} />.{' '}
          {burns ? (
            <>
              Twice as long, dashed: <Size as="span" value={longVoltage} unit="V" digits={2} />,{' '}
              <Size as="span" value={longCurrent} unit="A" digits={2} />,{' '}
              <Size as="span" value={(longVoltage * longCurrent) / 1000} unit="kW" digits={2} />.
            </>
          ) : (
            'Twice as long, it would go out.'
          )}
        </>
      }
    >
      <path
        d={`M${left} ${y(0)}L${left} ${y(voltage)}L${x(current)} ${y(voltage)}L${x(current)} ${y(0)}Z`}
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.2"
      />
      {burns && (
        <path
          d={`M${left} ${y(longVoltage)}L${x(longCurrent)} ${y(longVoltage)}L${x(longCurrent)} ${y(0)}`}
          fill="none"
          stroke="currentColor"
          stroke-width="1.2"
          stroke-dasharray="4 3"
        />
      )}
      <path
        d={`M${left} ${top - 8}L${left} ${y(0)}L${left + width + 8} ${y(0)}`}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
      />
      <path
        d={`M${x(0)} ${y(open)}L${x(short)} ${y(0)}`}
        stroke="currentColor"
        stroke-width="2.4"
      />
      <circle cx={x(current)} cy={y(voltage)} r="4.5" fill="currentColor" />
      <Label
        x={Math.min(x(current) + 8, 276)}
        y={y(voltage) - (current > short * 0.85 ? 24 : 6)}
        anchor="start"
        bold
      >
        <Size value={voltage} unit="V" digits={2} />
      </Label>
      <Label x={left + 8} y={top + 2} anchor="start">
        <Size value={open} unit="V" /> with no arc
      </Label>
      <Label x={x(current)} y={y(0) + 17} bold anchor="middle">
        <Size value={current} unit="A" digits={2} />
      </Label>
      <Label x={x(short)} y={y(0) + 34} anchor="end">
        <Size value={short} unit="A" /> shorted
      </Label>
    </Sketch>
  );
}
