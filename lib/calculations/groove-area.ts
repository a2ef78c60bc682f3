import { defineFormula } from '../calculation.ts';
import { electrode } from '../inputs/electrode.ts';
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
    thickness: {
      label: 'Plate thickness',
      symbol: 'T',
      unit: 'in',
      limits: { min: 0.02, max: 12, why: 'no plate of this course is thinner or thicker' },
      usual: { min: 0.1, max: 2, why: 'practice plates are {1/8 in} to {2 in} thick' },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper on the edge.',
    },
    rootOpening: {
      label: 'Root opening',
      symbol: 'g',
      unit: 'in',
      limits: { min: 0, max: 4, why: 'a wider one is no joint' },
      usual: { min: 0, max: 0.5, why: 'root openings go up to {1/2 in}, on backing' },
      example: { us: '1/4', metric: '6' },
      obtain: 'Gauge or drill shank between the plates, at both ends, after tacking.',
    },
    includedAngle: {
      label: 'Groove angle',
      symbol: 'α',
      unit: 'deg',
      limits: { min: 0, max: 120, why: 'a wider groove is cut by nobody' },
      usual: { min: 0, max: 90, why: 'groove angles are usually 20° to 75°' },
      example: '45',
      obtain: 'Both bevels together: two bevels of 22-1/2° make 45°. With one bevel, that bevel.',
    },
    rootFace: {
      label: 'Root face',
      symbol: 'f',
      unit: 'in',
      limits: { min: 0, max: 12, why: 'it is part of the thickness' },
      example: { us: '0', metric: '0' },
      default: '0 in',
      obtain: 'The blunt edge left at the root. On backing the edge is sharp: 0.',
    },
    capHeight: {
      label: 'Height of the cap above the plate',
      symbol: 'r',
      unit: 'in',
      limits: { min: 0, max: 1, why: 'a higher one is ground off' },
      usual: {
        min: 0,
        max: 0.125,
        why: 'up to 1 in of thickness the code allows {1/8 in|3 mm}',
        cite: { source: 'aws-d1.1', at: 'groove weld profiles', known: 'memory' },
      },
      example: { us: '1/16', metric: '1.5' },
      default: '0 in',
      obtain: 'You choose it: {1/16 in} is neat.',
    },
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
  related: ['deposit', 'electrode-use'],
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
