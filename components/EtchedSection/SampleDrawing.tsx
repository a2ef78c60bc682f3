import type { Point } from '../../lib/geometry/outline.ts';
import { filletPicture } from '../../lib/section/sample-fillet.ts';
import SampleRule, { Scratches } from './SampleRule.tsx';

const { width, height, plate, root, toeA, toeB, face, fusion, passLines, rule } = filletPicture;
const path = (points: readonly Point[], closed = true) =>
  `M${points.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`).join('L')}${closed ? 'Z' : ''}`;
const bent = ([[ax, ay], [bx, by], [cx, cy]]: readonly [Point, Point, Point]) =>
  `M${ax} ${ay}Q${bx} ${by} ${cx} ${cy}`;
const fusionLine = [toeA, ...fusion, toeB];

/**
 * The sample section, drawn like a photograph of one: gray plates, the band that the heat changed, a
 * darker weld of three passes, and a rule. Its colors are its own on any page and on paper.
 */
export default function SampleDrawing() {
  const flat = `M20 ${root[1]}H${width - 20}V${root[1] + plate}H20Z`;
  const upright = `M${root[0] - plate} 20H${root[0]}V${root[1]}H${root[0] - plate}Z`;
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label="Drawn section of a fillet weld in a tee, etched, with a millimeter rule under it"
    >
      <defs>
        <clipPath id="sample-plates">
          <path d={`${flat}${upright}`} />
        </clipPath>
        <Scratches id="sample-scratches" />
      </defs>
      <rect width={width} height={height} fill="#2b2e31" />
      <path d={flat} fill="#a9adaf" />
      <path d={upright} fill="#a3a7a9" />
      <g clip-path="url(#sample-plates)" fill="none">
        <path d={path(fusionLine, false)} stroke="#8b8f92" stroke-width="116" />
        <path d={path(fusionLine, false)} stroke="#bfc3c4" stroke-width="64" />
      </g>
      <path
        d={`M20 ${root[1]}H${width - 20}M${root[0]} 20V${root[1]}`}
        stroke="#3a3d40"
        stroke-width="2"
      />
      <path d={path([toeA, ...fusion, toeB, ...face.toReversed()])} fill="#6f7376" />
      <path d={path(fusionLine, false)} fill="none" stroke="#46494c" stroke-width="3" />
      {passLines.map((line) => (
        <path d={bent(line)} fill="none" stroke="#505356" stroke-width="2.5" />
      ))}
      <rect width={width} height={height} fill="url(#sample-scratches)" />
      <SampleRule {...rule} />
    </svg>
  );
}
