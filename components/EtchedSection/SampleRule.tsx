import type { Point } from '../../lib/geometry/outline.ts';

interface Props {
  from: Point;
  millimeters: number;
  /** Pixels of the picture for a millimeter. */
  step: number;
}

/** A millimeter rule under a drawn sample: its own colors on any page and on paper. */
export default function SampleRule({ from: [left, top], millimeters, step }: Props) {
  const ticks = Array.from({ length: millimeters + 1 }, (_, i) => i);
  return (
    <g>
      <rect x={left - 50} y={top} width={millimeters * step + 100} height="58" fill="#e9e6da" />
      <path
        d={ticks.map((i) => `M${left + i * step} ${top}v${i % 5 ? 16 : 26}`).join('')}
        stroke="#111"
        stroke-width="2"
      />
      <g font-family="sans-serif" font-size="22" text-anchor="middle" fill="#111">
        {ticks
          .filter((i) => i % 5 === 0)
          .map((i) => (
            <text x={left + i * step} y={top + 49}>
              {i === millimeters ? `${i} mm` : i}
            </text>
          ))}
      </g>
    </g>
  );
}

/** Grinding marks that were not polished away; one pattern a drawing, so that ids stay apart. */
export const Scratches = ({ id }: { id: string }) => (
  <pattern
    id={id}
    width="46"
    height="9"
    patternUnits="userSpaceOnUse"
    patternTransform="rotate(-24)"
  >
    <path d="M0 2H30M12 6H46" stroke="#fff" stroke-opacity=".16" />
  </pattern>
);
