import type { ComponentChildren } from 'preact';
import Label from './Label.tsx';
import { round } from './Sketch.tsx';

interface Props {
  /** Ends on the sheet. */
  from: readonly [number, number];
  to: readonly [number, number];
  /** How far to the side the line stands off, to the left of the way from `from` to `to`. */
  off?: number;
  children: ComponentChildren;
}

/** A dimension line with ticks and its value, standing off from what it measures. */
export default function Dimension({ from, to, off = 14, children }: Props) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [dy / length, -dx / length];
  const [ax, ay] = [round(from[0] + nx * off), round(from[1] + ny * off)];
  const [bx, by] = [round(to[0] + nx * off), round(to[1] + ny * off)];
  const tick = (x: number, y: number) =>
    `M${round(x - nx * 4)} ${round(y - ny * 4)}L${round(x + nx * 4)} ${round(y + ny * 4)}`;
  const lead = (x: number, y: number, tx: number, ty: number) =>
    `M${round(x + nx * 3)} ${round(y + ny * 3)}L${round(tx + nx * 4)} ${round(ty + ny * 4)}`;
  const beside = Math.abs(nx) > 0.4;
  return (
    <>
      <path
        d={`M${ax} ${ay}L${bx} ${by}${tick(ax, ay)}${tick(bx, by)}${lead(from[0], from[1], ax, ay)}${lead(to[0], to[1], bx, by)}`}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
      />
      <Label
        x={round((ax + bx) / 2 + (beside ? nx * 6 : 0))}
        y={round((ay + by) / 2 + (beside ? ny * 8 + 4 : ny * 5 + (ny > 0.5 ? 9 : 0)))}
        anchor={beside ? (nx > 0 ? 'start' : 'end') : 'middle'}
      >
        {children}
      </Label>
    </>
  );
}
