import { defineFormula } from '../calculation.ts';
import { beadHeight, beadOverlap, beadWidth } from '../inputs/bead.ts';

/**
 * Each bead is taken as a parabola on a flat plate: height h in the middle, nothing at the toes.
 */
export default defineFormula({
  title: 'Bead overlap',
  summary:
    'How far apart to lay beads, and how deep the valley between them is before the metal flows.',
  inputs: {
    width: beadWidth,
    height: beadHeight,
    overlap: beadOverlap,
  },
  outputs: {
    pitch: {
      label: 'Spacing from bead to bead',
      symbol: 'd',
      unit: 'in',
      digits: 3,
      round: { to: '1/32 in|0.5 mm', way: 'nearest' },
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
        at: 'quoted as 0.738; the further digits follow from the construction',
        known: 'derived',
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
  notes(_, { pitch, flatTopPitch, tangentPitch }) {
    if (pitch > tangentPitch)
      return [
        {
          kind: 'caution',
          text: 'That is wider than the tangent spacing: the valley stays open and traps slag under the next layer.',
        },
      ];
    if (pitch > flatTopPitch)
      return [
        {
          text: 'Between the tangent spacing and the flat-top spacing the metal just fills the valley, with little to spare.',
        },
      ];
    return [
      {
        text: 'Closer than the flat-top spacing there is metal to spare: the layer ends up higher than one bead alone, and its valleys shallow.',
      },
    ];
  },
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
