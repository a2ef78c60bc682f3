import { electrode } from '../Sketch/electrode.ts';
import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';

const outlines = [
  'M30 78Q44 85 50 98H30Z',
  'M66 98H50L37 85Q56 76 66 98Z',
  'M30 60V78L37 85Q45 80 54 84Q48 66 30 60Z',
];

/** Where the tip stands and how the electrode leans, in degrees from the bottom plate. Common practice. */
const aims = [
  { x: 34, y: 94, lean: 45, says: '45°' },
  { x: 51, y: 97, lean: 62, says: '55 to 70°' },
  { x: 32, y: 77, lean: 40, says: '35 to 45°' },
] as const;

/** Three passes of a horizontal fillet, one after the other: what lies there, and where the tip aims. */
export default function FilletAims() {
  return (
    <Sketch
      height={166}
      name="Where the electrode points in each of three passes"
      caption="Not to scale. The dotted line is the pass to be run. Angles from the bottom plate; common practice."
    >
      {aims.map(({ x, y, lean, says }, pass) => {
        const { covering, core } = electrode(x, y, lean, 74);
        return (
          <g key={says} transform={`translate(${106 * pass} 10)`}>
            <Plate outline={box(18, 12, 12, 86)} />
            <Plate outline={box(4, 98, 96, 14)} />
            {pass > 0 && (
              <path
                d={outlines.slice(0, pass).join('')}
                class="weld-metal"
                stroke="currentColor"
                stroke-width="1.4"
              />
            )}
            <path d={outlines[pass]} fill="none" stroke="currentColor" stroke-dasharray="2 3" />
            <path
              d={covering}
              class="electrode-covering"
              stroke="currentColor"
              stroke-width="1.2"
            />
            <path d={core} stroke="currentColor" stroke-width="2.6" />
            <Label x={52} y={132} bold>
              {`pass ${pass + 1}`}
            </Label>
            <Label x={52} y={149}>
              {says}
            </Label>
          </g>
        );
      })}
    </Sketch>
  );
}
