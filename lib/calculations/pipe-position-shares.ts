import { defineProcedure } from '../calculation.ts';
import { positionRegions } from '../geometry/position-regions.ts';
import { fixedPipe } from '../inputs/fixed-pipe.ts';
import { type Position, positionNames } from '../tables/weld-positions.ts';
import { clockFace } from '../text/clock-text.ts';

const share = (label: string, symbol: string) => ({ label, symbol, unit: 'percent' }) as const;

export default defineProcedure({
  title: 'Positions round a fixed pipe',
  summary: 'How much of the joint lies in each position, and where on the clock it changes.',
  inputs: { pipeInclination: fixedPipe.pipeInclination },
  outputs: {
    flat: share('Flat', 'F'),
    horizontal: share('Horizontal', 'H'),
    vertical: share('Vertical', 'V'),
    overhead: share('Overhead', 'OH'),
    regions: {
      label: 'From the top to the bottom, the same on both sides',
      list: {
        position: { label: 'Position', text: true },
        from: { label: 'From', unit: 'deg' },
        to: { label: 'To', unit: 'deg' },
        clock: { label: 'On the clock, right side', text: true },
      },
    },
  },
  beware: [
    'These are positions of production welds. What a test covers goes by the test’s name, not by these shares.',
    'Five degrees more or less of the pipe’s inclination, as a test allows, move the changes by a few degrees.',
  ],
  cite: [
    { source: 'geometry', at: 'angles at which the limits are met', known: 'derived' },
    { source: 'aws-d1.1', at: '2020 Fig. 6.1', known: 'memory' },
  ],
  related: ['pipe-position', 'clock-travel'],
  compute({ pipeInclination }) {
    const regions = positionRegions(pipeInclination);
    const shareOf = (position: Position) =>
      regions
        .filter((region) => region.position === position)
        .reduce((sum, { from, to }) => sum + (100 * (to - from)) / 180, 0);
    const [flat, horizontal, vertical, overhead] = positionNames.map(shareOf) as [
      number,
      number,
      number,
      number,
    ];
    const absent = positionNames.filter((name) => shareOf(name) === 0);
    return {
      flat,
      horizontal,
      vertical,
      overhead,
      regions: regions.map(({ position, from, to }) => ({
        position,
        from,
        to,
        clock: `${clockFace(from)} to ${clockFace(to)}`,
      })),
      because: [
        {
          kind: 'rule',
          text: 'A point is vertical once the weld’s axis rises more than {15 deg}, whatever the face does, until the face looks down far enough to be overhead.',
          cite: { source: 'aws-d1.1', at: '2020 Fig. 6.1', known: 'memory' },
        },
        ...(absent.length > 0
          ? [{ kind: 'passed', text: `Nowhere on this joint: ${absent.join(', ')}.` } as const]
          : []),
      ],
    };
  },
});
