import { positionRegions } from '../../lib/geometry/position-regions.ts';
import { clockFace } from '../../lib/text/clock-text.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Handle, { typeInto } from '../Drawing/Handle.tsx';
import Label, { Size } from '../Sketch/Label.tsx';
import PositionRing, { ring } from '../Sketch/PositionRing.tsx';
import Sketch from '../Sketch/Sketch.tsx';

const names = ['flat', 'horizontal', 'vertical', 'overhead'] as const;

/** The joint as a clock, with the share of each position in its middle. */
export default function PositionShares({ given, results }: DrawingProps) {
  const pipeInclination = given.pipeInclination as number;
  const shares = results as Record<(typeof names)[number], number>;
  const found = names.filter((name) => shares[name] > 0);
  return (
    <Sketch
      height={266}
      name="The joint seen along the pipe as a clock, divided into positions"
      handles={
        <Handle
          label="Pipe"
          min={0}
          max={90}
          step={5}
          value={pipeInclination}
          says={`${Math.round(pipeInclination)}°`}
          onMove={(value, handle) => typeInto('pipeInclination', value, handle)}
        />
      }
      caption={
        <>
          Not to scale. A pipe that rises at <Size as="span" value={pipeInclination} unit="deg" />:{' '}
          {found.map((name, index) => (
            <>
              {index > 0 && ', '}
              {name} ({name[0]?.toUpperCase()}){' '}
              <Size as="span" value={shares[name]} unit="percent" digits={2} />
            </>
          ))}
          . From the top down it changes at{' '}
          {positionRegions(pipeInclination)
            .map(({ to }) => clockFace(to))
            .slice(0, -1)
            .join(', ') || 'no hour'}
          , either side alike.
        </>
      }
    >
      <g transform={`translate(0 ${132 - ring.y})`}>
        <PositionRing pipeInclination={pipeInclination} />
        {found.map((name, index) => (
          <Label key={name} x={ring.x} y={ring.y + 5 + 18 * (index - (found.length - 1) / 2)} bold>
            {name[0]?.toUpperCase()} <Size value={shares[name]} unit="percent" digits={2} />
          </Label>
        ))}
      </g>
    </Sketch>
  );
}
