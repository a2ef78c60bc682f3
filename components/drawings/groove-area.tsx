import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import { Size } from '../Sketch/Label.tsx';
import Metal from '../Sketch/Metal.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { fitted, type Point } from '../Sketch/scale.ts';
import Weld from '../Sketch/Weld.tsx';

const inch = 25.4;

/** A groove in section: root opening, root face, bevels, and the cap over the plate's surface. */
export default function GrooveSection({ given, results }: DrawingProps) {
  const mm = (value: unknown) => (value as number) * inch;
  const [thickness, opening] = [mm(given.thickness), mm(given.rootOpening)];
  const [face, cap, width] = [mm(given.rootFace), mm(given.capHeight), mm(results.faceWidth)];
  const left = -opening / 2;
  const right = opening / 2;
  /** How far the left edge leans back; a single bevel leaves the right edge square. */
  const both = given.groove === 'V';
  const bevel = both ? (width - opening) / 2 : width - opening;
  const [leftTop, rightTop] = [left - bevel, both ? right + bevel : right];
  const plate = Math.max(0.6 * thickness, 0.15 * width);
  const ends = { left: leftTop - plate, right: rightTop + plate };
  const scale = fitted(
    { ...ends, bottom: 0, top: thickness + cap },
    { left: 76, right: 12, top: 34, bottom: 34 },
    200,
  );
  const at = (x: number, y: number) => [scale.x(x), scale.y(y)] as const;
  const leftPlate: Point[] = [
    [ends.left, 0],
    [left, 0],
    [left, face],
    [leftTop, thickness],
    [ends.left, thickness],
  ];
  const rightPlate: Point[] = [
    [ends.right, thickness],
    [rightTop, thickness],
    [right, face],
    [right, 0],
    [ends.right, 0],
  ];
  const crown = Array.from({ length: 13 }, (_, step): Point => {
    const share = step / 12;
    return [rightTop - width * share, thickness + 4 * cap * share * (1 - share)];
  });
  return (
    <Sketch
      height={scale.height}
      name="A groove in section, filled and capped"
      caption={
        <>
          To scale. Plate <Size as="span" value={given.thickness as number} unit="in" />, root
          opening <Size as="span" value={given.rootOpening as number} unit="in" />, groove angle{' '}
          <Size as="span" value={given.includedAngle as number} unit="deg" />: the face is{' '}
          <Size as="span" value={results.faceWidth as number} unit="in" /> wide and the section to
          be filled <Size as="span" value={results.area as number} unit="in2" />
          {cap > 0 && (
            <>
              , with <Size as="span" value={results.capArea as number} unit="in2" digits={2} /> more
              in the cap
            </>
          )}
          .
        </>
      }
    >
      <Metal scale={scale} outline={leftPlate} />
      <Metal scale={scale} outline={rightPlate} />
      <Weld
        scale={scale}
        outline={[[left, face], [left, 0], [right, 0], [right, face], ...crown]}
      />
      <path
        d={scale.path(
          [
            [leftTop, thickness],
            [rightTop, thickness],
          ],
          false,
        )}
        stroke="currentColor"
        stroke-width="0.8"
        stroke-dasharray="3 3"
      />
      <Dimension from={at(leftTop, thickness + cap)} to={at(rightTop, thickness + cap)} off={12}>
        <Size value={results.faceWidth as number} unit="in" />
      </Dimension>
      <Dimension from={at(right, 0)} to={at(left, 0)} off={12}>
        <Size value={given.rootOpening as number} unit="in" />
      </Dimension>
      <Dimension from={at(ends.left, 0)} to={at(ends.left, thickness)} off={10}>
        <Size value={given.thickness as number} unit="in" />
      </Dimension>
    </Sketch>
  );
}
