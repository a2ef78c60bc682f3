import type { ComponentChildren } from 'preact';
import Label from './Label.tsx';
import { round } from './Sketch.tsx';

interface Props {
  /** Where the two lines meet, on the sheet. */
  x: number;
  y: number;
  radius: number;
  /** Degrees, counterclockwise from the right; `to` is more than `from` by less than 180. */
  from: number;
  to: number;
  /** How far beyond the arc the words stand. */
  off?: number;
  children: ComponentChildren;
}

/** An angle: the arc between two lines, and its words in the middle of it. */
export default function Arc({ x, y, radius, from, to, off = 14, children }: Props) {
  const at = (degrees: number, distance: number) => {
    const turn = (degrees * Math.PI) / 180;
    return [round(x + distance * Math.cos(turn)), round(y - distance * Math.sin(turn))] as const;
  };
  const [labelX, labelY] = at((from + to) / 2, radius + off);
  return (
    <>
      <path
        d={`M${at(from, radius).join(' ')}A${radius} ${radius} 0 0 0 ${at(to, radius).join(' ')}`}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
      />
      <Label x={labelX} y={round(labelY + 4.5)}>
        {children}
      </Label>
    </>
  );
}
