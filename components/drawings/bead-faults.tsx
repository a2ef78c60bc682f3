import type { ComponentChildren } from 'preact';
import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import type { Point } from '../Sketch/scale.ts';

const sound = 'M22 36Q52 0 82 36Q52 58 22 36Z';

/** Under an undercut bead the plate has lost metal along both toes. */
const grooved: Point[] = [
  [2, 36],
  [14, 36],
  [24, 44],
  [80, 44],
  [90, 36],
  [102, 36],
  [102, 60],
  [2, 60],
];

interface FaultProps {
  at: readonly [column: number, row: number];
  name: string;
  bead: string;
  plate?: Point[];
  children?: ComponentChildren;
}

function Fault({
  at: [column, row],
  name,
  bead,
  plate = box(2, 36, 100, 24),
  children,
}: FaultProps) {
  return (
    <>
      <g transform={`translate(${4 + 105 * column} ${92 * row})`}>
        <Plate outline={plate} spacing={15} />
        <path d={bead} class="weld-metal" stroke="currentColor" stroke-width="1.4" />
        {children}
      </g>
      <Label x={56 + 105 * column} y={78 + 92 * row}>
        {name}
      </Label>
    </>
  );
}

/** Six discontinuities of a bead in section, as they look when it is cut across. */
export default function BeadFaults() {
  return (
    <Sketch
      height={178}
      name="Six discontinuities, each as a bead cut across"
      caption="Cut across and drawn large."
    >
      <Fault at={[0, 0]} name="undercut" bead="M24 44Q52 0 80 44Q52 58 24 44Z" plate={grooved} />
      <Fault at={[1, 0]} name="incomplete fusion" bead="M22 36Q52 0 82 36Z">
        <path d="M24 36H80" stroke="currentColor" stroke-width="4" />
      </Fault>
      <Fault
        at={[2, 0]}
        name="overlap"
        bead="M32 36L16 33Q6 30 14 26Q52 2 90 26Q98 30 88 33L72 36Q52 54 32 36Z"
      />
      <Fault at={[0, 1]} name="porosity" bead={sound}>
        <path
          d="M37 31a4 4 0 1 0 8 0a4 4 0 1 0 -8 0M52 25a3 3 0 1 0 6 0a3 3 0 1 0 -6 0M61 34a4 4 0 1 0 8 0a4 4 0 1 0 -8 0"
          fill="var(--paper)"
          stroke="currentColor"
        />
      </Fault>
      <Fault
        at={[1, 1]}
        name="slag inclusion"
        bead="M8 36Q32 4 56 34Q32 54 8 36ZM52 31Q74 4 98 36Q74 54 56 34Z"
      >
        <path d="M49 29L56 38L60 27Z" fill="currentColor" />
      </Fault>
      <Fault at={[2, 1]} name="crack" bead={sound}>
        <path
          d="M53 18L49 25L55 31L51 40M82 36L86 44L83 52"
          fill="none"
          stroke="currentColor"
          stroke-width="2"
        />
      </Fault>
    </Sketch>
  );
}
