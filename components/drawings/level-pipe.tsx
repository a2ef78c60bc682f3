import { electrode } from '../Sketch/electrode.ts';
import { pipeLeans } from '../Sketch/electrode-angles.ts';
import Label from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

/** The middle of the pipe on its sheet, its bore and its outside. */
const ring = { x: 160, y: 152, inner: 66, outer: 98 };

/** A point at a clock angle, on the sheet. */
function around(degrees: number, radius: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [round(ring.x + radius * Math.sin(angle)), round(ring.y - radius * Math.cos(angle))];
}

/** Clock angles: the hours where the electrode is shown, the four tacks, and the way of both halves. */
const hours = [0, 30, 60, 90, 120, 150, 180];
const tacks = [15, 90, 195, 270];
const [start, end] = [195, -15];
const push = (pipeLeans.vertical.travel[0] + pipeLeans.vertical.travel[1]) / 2;

/** A level pipe in section: the electrode hour by hour on one half, the tacks, and the order of both halves. */
export default function LevelPipe() {
  return (
    <Sketch
      height={306}
      name="A level pipe from its end: the electrode hour by hour, the tacks and both halves"
      caption={
        <>
          Going up, the electrode looks at the middle of the pipe, and its tip leads by a push of{' '}
          {pipeLeans.vertical.travel.join(' to ')}°. Solid blocks are tacks. 1: the first half runs
          from past six to past twelve. 2: the other half joins it at both ends. Common practice.
        </>
      }
    >
      {[ring.inner, ring.outer].map((r) => (
        <circle
          key={r}
          cx={ring.x}
          cy={ring.y}
          r={r}
          fill="none"
          stroke="currentColor"
          stroke-width="1.4"
        />
      ))}
      <path
        d={tacks.map((at) => `M${arc(at - 6, at + 6, (ring.inner + ring.outer) / 2)}`).join('')}
        fill="none"
        stroke="currentColor"
        stroke-width="14"
      />
      {hours.map((at) => {
        const [x, y] = around(at, ring.outer + 1);
        const { covering, core } = electrode(x, y, 90 - at - push, 44);
        return (
          <g key={at}>
            <path d={core} stroke="currentColor" stroke-width="2.6" />
            <path
              d={covering}
              class="electrode-covering"
              stroke="currentColor"
              stroke-width="1.2"
            />
          </g>
        );
      })}
      {Array.from({ length: 12 }, (_, hour) => {
        const [x, y] = around(hour * 30, ring.inner - 12);
        return (
          <Label key={hour} x={x} y={Math.round(y + 4.5)}>
            {hour || 12}
          </Label>
        );
      })}
      <Way from={start} to={end} radius={38} name="1" at={90} />
      <Way from={188} to={338} radius={30} name="2" at={270} dashed />
    </Sketch>
  );
}

const arc = (from: number, to: number, radius: number): string => {
  const [far, turn] = [Math.abs(to - from) > 180 ? 1 : 0, to > from ? 1 : 0];
  return `${around(from, radius).join(' ')}A${radius} ${radius} 0 ${far} ${turn} ${around(to, radius).join(' ')}`;
};

/** An arrow along one half, and its number. */
function Way(of: {
  from: number;
  to: number;
  radius: number;
  name: string;
  at: number;
  dashed?: boolean;
}) {
  const { from, to, radius, name, at, dashed } = of;
  const back = to + (to > from ? -10 : 10);
  const head = [radius - 5, radius + 5].map((r) => around(back, r).join(' '));
  const [x, y] = around(at, radius - 12);
  return (
    <>
      <path
        d={`M${arc(from, to, radius)}`}
        fill="none"
        stroke="currentColor"
        stroke-width="1.8"
        stroke-dasharray={dashed ? '5 4' : undefined}
      />
      <path
        d={`M${head[0]}L${around(to, radius).join(' ')}L${head[1]}`}
        fill="none"
        stroke="currentColor"
        stroke-width="1.8"
      />
      <Label x={x} y={Math.round(y + 4.5)} bold>
        {name}
      </Label>
    </>
  );
}
