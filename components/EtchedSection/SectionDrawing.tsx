import type { Point } from '../../lib/geometry/outline.ts';
import type { SectionLines } from '../../lib/section/section-lines.ts';

interface Props {
  lines: SectionLines;
  /** Pixels of the picture for a unit of stroke width. */
  unit: number;
}

/**
 * The measured lines over the picture. Fixed colors, light on dark edges: they lie on a photograph,
 * not on the page, and are saved with it. Solid, dashed and dotted tell them apart without color.
 */
export default function SectionDrawing({ lines, unit }: Props) {
  const { deposit, melted, chord, throat, face, fusion } = lines;
  const [root, toeA, toeB] = [deposit[0], chord[0], chord[1]] as [Point, Point, Point];
  return (
    <g fill="none" stroke-linejoin="round" stroke-linecap="round">
      <path d={path(deposit, true)} fill="#ffd84d" fill-opacity="0.22" />
      {melted.length > 0 && <path d={path(melted, true)} fill="#35b6ff" fill-opacity="0.22" />}
      {[
        { d: path([toeA, root, toeB]), color: '#ffffff', dashes: undefined },
        { d: path(chord), color: '#ffffff', dashes: [1, 5] },
        { d: path(throat), color: '#ffffff', dashes: [7, 5] },
        { d: path(face), color: '#ffd84d', dashes: undefined },
        { d: path(fusion), color: '#7fd4ff', dashes: [10, 4] },
      ].map(({ d, color, dashes }) => (
        <>
          <path d={d} stroke="#000000" stroke-width={4 * unit} stroke-opacity="0.7" />
          <path
            d={d}
            stroke={color}
            stroke-width={1.8 * unit}
            stroke-dasharray={dashes?.map((length) => length * unit).join(' ')}
          />
        </>
      ))}
    </g>
  );
}

const path = (points: readonly Point[], closed = false): string =>
  points.length < 2
    ? ''
    : `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}${closed ? 'Z' : ''}`;
