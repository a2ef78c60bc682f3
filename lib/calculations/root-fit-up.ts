import { defineFormula, type Reason } from '../calculation.ts';
import { printFraction, ruleOf } from '../text/inches.ts';

/** Shares of the core diameter between which shops set an open root. */
const openingShares = { least: 0.75, most: 1 };
const faceShares = { least: 0.5, most: 0.75 };

export default defineFormula({
  title: 'Fit-up of an open root',
  summary:
    'Root opening and root face against the electrode, the keyhole to hold, and the metal of the root pass.',
  inputs: {
    diameter: {
      label: 'Electrode diameter (core wire)',
      symbol: 'd',
      unit: 'in',
      limits: { min: 0.0625, max: 0.25, why: 'open roots are put in with {3/32 in} to {5/32 in}' },
      usual: { min: 0.09, max: 0.16, why: 'open roots are put in with {3/32 in} to {5/32 in}' },
      example: { us: '1/8', metric: '3.2' },
      obtain: 'Printed on the box; it is the wire without its coating.',
    },
    rootOpening: {
      label: 'Root opening',
      symbol: 'g',
      unit: 'in',
      limits: { min: 0, max: 0.5, why: 'wider than that nothing bridges it without a backing' },
      example: { us: '1/8', metric: '3.2' },
      obtain: 'Gap rod or a bare core wire pushed through, at four places round a pipe.',
    },
    rootFace: {
      label: 'Root face',
      symbol: 'f',
      unit: 'in',
      limits: { min: 0, max: 0.5, why: 'thicker than that no root pass melts it' },
      example: { us: '3/32', metric: '2.4' },
      obtain: 'Rule on the flat that was filed on the edge.',
    },
    bevelAngle: {
      label: 'Bevel angle, of each side',
      symbol: 'β',
      unit: 'deg',
      limits: { min: 0, max: 60, why: 'the groove opens by twice this' },
      usual: { min: 25, max: 40, why: 'open roots have {30 deg} to {37.5 deg} a side' },
      example: '37.5',
      default: '37.5 deg',
      obtain: 'Angle finder against the pipe end or the plate edge. Included angle is twice this.',
    },
    rootPassThickness: {
      label: 'Thickness of the root pass',
      symbol: 'h',
      unit: 'in',
      limits: { min: 0.02, max: 0.5, why: 'a root pass is laid in one run' },
      usual: { min: 0.09, max: 0.2, why: 'a root pass is about one electrode thick' },
      example: { us: '1/8', metric: '3.2' },
      default: '1/8 in',
      obtain: 'Depth gauge before and after: the wall less what is left of the groove.',
    },
    length: {
      label: 'Length of the joint',
      symbol: 'L',
      unit: 'in',
      limits: { min: 0.5, max: 1000, why: 'longer joints are reckoned by the foot' },
      example: { us: '7', metric: '180' },
      obtain: 'Rule along the joint; round a pipe, once round.',
    },
  },
  outputs: {
    openingRatio: {
      label: 'Root opening in electrode diameters',
      symbol: 'g_d',
      unit: '1',
      digits: 2,
      formula: 'rootOpening / diameter',
    },
    faceRatio: {
      label: 'Root face in electrode diameters',
      symbol: 'f_d',
      unit: '1',
      digits: 2,
      formula: 'rootFace / diameter',
    },
    keyhole: {
      label: 'Keyhole to hold, across',
      symbol: 'k',
      unit: 'in',
      digits: 2,
      fraction: 32,
      formula: 'keyholeShare * diameter',
    },
    area: {
      label: 'Section of the groove that the root pass fills',
      symbol: 'A',
      unit: 'in2',
      digits: 2,
      formula:
        'rootPassThickness > rootFace ? rootOpening * rootPassThickness + (rootPassThickness - rootFace)^2 * tanDegrees(bevelAngle) : rootOpening * rootPassThickness',
    },
    volume: {
      label: 'Metal in the root pass',
      symbol: 'V',
      unit: 'in3',
      digits: 2,
      formula: 'area * length',
    },
  },
  constants: {
    keyholeShare: {
      value: 1,
      symbol: 'c',
      unit: '1',
      name: 'keyhole in electrode diameters',
      cite: { source: 'common-practice', at: 'about one core diameter', known: 'practice' },
    },
  },
  beware: [
    'These proportions are shop practice for cellulose electrodes run uphill. The welding procedure sets opening and face; it rules.',
    'The metal that bulges through on the inside comes on top.',
  ],
  cite: [
    {
      source: 'common-practice',
      at: 'opening, face and keyhole by the electrode',
      known: 'practice',
    },
    { source: 'geometry', at: 'rectangle and two triangles', known: 'derived' },
  ],
  related: ['pipe-groove', 'electrode-classification', 'starting-current'],
  notes: ({ diameter, rootOpening, rootFace }, { openingRatio, faceRatio }) => [
    judged('opening', rootOpening, openingRatio, openingShares, diameter, {
      less: 'Too tight: the root will not fuse through. Open it, or take a smaller electrode.',
      right: 'The opening suits the electrode.',
      more: 'Wide: the keyhole runs away from you. Close it, or use less current and a quicker hand.',
    }),
    judged('face', rootFace, faceRatio, faceShares, diameter, {
      less: 'Thin: it melts away and the keyhole grows. File a wider face.',
      right: 'The face suits the electrode.',
      more: 'Thick: the root will not fuse through. File it down.',
    }),
    {
      kind: 'caution',
      text: 'A keyhole that grows calls for less current or a shorter pause; one that closes, for more.',
      cite: { source: 'common-practice', known: 'practice' },
    },
  ],
  compute({ diameter, rootOpening, rootFace, bevelAngle, rootPassThickness, length }) {
    const above = Math.max(0, rootPassThickness - rootFace);
    const area =
      rootOpening * rootPassThickness + above ** 2 * Math.tan((bevelAngle * Math.PI) / 180);
    return {
      openingRatio: rootOpening / diameter,
      faceRatio: rootFace / diameter,
      keyhole: diameter,
      area,
      volume: area * length,
    };
  },
});

function judged(
  what: 'opening' | 'face',
  value: number,
  ratio: number,
  { least, most }: { least: number; most: number },
  diameter: number,
  says: { less: string; right: string; more: string },
): Reason {
  const near = 1e-6;
  const sentence = ratio < least - near ? says.less : ratio > most + near ? says.more : says.right;
  return {
    kind: sentence === says.right ? 'rule' : 'caution',
    text: `${sentence} Root ${what} ${inches(value)}; usual for this electrode: ${inches(least * diameter)} to ${inches(most * diameter)}.`,
    cite: { source: 'common-practice', known: 'practice' },
  };
}

/** On a rule of 64ths where it lies on one, else in thousandths. */
function inches(size: number): string {
  const rule = ruleOf(size);
  return `{${rule === undefined ? Number(size.toFixed(3)) : printFraction(size, rule)} in}`;
}
