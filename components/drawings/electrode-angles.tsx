import { type Joint, type Lean, leans, type Position } from '../Sketch/electrode-angles.ts';
import Label from '../Sketch/Label.tsx';
import Plate, { box } from '../Sketch/Plate.tsx';
import Sketch from '../Sketch/Sketch.tsx';

interface Props {
  joint: Joint;
  position: Position;
}

/** From where each view looks, by position; what is down in the world is down in the picture. */
const views: Record<Position, { end: string; side: string; turnEnd: string; turnSide: string }> = {
  flat: { end: 'along the weld', side: 'from the side', turnEnd: '', turnSide: '' },
  horizontal: { end: 'along the weld', side: 'from above', turnEnd: '', turnSide: '' },
  vertical: {
    end: 'from above',
    side: 'from the side',
    turnEnd: '',
    turnSide: 'rotate(-90 70 70)',
  },
  overhead: {
    end: 'along the weld',
    side: 'from the side',
    turnEnd: 'matrix(1 0 0 -1 0 140)',
    turnSide: 'matrix(1 0 0 -1 0 140)',
  },
};

/** Two views of the electrode: how it leans across the weld, and how it leans along it. */
export default function ElectrodeAngles({ joint, position }: Props) {
  const lean = leans[joint][position];
  const view = views[position];
  const onWall = position === 'horizontal' && joint !== 'tee';
  return (
    <Sketch
      height={196}
      name={`How the electrode leans: ${joint}, ${position}`}
      caption={
        <>
          Not to scale. Work angle {span(lean.work)}{' '}
          {joint === 'tee' ? 'from the first plate' : 'to the plate'}, travel angle{' '}
          {span(lean.travel)}, {lean.way}. Common practice.
        </>
      }
    >
      <g transform={onWall ? 'rotate(90 70 70)' : view.turnEnd || undefined}>
        <EndView joint={joint} lean={lean} />
      </g>
      <g transform="translate(170 0)">
        <g transform={view.turnSide || undefined}>
          <SideView lean={lean} />
        </g>
      </g>
      <Label x={70} y={164} bold>{`work ${span(lean.work)}`}</Label>
      <Label x={70} y={182}>
        {view.end}
      </Label>
      <Label x={240} y={164} bold>{`${lean.way} ${span(lean.travel)}`}</Label>
      <Label x={240} y={182}>
        {view.side}
      </Label>
    </Sketch>
  );
}

const span = ([from, to]: readonly [number, number]): string =>
  from === to ? `${from}°` : `${from} to ${to}°`;
const middle = ([from, to]: readonly [number, number]): number => (from + to) / 2;

/** An electrode with its tip at a point, `angle` from the ground line, counterclockwise. */
function Electrode({ x, y, angle }: { x: number; y: number; angle: number }) {
  return (
    <g transform={`rotate(${-angle} ${x} ${y})`}>
      <rect
        x={x + 5}
        y={y - 4}
        width="68"
        height="8"
        class="electrode-covering"
        stroke="currentColor"
        stroke-width="1.2"
      />
      <path d={`M${x + 8} ${y}H${x + 92}`} stroke="currentColor" stroke-width="2.6" />
    </g>
  );
}

/** An arc, counterclockwise, as path data; whole units will do on a drawing that is not to scale. */
function arc(x: number, y: number, radius: number, from: number, to: number): string {
  const at = (degrees: number) => {
    const turn = (degrees * Math.PI) / 180;
    return `${Math.round(x + radius * Math.cos(turn))} ${Math.round(y - radius * Math.sin(turn))}`;
  };
  return `M${at(from)}A${radius} ${radius} 0 0 0 ${at(to)}`;
}

const Turned = ({ d }: { d: string }) => (
  <path d={d} fill="none" stroke="currentColor" stroke-width="0.8" />
);

function EndView({ joint, lean }: { joint: Joint; lean: Lean }) {
  const angle = middle(lean.work);
  if (joint === 'tee')
    return (
      <>
        <Plate outline={box(34, 24, 18, 84)} />
        <Plate outline={box(16, 108, 112, 18)} />
        <Electrode x={56} y={104} angle={angle} />
        <Turned d={arc(56, 104, 64, 0, angle)} />
      </>
    );
  if (joint === 'groove')
    return (
      <>
        <Plate
          outline={[
            [10, 104],
            [52, 104],
            [64, 128],
            [10, 128],
          ]}
        />
        <Plate
          outline={[
            [88, 104],
            [130, 104],
            [130, 128],
            [76, 128],
          ]}
        />
        <Electrode x={70} y={122} angle={angle} />
        <Turned d={arc(70, 104, 48, 0, angle)} />
      </>
    );
  return (
    <>
      <Plate outline={box(12, 110, 116, 18)} />
      {joint === 'pad' && (
        <path
          d="M40 110Q54 94 68 110Z"
          class="weld-metal"
          stroke="currentColor"
          stroke-width="1.4"
        />
      )}
      <Electrode x={joint === 'pad' ? 68 : 70} y={106} angle={joint === 'pad' ? angle : 90} />
      <Turned d={arc(70, 110, 48, 0, angle)} />
    </>
  );
}

/** Along the weld: travel to the right. A drag leans the top of the electrode ahead. */
function SideView({ lean }: { lean: Lean }) {
  const tilt = middle(lean.travel);
  const top = lean.way === 'drag' ? 90 - tilt : 90 + tilt;
  return (
    <>
      <Plate outline={box(6, 112, 128, 16)} />
      <path
        d="M10 112V106Q40 102 62 106L68 112Z"
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.4"
      />
      <path
        d={`M70 108V28${lean.way === 'drag' ? arc(70, 106, 92, top, 90) : arc(70, 106, 92, 90, top)}`}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
        stroke-dasharray="3 3"
      />
      <Electrode x={70} y={106} angle={top} />
      <path d="M92 98H122M115 93l8 5l-8 5" fill="none" stroke="currentColor" stroke-width="1.8" />
    </>
  );
}
