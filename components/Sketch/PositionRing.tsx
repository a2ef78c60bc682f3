import { positionRegions, type Region } from '../../lib/geometry/position-regions.ts';
import Label from './Label.tsx';
import { round } from './Sketch.tsx';

/** The middle of the ring on its sheet, and its edges. */
export const ring = { x: 160, y: 152, inner: 66, outer: 98 } as const;

/** The joint of a pipe as a clock, divided into positions: by color, by pattern and by letter. */
export default function PositionRing({ pipeInclination }: { pipeInclination: number }) {
  const regions = positionRegions(pipeInclination);
  return (
    <>
      {regions.map((region) => (
        <Bands key={region.from} {...region} />
      ))}
      {Array.from({ length: 12 }, (_, hour) => {
        const [x, y] = around(hour * 30, ring.inner - 13);
        return (
          <Label key={hour} x={x} y={round(y + 4.5)}>
            {hour === 0 ? 12 : hour}
          </Label>
        );
      })}
    </>
  );
}

const tones = { flat: 0, horizontal: 0.3, vertical: 0.6, overhead: 1 };

/** A region on both halves of the pipe; over the top or the bottom they are one. */
function Bands({ position, from, to }: Region) {
  const sides = from === 0 && to === 180 ? [1] : [1, -1];
  const whole = sides.length === 1;
  return (
    <>
      <path
        d={sides.map((side) => band(side * from, side * to * (whole ? 2 : 1))).join('')}
        class="weld-metal"
        fill-opacity={tones[position]}
        stroke="currentColor"
        stroke-width="1.4"
      />
      <path
        d={[1, -1].map((side) => lining(position, side * from, side * to)).join('')}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
        opacity="0.7"
      />
      {to - from >= 9 &&
        [1, -1].map((side) => {
          const [x, y] = around((side * (from + to)) / 2, (ring.inner + ring.outer) / 2);
          return (
            <Label key={side} x={x} y={round(y + 4.5)} bold>
              {position[0]?.toUpperCase()}
            </Label>
          );
        })}
    </>
  );
}

/** A point at a clock angle, on the sheet. */
export function around(degrees: number, radius: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [round(ring.x + radius * Math.sin(angle)), round(ring.y - radius * Math.cos(angle))];
}

function band(from: number, to: number): string {
  return `M${arc(from, to, ring.outer)}L${arc(to, from, ring.inner)}Z`;
}

/** Along the circle in steps of at most six degrees. */
function arc(from: number, to: number, radius: number): string {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / 6));
  return Array.from({ length: steps + 1 }, (_, step) =>
    around(from + ((to - from) * step) / steps, radius).join(' '),
  ).join('L');
}

/** Flat is bare, horizontal goes round, vertical stands across, overhead does both. */
function lining(position: string, from: number, to: number): string {
  const third = (ring.outer - ring.inner) / 3;
  const round =
    position === 'horizontal' || position === 'overhead'
      ? [1, 2].map((step) => `M${arc(from, to, ring.inner + step * third)}`).join('')
      : '';
  if (position !== 'vertical' && position !== 'overhead') return round;
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  let across = '';
  for (let degrees = Math.ceil(low / 10) * 10; degrees < high; degrees += 10)
    across += `M${around(degrees, ring.inner).join(' ')}L${around(degrees, ring.outer).join(' ')}`;
  return round + across;
}
