import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import FilletSection from '../Sketch/FilletSection.tsx';
import { Size } from '../Sketch/Label.tsx';

/** A fillet of two given legs. */
export default function FilletThroat({ given, results }: DrawingProps) {
  const { legA, legB, angle } = given as Record<string, number>;
  const { throat, faceWidth } = results as Record<string, number>;
  return (
    <FilletSection
      {...({ legA, legB, angle, throat } as Record<'legA' | 'legB' | 'angle' | 'throat', number>)}
      fraction={32}
      caption={
        <>
          To scale. Legs <Size as="span" value={legA as number} unit="in" fraction={32} /> and{' '}
          <Size as="span" value={legB as number} unit="in" fraction={32} /> at{' '}
          <Size as="span" value={angle as number} unit="deg" />, throat{' '}
          <Size as="span" value={throat as number} unit="in" />, face{' '}
          <Size as="span" value={faceWidth as number} unit="in" />.
        </>
      }
    />
  );
}
