import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import GrooveSection from '../Sketch/GrooveSection.tsx';
import { Size, Stated } from '../Sketch/Label.tsx';

/** The wall of a pipe joint, cut along the pipe: the bore below, the outside above. */
export default function PipeGroove({ given, results }: DrawingProps) {
  const { bevelAngle, rootOpening, rootFace, capHeight } = given as Sizes;
  const { wall, faceWidth, area, capArea } = results as Record<
    'wall' | 'faceWidth' | 'area' | 'capArea',
    number
  >;
  return (
    <GrooveSection
      {...{ rootOpening, rootFace, capHeight, faceWidth }}
      thickness={wall}
      both
      angle={{ of: 'bevel', degrees: bevelAngle }}
      name="The wall of a pipe joint in section, filled and capped"
      caption={
        <>
          To scale; the bore is below. Wall <Size as="span" value={wall} unit="in" />, root opening{' '}
          <Stated as="span" value={rootOpening} unit="in" />, root face{' '}
          <Stated as="span" value={rootFace} unit="in" />, each end beveled{' '}
          <Size as="span" value={bevelAngle} unit="deg" />: the groove is{' '}
          <Size as="span" value={faceWidth} unit="in" /> wide outside, its section{' '}
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

type Sizes = Record<'bevelAngle' | 'rootOpening' | 'rootFace' | 'capHeight', number>;
