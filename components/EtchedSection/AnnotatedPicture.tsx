import type { Point } from '../../lib/geometry/outline.ts';
import type { DrawnLabel, DrawnSection } from '../../lib/section/drawn-section.ts';
import type { NamedReading } from '../../lib/section/fillet-readings.ts';
import { printMeasured } from '../../lib/section/measured-text.ts';
import { printStated } from '../../lib/text/quantity-text.ts';
import { convert, type System, unitFor } from '../../lib/units.ts';
import SectionDrawing from './SectionDrawing.tsx';
import type { Size } from './view-window.ts';

export interface Annotated {
  picture: Size;
  /** The address of the picture; none for the drawing alone. */
  address: string | undefined;
  drawn: DrawnSection;
  readings: readonly NamedReading[];
  bar: { ends: readonly [Point, Point]; length: number } | undefined;
  system: System;
}

/** The whole picture with its lines, sizes and a scale bar, to print and to save. */
export default function AnnotatedPicture({
  picture: { width, height },
  address,
  drawn,
  readings,
  bar,
  system,
}: Annotated) {
  const unit = Math.max(width, height) / 640;
  const labels = drawn.labels.flatMap((label) => {
    const found = readings.find(({ name }) => name === label.reading);
    if (!found) return [];
    const text = `${label.text} ${printMeasured(found, found.unit, system)}`;
    return [{ text, ...beside(label, 14 * unit) }];
  });
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class="section-annotated"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label="The section with its measured lines and sizes drawn in, and a scale bar"
    >
      {address && <image href={address} width={width} height={height} />}
      <SectionDrawing drawn={drawn} unit={unit} />
      <g
        font-family="sans-serif"
        font-size={15 * unit}
        font-weight="700"
        text-anchor="middle"
        dominant-baseline="middle"
        fill="#ffffff"
        stroke="#000000"
        stroke-width={4 * unit}
        stroke-linejoin="round"
        paint-order="stroke"
      >
        {labels.map(({ text, at: [x, y], anchor }) => (
          <text key={text} x={x} y={y} text-anchor={anchor}>
            {text}
          </text>
        ))}
        {bar && <ScaleBar bar={bar} unit={unit} system={system} />}
      </g>
    </svg>
  );
}

/** A place for a label beside a line, on the side that is away from a point; on it where there is none. */
function beside({ between: [from, to], awayFrom }: DrawnLabel, by: number) {
  const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  if (!awayFrom) return { at, anchor: 'middle' as const };
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const across: Point = [(from[1] - to[1]) / length, (to[0] - from[0]) / length];
  const side = across[0] * (awayFrom[0] - at[0]) + across[1] * (awayFrom[1] - at[1]) > 0 ? -by : by;
  const [dx, dy] = [across[0] * side, across[1] * side];
  const upright = Math.abs(dx) > Math.abs(dy);
  const anchor: 'end' | 'start' | 'middle' = upright ? (dx < 0 ? 'end' : 'start') : 'middle';
  return {
    at: [at[0] + dx, at[1] + dy] as Point,
    anchor,
  };
}

function ScaleBar(props: { bar: NonNullable<Annotated['bar']>; unit: number; system: System }) {
  const { bar, unit, system } = props;
  const [[x1, y1], [x2, y2]] = bar.ends;
  const own = unitFor('mm', system);
  return (
    <g>
      <path
        d={`M${x1} ${y1}L${x2} ${y2}`}
        stroke="#000000"
        stroke-width={9 * unit}
        stroke-linecap="butt"
      />
      <path
        d={`M${x1} ${y1}L${x2} ${y2}`}
        stroke="#ffffff"
        stroke-width={5 * unit}
        stroke-linecap="butt"
      />
      <text x={(x1 + x2) / 2} y={Math.min(y1, y2) - 14 * unit}>
        {printStated(convert(bar.length, 'mm', own), own)}
      </text>
    </g>
  );
}

/** Lengths that a scale bar may have, in millimeters. */
export const barLengths = (system: System): number[] =>
  system === 'us'
    ? [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2].map((inches) => inches * 25.4)
    : [1, 2, 5, 10, 20, 50];
