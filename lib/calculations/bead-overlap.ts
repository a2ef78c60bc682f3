import { defineFormula } from '../calculation.ts';

/**
 * Each bead is taken as a parabola on a flat plate: height h in the middle, nothing at the toes.
 */
export default defineFormula({
  title: 'Bead overlap',
  summary:
    'How far apart to lay beads, and how deep the valley between them is before the metal flows.',
  inputs: {
    width: {
      label: 'Bead width',
      symbol: 'w',
      unit: 'in',
      limits: { min: 0.02, max: 4, why: 'no bead is narrower or wider' },
      usual: {
        min: 0.1,
        max: 1,
        why: 'a bead from a covered electrode is {1/8 in} to {1 in} wide',
      },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper across a single bead, toe to toe.',
    },
    height: {
      label: 'Bead height',
      symbol: 'h',
      unit: 'in',
      limits: { min: 0.005, max: 2, why: 'no bead is lower or higher' },
      usual: {
        min: 0.03,
        max: 0.25,
        why: 'a bead stands {1/32 in} to {1/4 in} above the plate',
      },
      example: { us: '3/32', metric: '2.5' },
      obtain: 'Depth gauge or two rules: from the plate to the crown.',
    },
    overlap: {
      label: 'Bead overlap (step-over), in percent of the width',
      symbol: 'p',
      unit: 'percent',
      limits: {
        min: 0,
        max: 95,
        why: 'below 0 the beads do not touch, above 95 they lie on top of each other',
      },
      usual: {
        min: 25,
        max: 60,
        why: 'padding beads usually lie over a third to half of the last one',
      },
      example: '50',
      obtain: 'You choose it. Half is the usual aim for padding.',
    },
  },
  outputs: {
    pitch: {
      label: 'Spacing from bead to bead',
      symbol: 'd',
      unit: 'in',
      digits: 3,
      round: { to: '1/32 in', way: 'nearest' },
      formula: 'width * (1 - overlap / 100)',
    },
    valleyDepth: {
      label: 'Valley below the crowns, before the metal flows',
      symbol: 'z',
      unit: 'in',
      digits: 2,
      formula: 'height * (pitch / width)^2',
    },
    layerHeight: {
      label: 'Mean height of the layer',
      symbol: 'm',
      unit: 'in',
      digits: 3,
      formula: '2 / 3 * width * height / pitch',
    },
    flatTopPitch: {
      label: 'Spacing whose overlap just fills the valley',
      symbol: 'f',
      unit: 'in',
      digits: 3,
      formula: '2 / 3 * width',
    },
    tangentPitch: {
      label: 'Widest spacing that stays stable, by the tangent model',
      symbol: 's',
      unit: 'in',
      digits: 3,
      formula: 'tangentShare * width',
    },
  },
  constants: {
    tangentShare: {
      value: 0.7378432589,
      symbol: 'k',
      unit: '1',
      name: 'tangent spacing as a share of the width',
      cite: {
        source: 'bead-overlap-study',
        at: 'printed as 0.738',
        known: 'memory',
      },
    },
  },
  beware: [
    'The valley is drawn as if each bead kept its shape. Real metal flows and fills part of it, more so when the puddle is hot.',
  ],
  cite: [
    { source: 'geometry', at: 'parabolic bead', known: 'derived' },
    {
      source: 'flat-top-study',
      at: 'two thirds of the width',
      known: 'memory',
    },
    { source: 'bead-overlap-study', at: 'tangent model', known: 'memory' },
  ],
  related: ['padding-plan', 'bead-area'],
  compute({ width, height, overlap }) {
    const pitch = width * (1 - overlap / 100);
    return {
      pitch,
      valleyDepth: height * (pitch / width) ** 2,
      layerHeight: ((2 / 3) * width * height) / pitch,
      flatTopPitch: (2 / 3) * width,
      tangentPitch: 0.7378432589 * width,
    };
  },
});
