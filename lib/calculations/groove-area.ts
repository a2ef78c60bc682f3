import { defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';
import { grooveShape } from '../inputs/groove-shape.ts';
import { NoAnswer } from '../no-answer.ts';

/** A straight-sided groove on plate; the cap is a parabola over the open face. */
export default defineFormula({
  title: 'Area of a groove',
  summary: 'The section to be filled, the width at the face and the cap on top of it.',
  inputs: {
    groove: {
      label: 'Groove',
      choices: ['V', 'single bevel'],
      example: 'V',
      default: 'V',
      obtain: 'A V has both edges beveled, a single bevel one. A square groove is a V of 0°.',
    },
    ...grooveShape,
    density: electrode.density,
  },
  outputs: {
    area: {
      label: 'Section of the groove, cap not counted',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula:
        'equalText(groove, "V") ? rootOpening * thickness + (thickness - rootFace)^2 * tanDegrees(includedAngle / 2) : rootOpening * thickness + (thickness - rootFace)^2 * tanDegrees(includedAngle) / 2',
    },
    faceWidth: {
      label: 'Width of the groove at the plate’s surface',
      symbol: 'W',
      unit: 'in',
      digits: 3,
      formula:
        'equalText(groove, "V") ? rootOpening + 2 * (thickness - rootFace) * tanDegrees(includedAngle / 2) : rootOpening + (thickness - rootFace) * tanDegrees(includedAngle)',
    },
    capArea: {
      label: 'Section of the cap',
      symbol: 'A_c',
      unit: 'in2',
      digits: 2,
      formula: '2 / 3 * faceWidth * capHeight',
    },
    massPerLength: {
      label: 'Weld metal in the groove, for each foot or meter',
      symbol: 'm_1',
      unit: 'lb/ft',
      digits: 3,
      formula: '12 * density * area',
    },
    capMassPerLength: {
      label: 'Weld metal in the cap, for each foot or meter',
      symbol: 'm_2',
      unit: 'lb/ft',
      digits: 2,
      formula: '12 * density * capArea',
    },
  },
  beware: [
    'The cap spreads past the groove’s edges by about {1/16 in} a side; that little is not in it.',
    'Plates pull together as they are welded. The groove you fill is the one you measure after tacking.',
  ],
  cite: [
    { source: 'geometry', at: 'rectangle, triangles and a parabola', known: 'derived' },
    { source: 'filler-handbook', at: 'weights of grooves per foot', known: 'read' },
  ],
  related: ['groove-passes', 'deposit', 'electrode-use'],
  compute({ groove, thickness, rootOpening, includedAngle, rootFace, capHeight, density }) {
    if (rootFace > thickness)
      throw new NoAnswer('The root face is thicker than the plate', 'rootFace');
    if (groove === 'single bevel' && includedAngle > 80)
      throw new NoAnswer(
        'One bevel of more than 80° never reaches the other side',
        'includedAngle',
      );
    const bevels = groove === 'V' ? 2 : 1;
    const lean = Math.tan((includedAngle / bevels) * (Math.PI / 180));
    const depth = thickness - rootFace;
    const area = rootOpening * thickness + (bevels * depth ** 2 * lean) / 2;
    const faceWidth = rootOpening + bevels * depth * lean;
    const capArea = (2 / 3) * faceWidth * capHeight;
    return {
      area,
      faceWidth,
      capArea,
      massPerLength: 12 * density * area,
      capMassPerLength: 12 * density * capArea,
    };
  },
});
