import Label from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';

/** Half the root opening on the sheet, and half a core wire: the hole is held a little wider than the gap. */
const [gap, core] = [9, 11];

const states = [
  { x: 54, hole: 5, name: 'it closes', change: ['slow down,', 'steeper'] },
  { x: 160, hole: core, name: 'right', change: ['both edges', 'melt back'] },
  { x: 266, hole: 20, name: 'it grows', change: ['whip longer,', 'lean more'] },
];

/** Three keyholes as the welder sees them, looking into the groove along the way of the weld. */
export default function Keyholes() {
  return (
    <Sketch
      height={212}
      name="A keyhole that closes, one that is right, and one that grows"
      caption={
        <>
          Looking into the groove; the weld goes up the picture. Solid is the gap with its hole,
          shaded is the weld. The dashed circle is the core wire. Common practice.
        </>
      }
    >
      {states.map(({ x, hole, name, change }) => (
        <g key={name}>
          <path
            d={`M${x - 40} 6V140M${x + 40} 6V140`}
            stroke="currentColor"
            stroke-width="0.8"
            opacity="0.6"
          />
          <path d={edges(x, hole)} fill="currentColor" />
          <path d={bead(x, hole)} class="weld-metal" stroke="currentColor" stroke-width="1.4" />
          <path d={ripples(x)} fill="none" stroke="currentColor" stroke-width="0.8" />
          <circle
            cx={x + 26}
            cy={24}
            r={core}
            fill="none"
            stroke="currentColor"
            stroke-width="1.2"
            stroke-dasharray="3 2"
          />
          <Label x={x} y={162} bold>
            {name}
          </Label>
          {change.map((line, at) => (
            <Label key={line} x={x} y={182 + 18 * at}>
              {line}
            </Label>
          ))}
        </g>
      ))}
    </Sketch>
  );
}

/** The open gap down to the hole, and the hole. */
const edges = (x: number, hole: number): string => {
  const half = Math.min(gap, hole);
  return `M${x - gap} 6H${x + gap}V58L${x + half} 68H${x - half}L${x - gap} 58ZM${x - hole} 68A${hole} ${hole} 0 1 1 ${x + hole} 68A${hole} ${hole} 0 1 1 ${x - hole} 68Z`;
};

/** Pool and bead behind the hole, from bevel to bevel. */
const bead = (x: number, hole: number): string =>
  `M${x - hole} 68A${hole} ${hole} 0 1 0 ${x + hole} 68Q${x + 30} 70 ${x + 30} 92V140H${x - 30}V92Q${x - 30} 70 ${x - hole} 68Z`;

const ripples = (x: number): string =>
  [104, 116, 128].map((y) => `M${x - 30} ${y}Q${x} ${y + 16} ${x + 30} ${y}`).join('');
