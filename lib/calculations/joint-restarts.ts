import { defineProcedure, type Reason } from '../calculation.ts';
import { beadPerElectrode } from '../inputs/bead-per-electrode.ts';
import { filletBuild } from '../inputs/fillet-build.ts';

const slack = 1e-9;

export default defineProcedure({
  title: 'Restarts in a joint',
  summary: 'How often the arc stops and starts again, and how to space the stops.',
  inputs: {
    jointLength: {
      label: 'Length of the joint',
      symbol: 'L',
      unit: 'in',
      limits: { min: 0.1, max: 10_000, why: 'no joint of a class is shorter or longer' },
      example: { us: '8', metric: '200' },
      obtain: 'Rule along the joint; once round for a pipe.',
    },
    runOut: beadPerElectrode,
    passes: {
      ...filletBuild.passes,
      limits: { min: 1, max: 100, why: 'a joint has at least one pass, and nobody counts to more' },
      obtain: 'From the pass plan. Take 1 for a single bead.',
    },
  },
  outputs: {
    electrodesPerPass: { label: 'Electrodes begun in each pass', unit: '1' },
    restartsPerPass: { label: 'Restarts in each pass', unit: '1' },
    restarts: { label: 'Restarts in the whole joint', unit: '1' },
    electrodes: { label: 'Electrodes begun in the whole joint', unit: '1' },
    lastLength: {
      label: 'Left for the last electrode of a pass, if the others run out fully',
      unit: 'in',
      digits: 2,
    },
    evenLength: {
      label: 'Length for each electrode, shared evenly',
      unit: 'in',
      digits: 3,
    },
  },
  beware: [
    'A restart is where slag, holes and cold starts hide. Chip and brush the crater every time, and let no two passes restart in one place.',
  ],
  cite: [{ source: 'geometry', at: 'length over run-out', known: 'derived' }],
  related: ['leg-from-rod', 'padding-plan'],
  compute({ jointLength, runOut, passes }) {
    const electrodesPerPass = Math.max(1, Math.ceil(jointLength / runOut - slack));
    const restartsPerPass = electrodesPerPass - 1;
    const lastLength = jointLength - restartsPerPass * runOut;
    const because: Reason[] = [
      {
        kind: 'rule',
        text: 'Electrodes in a pass = length of the joint ÷ what one electrode lays, rounded up; one restart fewer than that. Each pass is taken to begin with a fresh electrode.',
      },
    ];
    if (restartsPerPass > 0 && lastLength < runOut / 4)
      because.push({
        kind: 'caution',
        text: 'The last electrode would have only a short end to weld. Share the length evenly, or run out a little farther.',
        cite: { source: 'common-practice', known: 'practice' },
      });
    if (passes > 1 && restartsPerPass > 0)
      because.push({
        kind: 'caution',
        text: 'Begin the next pass with a part-used electrode, or break off early, so that its restarts lie at least {1 in} from those beneath.',
        cite: { source: 'common-practice', known: 'practice' },
      });
    return {
      electrodesPerPass,
      restartsPerPass,
      restarts: passes * restartsPerPass,
      electrodes: passes * electrodesPerPass,
      lastLength,
      evenLength: jointLength / electrodesPerPass,
      because,
    };
  },
});
