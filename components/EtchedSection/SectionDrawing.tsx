import type { Point } from '../../lib/geometry/outline.ts';
import type { DrawnSection, LineKind } from '../../lib/section/drawn-section.ts';

interface Props {
  drawn: DrawnSection;
  /** Pixels of the picture for a unit of stroke width. */
  unit: number;
}

const strokes: Readonly<Record<LineKind, { color: string; dashes?: readonly number[] }>> = {
  plate: { color: '#ffffff' },
  chord: { color: '#ffffff', dashes: [1, 5] },
  throat: { color: '#ffffff', dashes: [7, 5] },
  face: { color: '#ffd84d' },
  fusion: { color: '#7fd4ff', dashes: [10, 4] },
};

/**
 * The measured lines over the picture. Fixed colors, light on dark edges: they lie on a photograph,
 * not on the page, and are saved with it. Solid, dashed and dotted tell them apart without color.
 */
export default function SectionDrawing({ drawn, unit }: Props) {
  return (
    <g fill="none" stroke-linejoin="round" stroke-linecap="round">
      {drawn.areas.map(({ of, points }) => (
        <path
          d={path(points, true)}
          fill={of === 'deposit' ? '#ffd84d' : '#35b6ff'}
          fill-opacity="0.22"
        />
      ))}
      {drawn.lines.map(({ as, points }) => {
        const d = path(points);
        const { color, dashes } = strokes[as];
        return (
          <>
            <path d={d} stroke="#000000" stroke-width={4 * unit} stroke-opacity="0.7" />
            <path
              d={d}
              stroke={color}
              stroke-width={1.8 * unit}
              stroke-dasharray={dashes?.map((length) => length * unit).join(' ')}
            />
          </>
        );
      })}
    </g>
  );
}

const path = (points: readonly Point[], closed = false): string =>
  points.length < 2
    ? ''
    : `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}${closed ? 'Z' : ''}`;
