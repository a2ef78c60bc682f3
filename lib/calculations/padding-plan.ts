import { defineProcedure, type Reason } from '../calculation.ts';
import { beadHeight, beadOverlap, beadWidth } from '../inputs/bead.ts';
import { beadPerElectrode } from '../inputs/bead-per-electrode.ts';
import { NoAnswer } from '../no-answer.ts';

/**
 * A row of equal parabolic beads across a plate. The overlap that is asked for sets the most that
 * the beads may lie apart; they are then spread evenly so that the last toe meets the far edge.
 */
export default defineProcedure({
  title: 'Padding plan',
  summary:
    'How many beads cover a plate with one layer, how far apart, and the electrodes it takes.',
  inputs: {
    width: beadWidth,
    height: beadHeight,
    overlap: beadOverlap,
    plateWidth: {
      label: 'Width to be covered, across the beads',
      symbol: 'B',
      unit: 'in',
      limits: { min: 0.1, max: 240, why: 'no practice plate is narrower or wider' },
      example: { us: '4', metric: '100' },
      obtain: 'Rule across the plate, square to the beads.',
    },
    plateLength: {
      label: 'Length of each bead',
      symbol: 'L',
      unit: 'in',
      limits: { min: 0.1, max: 240, why: 'no practice plate is shorter or longer' },
      example: { us: '8', metric: '200' },
      obtain: 'Rule along the plate, the way the beads run.',
    },
    runOut: beadPerElectrode,
  },
  outputs: {
    beads: { label: 'Beads in the layer', symbol: 'n', unit: '1' },
    pitch: {
      label: 'Spacing from bead to bead, evened out',
      symbol: 'd',
      unit: 'in',
      digits: 3,
      round: { to: '1/32 in|0.5 mm', way: 'nearest' },
      optional: true,
    },
    evenedOverlap: {
      label: 'Bead overlap after evening out',
      unit: 'percent',
      digits: 3,
      optional: true,
    },
    coveredWidth: { label: 'Width covered', unit: 'in', digits: 3 },
    layerHeight: { label: 'Mean height of the layer', symbol: 'm', unit: 'in', digits: 3 },
    valleyDepth: {
      label: 'Valley below the crowns, before the metal flows',
      symbol: 'z',
      unit: 'in',
      digits: 2,
      optional: true,
    },
    beadLength: { label: 'Bead laid in all', unit: 'in', digits: 3 },
    electrodes: { label: 'Electrodes for the layer', unit: '1' },
  },
  beware: [
    'The count has no spare in it: add for stuck electrodes, long stubs and practice starts.',
    'Beads get wider as the plate soaks up heat. Let it cool, or work two plates in turn.',
  ],
  cite: [{ source: 'geometry', at: 'equal beads across a plate', known: 'derived' }],
  related: ['bead-overlap', 'bead-from-electrode'],
  compute({ width, height, overlap, plateWidth, plateLength, runOut }) {
    const slack = 1e-9;
    if (plateWidth < width * (1 - slack))
      throw new NoAnswer(
        'The plate is narrower than one bead: lay it on its edge strip by strip, or choose a wider plate',
        'plateWidth',
      );
    const widest = width * (1 - overlap / 100);
    const steps = Math.ceil((plateWidth - width) / widest - slack);
    const beads = Math.max(0, steps) + 1;
    const beadLength = beads * plateLength;
    const electrodes = Math.ceil(beadLength / runOut - slack);
    const area = (2 / 3) * width * height;
    const whole = {
      beads,
      coveredWidth: beads > 1 ? plateWidth : width,
      beadLength,
      electrodes,
    };
    if (beads === 1)
      return {
        ...whole,
        pitch: undefined,
        evenedOverlap: undefined,
        layerHeight: area / width,
        valleyDepth: undefined,
        because: [{ kind: 'rule', text: 'One bead covers the width; there is nothing to space.' }],
      };
    const pitch = (plateWidth - width) / (beads - 1);
    const because: Reason[] = [
      {
        kind: 'rule',
        text: `Beads across = (width to cover − bead width) ÷ spacing, rounded up, and one more: ${beads}.`,
      },
      {
        kind: 'rule',
        text: 'The spacing is then evened out, so that the first toe and the last lie on the edges of the plate. It comes out a little closer than asked, never wider.',
      },
      {
        kind: 'rule',
        text: `Electrodes = ${beads} beads × their length ÷ what one electrode lays, rounded up. A part-used electrode starts the next bead.`,
      },
    ];
    return {
      ...whole,
      pitch,
      evenedOverlap: Math.max(0, 100 * (1 - pitch / width)),
      // Over the whole plate: all the metal laid, spread over the width it covers.
      layerHeight: (beads * area) / plateWidth,
      valleyDepth: height * (pitch / width) ** 2,
      because,
    };
  },
});
