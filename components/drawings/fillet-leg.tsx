import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import FilletSection from '../Sketch/FilletSection.tsx';
import { Size } from '../Sketch/Label.tsx';

/** A fillet of equal legs that has the wanted throat. */
export default function FilletLeg({ given, results }: DrawingProps) {
  const leg = results.leg as number;
  const throat = given.throat as number;
  const angle = given.angle as number;
  return (
    <FilletSection
      legA={leg}
      legB={leg}
      throat={throat}
      angle={angle}
      caption={
        <>
          To scale. A throat of <Size as="span" value={throat} unit="in" /> between plates at{' '}
          <Size as="span" value={angle} unit="deg" /> takes legs of{' '}
          <Size as="span" value={leg} unit="in" /> along the plates. Across, from a toe to the other
          plate: <Size as="span" value={results.codeSize as number} unit="in" />.
        </>
      }
    />
  );
}
