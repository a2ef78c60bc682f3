import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { fitted, type Point } from '../Sketch/scale.ts';

const inch = 25.4;
/** More would run into each other on a phone: the drawing then shows the first ones. */
const mostBeads = 30;

/** The plate from above: the center line of every bead, and where a new electrode starts. */
export default function PaddingFromAbove({ given, results }: DrawingProps) {
  const { width, plateLength, runOut } = given as Record<
    'width' | 'plateLength' | 'runOut',
    number
  >;
  const { beads, electrodes } = results as Record<'beads' | 'electrodes', number>;
  const pitch = (results.pitch as number | undefined) ?? 0;
  const shown = Math.min(beads, mostBeads);
  const covered = width + (shown - 1) * pitch;
  const [length, across] = [plateLength * inch, covered * inch];
  const scale = fitted(
    { left: 0, right: length, bottom: -across, top: 0 },
    { left: 26, right: 78, top: 34, bottom: 12 },
    280,
  );
  const center = (bead: number) => -(width / 2 + bead * pitch) * inch;
  const line = (bead: number): Point[] => [
    [0, center(bead)],
    [length, center(bead)],
  ];
  const tick = Math.max(3, Math.min(6, (pitch || width) * inch * scale.factor * 0.35));
  const changes =
    runOut * inch * scale.factor < 5
      ? []
      : Array.from({ length: electrodes - 1 }, (_, index) => (index + 1) * runOut)
          .map((laid) => ({ bead: Math.floor(laid / plateLength), at: laid % plateLength }))
          .filter(({ bead }) => bead < shown);
  return (
    <Sketch
      height={scale.height}
      name="The plate from above, with bead center lines and the places where electrodes change"
      caption={
        <>
          To scale. {shown < beads ? `The first ${shown} of ${beads} beads` : `${beads} beads`}
          {pitch > 0 && (
            <>
              , <Size as="span" value={pitch} unit="in" /> from center to center
            </>
          )}
          , each <Size as="span" value={plateLength} unit="in" /> long. {electrodes}{' '}
          {electrodes === 1 ? 'electrode' : 'electrodes'};{' '}
          {changes.length > 0 ? 'a short bar marks each change' : 'no change is marked'}.
        </>
      }
    >
      <path
        d={scale.path([
          [0, 0],
          [length, 0],
          [length, -across],
          [0, -across],
        ])}
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.6"
      />
      <path
        d={Array.from({ length: shown }, (_, bead) => scale.path(line(bead), false)).join('')}
        stroke="currentColor"
        stroke-width="0.6"
      />
      <path
        d={changes
          .map(({ bead, at }) => {
            const [x, y] = [scale.x(at * inch), scale.y(center(bead))];
            return `M${x} ${Math.round(y - tick)}L${x} ${Math.round(y + tick)}`;
          })
          .join('')}
        stroke="currentColor"
        stroke-width="2.6"
      />
      <Label x={scale.x(0) - 6} y={scale.y(center(0)) + 4} anchor="end">
        1
      </Label>
      {shown > 1 && (
        <Label x={scale.x(0) - 6} y={scale.y(center(shown - 1)) + 4} anchor="end">
          {shown}
        </Label>
      )}
      <Dimension from={[scale.x(0), scale.y(0)]} to={[scale.x(length), scale.y(0)]}>
        <Size value={plateLength} unit="in" />
      </Dimension>
      <Dimension
        from={[scale.x(length), scale.y(0)]}
        to={[scale.x(length), scale.y(-across)]}
        off={10}
      >
        <Size value={covered} unit="in" />
      </Dimension>
    </Sketch>
  );
}
