import type { Point } from '../../lib/geometry/outline.ts';
import { groovePicture } from '../../lib/section/sample-groove.ts';
import SampleRule, { Scratches } from './SampleRule.tsx';

const { width, height, front, back, toeA, toeB, rootA, rootB, edgeA, edgeB, rule } = groovePicture;
const { cap, rootBead, fusionA, fusionB, passLines } = groovePicture;
const round = (value: number) => Math.round(value * 10) / 10;
const path = (points: readonly Point[], closed = true) =>
  `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}${closed ? 'Z' : ''}`;
const bent = ([[ax, ay], [bx, by], [cx, cy]]: readonly [Point, Point, Point]) =>
  `M${round(ax)} ${round(ay)}Q${round(bx)} ${round(by)} ${round(cx)} ${round(cy)}`;
const [lineA, lineB] = [
  [toeA, ...fusionA, rootA],
  [toeB, ...fusionB, rootB],
];
const weld = [...lineA.toReversed(), ...cap, ...lineB, ...rootBead.toReversed()];

/**
 * The sample groove, drawn like a photograph of one: two plates, the band that the heat changed, a
 * darker weld of six passes, the ghost of the prepared edges, and a rule.
 */
export default function GrooveDrawing() {
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label="Drawn section of a V groove welded from one side, etched, with a millimeter rule under it"
    >
      <defs>
        <clipPath id="groove-plates">
          <path d={`M20 ${front}H${width - 20}V${back}H20Z`} />
        </clipPath>
        <Scratches id="groove-scratches" />
      </defs>
      <rect width={width} height={height} fill="#2b2e31" />
      <path d={`M20 ${front}H${width - 20}V${back}H20Z`} fill="#a9adaf" />
      <g clip-path="url(#groove-plates)" fill="none">
        {[lineA, lineB].map((line) => (
          <>
            <path d={path(line, false)} stroke="#8b8f92" stroke-width="116" />
            <path d={path(line, false)} stroke="#bfc3c4" stroke-width="64" />
          </>
        ))}
      </g>
      <path d={path(weld)} fill="#6f7376" />
      {[lineA, lineB].map((line) => (
        <path d={path(line, false)} fill="none" stroke="#46494c" stroke-width="3" />
      ))}
      {passLines.map((line) => (
        <path d={bent(line)} fill="none" stroke="#505356" stroke-width="2.5" />
      ))}
      {[edgeA, edgeB].map((edge) => (
        <path
          d={path(edge, false)}
          fill="none"
          stroke="#d6dadb"
          stroke-width="2"
          stroke-opacity=".55"
          stroke-dasharray="4 6"
        />
      ))}
      <rect width={width} height={height} fill="url(#groove-scratches)" />
      <SampleRule {...rule} />
    </svg>
  );
}
