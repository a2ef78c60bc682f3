import { clockFace } from '../../lib/clock-text.ts';
import { positionRegions } from '../../lib/geometry/position-regions.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

const [middleX, middleY, inner, outer] = [160, 132, 66, 98];
/** Each position has its letter and its depth of gray, so that no color is needed. */
const tones = { flat: 0.03, horizontal: 0.14, vertical: 0.28, overhead: 0.45 };

/** The joint as a clock, seen along the pipe: which position it has where, and the point asked for. */
export default function PipeClock({ given, results }: DrawingProps) {
  const regions = positionRegions(given.pipeInclination as number);
  const clockAngle = given.clockAngle as number;
  const [tipX, tipY] = around(clockAngle, inner - 2);
  const [dotX, dotY] = around(clockAngle, outer + 14);
  return (
    <Sketch
      height={264}
      name="The joint seen along the pipe as a clock, divided into positions"
      caption={
        <>
          Not to scale. From the top down, either side alike:{' '}
          {regions.map(({ position, to }, index) => (
            <>
              {index > 0 && ', '}
              {position} ({position[0]?.toUpperCase()}) to {clockFace(to)}
            </>
          ))}
          . The pipe rises at <Size as="span" value={given.pipeInclination as number} unit="deg" />.
          At {results.clock as string} the weld is {results.position as string}.
        </>
      }
    >
      {regions.flatMap(({ position, from, to }) =>
        [1, -1].map((side) => (
          <path
            key={`${from} ${side}`}
            d={band(side * from, side * to)}
            fill="currentColor"
            fill-opacity={tones[position]}
            stroke="currentColor"
            stroke-width="1.4"
          />
        )),
      )}
      {regions.flatMap(({ position, from, to }) =>
        to - from < 9
          ? []
          : [1, -1].map((side) => {
              const [x, y] = around((side * (from + to)) / 2, (inner + outer) / 2);
              return (
                <Label key={`${from} ${side}`} x={x} y={round(y + 4.5)} bold>
                  {position[0]?.toUpperCase()}
                </Label>
              );
            }),
      )}
      {Array.from({ length: 12 }, (_, hour) => {
        const [x, y] = around(hour * 30, outer + 14);
        return (
          <Label key={hour} x={x} y={round(y + 4.5)}>
            {hour === 0 ? 12 : hour}
          </Label>
        );
      })}
      <path
        d={`M${middleX} ${middleY}L${tipX} ${tipY}`}
        stroke="currentColor"
        stroke-width="4"
        stroke-linecap="round"
      />
      <circle cx={middleX} cy={middleY} r="5" fill="currentColor" />
      <circle cx={dotX} cy={dotY} r="11" fill="none" stroke="currentColor" stroke-width="2" />
    </Sketch>
  );
}

/** A point at a clock angle, on the sheet. */
function around(degrees: number, radius: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [round(middleX + radius * Math.sin(angle)), round(middleY - radius * Math.cos(angle))];
}

/** A piece of the ring. */
function band(from: number, to: number): string {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / 6));
  const edge = (radius: number) =>
    Array.from({ length: steps + 1 }, (_, step) =>
      around(from + ((to - from) * step) / steps, radius).join(' '),
    );
  return `M${[...edge(outer), ...edge(inner).reverse()].join('L')}Z`;
}
