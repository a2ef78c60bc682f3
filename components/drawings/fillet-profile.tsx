import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import FilletSection from '../Sketch/FilletSection.tsx';
import { Size, Stated } from '../Sketch/Label.tsx';
import type { Point } from '../Sketch/scale.ts';

const inch = 25.4;

/** A fillet with a bulging or a hollow face; dashed, the straight line between its toes. */
export default function FilletProfile({ given, results }: DrawingProps) {
  const { leg, bulge } = given as Record<'leg' | 'bulge', number>;
  const { theoreticalThroat, actualThroat, effectiveSize, area } = results as Numbers;
  const counts = Math.min(theoreticalThroat, actualThroat);
  return (
    <FilletSection
      legA={leg}
      legB={leg}
      throat={counts}
      face={bow([leg * inch, 0], [0, leg * inch], bulge * inch)}
      angle={90}
      fraction={32}
      caption={
        <>
          To scale. Legs <Stated as="span" value={leg} unit="in" />,{' '}
          {bulge === 0 ? (
            'a flat face'
          ) : (
            <>
              a face that {bulge < 0 ? 'dips' : 'bulges'}{' '}
              <Stated as="span" value={Math.abs(bulge)} unit="in" /> from the dashed line
            </>
          )}
          : the throat that counts is <Size as="span" value={counts} unit="in" />, the size{' '}
          <Size as="span" value={effectiveSize} unit="in" fraction={16} />, the section{' '}
          <Size as="span" value={area} unit="in2" />.
        </>
      }
    />
  );
}

type Numbers = Record<'theoreticalThroat' | 'actualThroat' | 'effectiveSize' | 'area', number>;

/** An arc from toe to toe that rises by `bulge`, its ends left out. */
function bow([ax, ay]: Point, [bx, by]: Point, bulge: number): Point[] {
  if (bulge === 0) return [];
  const width = Math.hypot(bx - ax, by - ay);
  const half = 2 * Math.atan((2 * bulge) / width);
  const radius = width / (2 * Math.sin(half));
  // Outward of the face, which runs from the lower toe up to the left.
  const [outX, outY] = [(by - ay) / width, (ax - bx) / width];
  return Array.from({ length: 11 }, (_, step): Point => {
    const turn = half * ((step + 1) / 6 - 1);
    const share = 0.5 + (radius * Math.sin(turn)) / width;
    const rise = radius * (Math.cos(turn) - Math.cos(half));
    return [ax + (bx - ax) * share + outX * rise, ay + (by - ay) * share + outY * rise];
  });
}
