import { defineFormula } from '../calculation.ts';
import { circularSegment } from '../geometry/circular-segment.ts';
import { beadHeight, beadWidth } from '../inputs/bead.ts';

export default defineFormula({
  title: 'Area of a bead',
  summary: 'The cross-section of a bead above the plate, from its width and height.',
  inputs: {
    width: beadWidth,
    height: beadHeight,
    profile: {
      label: 'Shape of the crown',
      choices: ['parabola', 'arc', 'cosine'],
      example: 'parabola',
      default: 'parabola',
      obtain:
        'Keep the parabola unless a section tells you otherwise. An arc of a circle comes close to it on flat beads; a cosine is leaner at the toes.',
    },
  },
  outputs: {
    area: {
      label: 'Area above the plate',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula:
        'equalText(profile, "parabola") ? 2 / 3 * width * height : equalText(profile, "cosine") ? 2 * width * height / pi : (height / 2 + width^2 / (8 * height))^2 * 2 * atan(2 * height / width) - width / 2 * (width^2 / (8 * height) - height / 2)',
    },
  },
  beware: ['Penetration is not in it: the metal below the plate’s surface was plate before.'],
  cite: [
    { source: 'geometry', at: 'areas under the three curves', known: 'derived' },
    { source: 'bead-overlap-study', at: 'fit of parabola and cosine', known: 'read' },
  ],
  related: ['bead-overlap', 'padding-plan'],
  notes({ width, height }) {
    if (height <= width / 2) return [];
    return [
      {
        kind: 'caution',
        text: 'That bead is higher than half its width: ropy, with toes that the next bead cannot fill.',
      },
    ];
  },
  compute({ width, height, profile }) {
    if (profile === 'parabola') return { area: (2 / 3) * width * height };
    if (profile === 'cosine') return { area: (2 * width * height) / Math.PI };
    return { area: circularSegment(width, height) };
  },
});
