import type { FilletMarks } from '../../lib/geometry/etched-fillet.ts';
import { filletLines } from '../../lib/section/fillet-lines.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { boundsOf } from '../Sketch/bounds.ts';
import { Size } from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';
import { fitted, type Point } from '../Sketch/scale.ts';

type Rows = readonly { x: number; y: number }[] | undefined;

/** The marks of an etched section joined up: deposit, melted base metal, throat. */
export default function SectionMeasure({ given, results }: DrawingProps) {
  const marks = marksOf(given);
  const lines = filletLines(marks);
  if (!lines) return null;
  const { root, toeA, toeB } = marks;
  const beyond = (toe: Point): Point => [
    root[0] + 1.35 * (toe[0] - root[0]),
    root[1] + 1.35 * (toe[1] - root[1]),
  ];
  const ends = [beyond(toeA), beyond(toeB)] as const;
  const all = [root, ...ends, ...lines.deposit, ...lines.melted].map(upward);
  const scale = fitted(boundsOf(all), { top: 20, bottom: 20, left: 20, right: 20 }, 240);
  const path = (points: readonly Point[], closed = false) => scale.path(points.map(upward), closed);
  return (
    <Sketch
      height={scale.height}
      name="The marked section: weld metal, melted base metal and throat"
      caption={
        <>
          To scale, as marked. Legs <Size as="span" value={results.legA as number} unit="mm" /> and{' '}
          <Size as="span" value={results.legB as number} unit="mm" />, theoretical throat{' '}
          <Size as="span" value={results.throat as number} unit="mm" />.
          {lines.melted.length > 0 && ' Inside the dashed line base metal was melted.'}
        </>
      }
    >
      <path d={path(lines.deposit, true)} class="weld-metal" stroke="none" />
      {lines.melted.length > 0 && (
        <path
          d={path(lines.fusion)}
          fill="none"
          stroke="currentColor"
          stroke-width="1.4"
          stroke-dasharray="5 3"
        />
      )}
      <path
        d={`${path([ends[0], root, ends[1]])}${path(lines.face.length > 0 ? lines.face : lines.chord)}`}
        fill="none"
        stroke="currentColor"
        stroke-width="1.6"
        stroke-linejoin="round"
      />
      <path
        d={`${path(lines.throat)}${path(lines.chord)}`}
        fill="none"
        stroke="currentColor"
        stroke-width="0.8"
        stroke-dasharray="2 3"
      />
      {[root, toeA, toeB, ...marks.face, ...marks.fusion].map((mark, index) => {
        const [x, y] = upward(mark);
        return (
          <circle
            key={index}
            cx={round(scale.x(x))}
            cy={round(scale.y(y))}
            r={index < 3 ? 4 : 2.2}
            fill="none"
            stroke="currentColor"
            stroke-width="1.2"
          />
        );
      })}
    </Sketch>
  );
}

/** Pictures count down from their top, drawings up from the ground. */
const upward = ([x, y]: Point): Point => [x, -y];

function marksOf(given: Record<string, unknown>): FilletMarks {
  const points = (name: string) => ((given[name] as Rows) ?? []).map(({ x, y }): Point => [x, y]);
  const [root] = points('root') as [Point];
  const [toeA, toeB] = points('toes') as [Point, Point];
  return {
    root,
    toeA,
    toeB,
    face: points('face'),
    fusion: points('fusion'),
    plateA: points('plateA'),
    plateB: points('plateB'),
  };
}
