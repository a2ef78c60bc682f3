import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import GrooveSection from '../Sketch/GrooveSection.tsx';
import { Size, Stated } from '../Sketch/Label.tsx';

/** The groove of a plate joint, filled and capped. */
export default function GrooveArea({ given, results }: DrawingProps) {
  const { thickness, rootOpening, includedAngle, rootFace, capHeight } = given as Sizes;
  const { faceWidth, area, capArea } = results as Record<'faceWidth' | 'area' | 'capArea', number>;
  return (
    <GrooveSection
      {...{ thickness, rootOpening, rootFace, capHeight, faceWidth }}
      both={given.groove === 'V'}
      angle={{ of: 'groove', degrees: includedAngle }}
      name="A groove in section, filled and capped"
      caption={
        <>
          To scale. Plate <Stated as="span" value={thickness} unit="in" />, root opening{' '}
          <Stated as="span" value={rootOpening} unit="in" />, root face{' '}
          <Stated as="span" value={rootFace} unit="in" />, groove angle{' '}
          <Size as="span" value={includedAngle} unit="deg" />: the face is{' '}
          <Size as="span" value={faceWidth} unit="in" /> wide and the section to be filled{' '}
          <Size as="span" value={area} unit="in2" />
          {capHeight > 0 && (
            <>
              , with <Size as="span" value={capArea} unit="in2" digits={2} /> more in the cap
            </>
          )}
          .
        </>
      }
    />
  );
}

type Sizes = Record<
  'thickness' | 'rootOpening' | 'includedAngle' | 'rootFace' | 'capHeight',
  number
>;
