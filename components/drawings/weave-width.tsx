import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Stated } from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

/** A core wire is this wide on the sheet, whatever its size: the picture is of proportions. */
const core = 21;
const [left, right] = [12, 232];

/** The tip's way from above: a stringer and a weave, each as wide as the shop limit lets it be. */
export default function WeavePaths({ given, results }: DrawingProps) {
  const diameter = given.diameter as number;
  const { stringerWidth, weaveWidth } = results as Record<'stringerWidth' | 'weaveWidth', number>;
  const stringer = (core * stringerWidth) / diameter;
  const weave = (core * weaveWidth) / diameter;
  const lanes = [
    { name: 'Stringer', y: 30 + (stringer + core) / 2, across: stringer, size: stringerWidth },
    {
      name: 'Weave',
      y: 78 + stringer + core + (weave + core) / 2,
      across: weave,
      size: weaveWidth,
    },
  ];
  const height = 100 + stringer + weave + 2 * core;
  return (
    <Sketch
      height={height}
      name="The way of the electrode’s tip from above, as a stringer and as a weave"
      caption={
        <>
          Widths to scale. Core <Stated as="span" value={diameter} unit="in" />, the circle. The tip
          stays within <Stated as="span" value={stringerWidth} unit="in" /> or{' '}
          <Stated as="span" value={weaveWidth} unit="in" />; dots are pauses. The bead, shaded,
          comes out about one core wider.
        </>
      }
    >
      {lanes.map(({ name, y, across, size }) => (
        <g key={name}>
          <path d={bead(y, (across + core) / 2)} class="weld-metal" stroke="currentColor" />
          <path
            d={`M${left + 6} ${round(y - across / 2)}H${right}M${left + 6} ${round(y + across / 2)}H${right}`}
            stroke="currentColor"
            stroke-width="0.8"
            stroke-dasharray="4 3"
          />
          <Label x={left} y={round(y - (across + core) / 2 - 8)} anchor="start" bold>
            {name}
          </Label>
          <Dimension from={[right + 12, y - across / 2]} to={[right + 12, y + across / 2]} off={8}>
            <Stated value={size} unit="in" />
          </Dimension>
        </g>
      ))}
      <Straight y={lanes[0]?.y ?? 0} />
      <Zigzag y={lanes[1]?.y ?? 0} across={weave} />
    </Sketch>
  );
}

/** A bead from above, its end round, with ripples bent against the travel. */
function bead(y: number, half: number): string {
  const [up, down] = [round(y - half), round(y + half)];
  return `M${left} ${up}H${right - 14}Q${right + 10} ${up} ${right + 10} ${round(y)}Q${right + 10} ${down} ${right - 14} ${down}H${left}Z`;
}

function Tip({ x, y }: { x: number; y: number }) {
  return (
    <circle
      cx={x}
      cy={round(y)}
      r={core / 2}
      fill="none"
      stroke="currentColor"
      stroke-width="1.6"
    />
  );
}

function Straight({ y }: { y: number }) {
  const [end, at] = [right - 24, round(y)];
  return (
    <>
      <path
        d={`M${left + 8} ${at}H${end - 14}M${end - 22} ${at - 5}l8 5l-8 5`}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
      />
      <Tip x={end} y={y} />
    </>
  );
}

function Zigzag({ y, across }: { y: number; across: number }) {
  const turns = 7;
  const x = (turn: number) => round(left + 14 + ((right - left - 42) * turn) / turns);
  const side = (turn: number) => round(y + (turn % 2 === 0 ? 1 : -1) * (across / 2));
  const points = Array.from({ length: turns + 1 }, (_, turn) => [x(turn), side(turn)] as const);
  return (
    <>
      <path
        d={`M${points.map((point) => point.join(' ')).join('L')}`}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linejoin="round"
      />
      <path
        d={points
          .slice(0, -1)
          .map((point) => `M${point.join(' ')}h0`)
          .join('')}
        stroke="currentColor"
        stroke-width="8"
        stroke-linecap="round"
      />
      <Tip x={x(turns)} y={side(turns)} />
    </>
  );
}
