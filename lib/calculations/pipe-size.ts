import { defineProcedure, type Reason } from '../calculation.ts';
import { orderedPipe } from '../inputs/pipe.ts';
import { citePipe, pipeDisagreements } from '../tables/pipe-b36.10.ts';
import { pipeSize, poundsPerFoot } from '../welds/pipe-size.ts';

export default defineProcedure({
  title: 'Pipe sizes',
  summary:
    'Outside diameter, wall, bore and weight of steel pipe, from its nominal size and schedule.',
  inputs: orderedPipe,
  outputs: {
    outsideDiameter: {
      label: 'Outside diameter',
      symbol: 'D',
      printed: { us: 'in', metric: 'mm' },
    },
    wall: { label: 'Wall', symbol: 't', printed: { us: 'in', metric: 'mm' } },
    insideDiameter: { label: 'Inside diameter', symbol: 'd', printed: { us: 'in', metric: 'mm' } },
    massPerLength: { label: 'Weight', symbol: 'm', printed: { us: 'lb/ft', metric: 'kg/m' } },
  },
  beware: [
    'These are nominal sizes. Mills roll the wall up to an eighth thinner, so measure the wall of the pipe that you have.',
    'A full length of large pipe is a crane’s load, not two people’s.',
  ],
  cite: [{ source: 'asme-b36.10', at: 'table of dimensions', known: 'read' }],
  related: ['pipe-groove', 'clock-travel'],
  compute({ nps, schedule }) {
    const { outside, wall } = pipeSize(nps, schedule);
    const known = pipeDisagreements[`${nps} ${schedule}`];
    const because: Reason[] = [
      {
        kind: 'row',
        text: `Used: NPS ${nps}, schedule ${schedule}, as printed in each system.`,
        cite: citePipe(nps, schedule),
      },
      {
        kind: 'rule',
        text: 'Weight from the sizes: 10.68·(D − t)·t in inches and lb/ft, 0.0246615·(D − t)·t in millimeters and kg/m. Some copies print 10.69, which is 0.09 % more.',
        cite: { source: 'asme-b36.10', at: 'weight of plain-end pipe', known: 'read' },
      },
    ];
    if (known) because.push({ kind: 'caution', text: known });
    if (nps === '10')
      because.push({
        kind: 'caution',
        text: '10.750 in is 273.05 mm; some tables print 273.0 mm outside, others 273.1.',
      });
    return {
      outsideDiameter: outside,
      wall,
      insideDiameter: {
        us: rounded(outside.us - 2 * wall.us, 3),
        metric: rounded(outside.metric - 2 * wall.metric, 2),
      },
      massPerLength: {
        us: poundsPerFoot(outside.us, wall.us),
        metric: 0.0246615 * (outside.metric - wall.metric) * wall.metric,
      },
      because,
    };
  },
});

/** A difference of printed figures has no more places than they have. */
const rounded = (value: number, places: number) => Math.round(value * 10 ** places) / 10 ** places;
