import type { ExposureTrace } from '../../lib/exposure/exposure-trace.ts';
import { durationText, wallClock } from '../../lib/text/clock-text.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { hatch } from '../Sketch/hatch.ts';
import Label from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

const [left, right, top, bottom, lane] = [42, 300, 24, 144, 24];

interface Props extends DrawingProps {
  /** Rows of the log before the first one that is given. */
  firstRow?: number;
  /** How a time is told; the clock of a log that begins at midnight is the standard. */
  tell?(hours: number): string;
}

/** The log as a time line: what the clock shows, its limit, and where the electrodes were. */
export default function ExposureLine({ given, results, firstRow = 0, tell = short }: Props) {
  const { limit, line, stays } = results.trace as ExposureTrace;
  const events = given.events as { event: string; at: number }[];
  const start = line[0]?.time ?? 0;
  const end = line.at(-1)?.time ?? start;
  const span = Math.max(end - start, 1);
  const highest = Math.min(2 * limit, Math.max(1.15 * limit, ...line.map(({ hours }) => hours)));
  const x = (time: number) => round(left + ((right - left) * (time - start)) / span);
  const y = (hours: number) =>
    round(bottom - ((bottom - top) * Math.min(hours, highest)) / highest);
  const now = line.at(-1) ?? { time: start, hours: 0 };
  const over = now.hours > highest;
  const corner = ({ time, hours }: { time: number; hours: number }) => `${x(time)} ${y(hours)}`;
  const box = (from: number, to: number): [number, number][] => [
    [x(from), bottom],
    [x(to), bottom],
    [x(to), bottom + lane],
    [x(from), bottom + lane],
  ];
  const inOven = stays.filter(({ place }) => place !== 'air');
  const low = y(now.hours) > bottom - 16;
  return (
    <Sketch
      height={bottom + lane + 38}
      name="Time line of the log: hours on the clock, its limit, and where the electrodes were"
      caption={
        <>
          Upward, hours on the clock; to the right, the time of day. Dashed: the limit of{' '}
          {durationText(limit)}. Hatched: in the oven; numbers: rows of the log. At {tell(now.time)}{' '}
          the clock shows {durationText(now.hours)}: {results.state as string}.
        </>
      }
    >
      {inOven.map(({ from, to }) => (
        <path key={from} d={hatch(box(from, to), 6)} stroke="currentColor" stroke-width="0.8" />
      ))}
      <path
        d={`M${x(start)} ${bottom}L${line.map(corner).join('L')}L${x(end)} ${bottom}Z`}
        class="weld-metal"
      />
      <path
        d={`M${x(start)} ${bottom}L${line.map(corner).join('L')}`}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linejoin="round"
      />
      <path
        d={`M${left} ${y(limit)}H${right + 12}`}
        stroke="currentColor"
        stroke-width="1.4"
        stroke-dasharray="6 4"
      />
      <path
        d={`M${left} ${top - 8}V${bottom + lane}H${right + 12}M${left} ${bottom}H${right + 12}${stays
          .map(({ to }) => `M${x(to)} ${bottom}v${lane}`)
          .join('')}`}
        fill="none"
        stroke="currentColor"
        stroke-width="1"
      />
      {stays.map(({ from, to, place }) => {
        const word = { air: 'out', oven: 'oven', bake: 'bake', container: 'shut' }[place];
        return (
          x(to) - x(from) > 34 && (
            <Label key={from} x={round((x(from) + x(to)) / 2)} y={bottom + 16.5}>
              {word}
            </Label>
          )
        );
      })}
      {spread(
        events.map(({ at }) => x(at)),
        14,
      ).map((index) => {
        const at = x(events[index]?.at ?? 0);
        return (
          <g key={index}>
            <path d={`M${at} ${bottom + lane}v6`} stroke="currentColor" stroke-width="1.6" />
            <Label x={at} y={bottom + lane + 18} bold>
              {firstRow + index + 1}
            </Label>
          </g>
        );
      })}
      <Label x={left - 6} y={y(limit) + 4.5} anchor="end" bold>
        {limit === 0.5 ? '½' : limit} h
      </Label>
      <Label x={left - 6} y={bottom + 4.5} anchor="end">
        0
      </Label>
      <circle cx={x(now.time)} cy={y(now.hours)} r="4.5" fill="currentColor" />
      <Label
        x={x(now.time) + (over ? 8 : 6)}
        y={low ? y(now.hours) - 9 : y(now.hours) - 8}
        anchor="end"
        bold
      >
        {durationText(now.hours)}
      </Label>
      <Label x={left} y={bottom + lane + 34} anchor="start">
        {tell(start)}
      </Label>
      {end > start && (
        <Label x={right + 12} y={bottom + lane + 34} anchor="end">
          {tell(end)}
        </Label>
      )}
    </Sketch>
  );
}

/** `1:00 the next day` without the day. */
const short = (hours: number): string => wallClock(hours).replace(/,? .*/, '');

/** Which of the places, from left to right, stand far enough apart to be numbered. */
function spread(places: readonly number[], apart: number): number[] {
  let last = -apart;
  return [...places.keys()].filter((index) => {
    const place = places[index] as number;
    if (place - last < apart) return false;
    last = place;
    return true;
  });
}
