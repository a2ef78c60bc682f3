import { defineFormula } from '../calculation.ts';
import { plateAngle } from '../inputs/plate-angle.ts';

/**
 * A flat-faced fillet is a triangle with the root at one corner. Its throat is the shortest way
 * from the root to the face: the triangle's height, or the shorter leg where that height falls
 * outside the face.
 */
export default defineFormula({
  title: 'Fillet throat from the legs',
  summary: 'The throat, the face and the area of a fillet, from its two legs.',
  inputs: {
    legA: {
      label: 'Leg along the first plate',
      symbol: 'a',
      unit: 'in',
      limits: { min: 0.01, max: 6, why: 'no fillet weld is smaller or larger' },
      usual: { min: 0.1, max: 2, why: 'fillets are usually {1/8 in} to {2 in}' },
      example: { us: '5/16', metric: '8' },
      obtain: 'Fillet gauge, or a rule from the root corner to the toe.',
    },
    legB: {
      label: 'Leg along the second plate',
      symbol: 'b',
      unit: 'in',
      limits: { min: 0.01, max: 6, why: 'no fillet weld is smaller or larger' },
      usual: { min: 0.1, max: 2, why: 'fillets are usually {1/8 in} to {2 in}' },
      example: { us: '5/16', metric: '8' },
      obtain: 'The same on the other plate. The two are seldom quite alike.',
    },
    angle: plateAngle,
  },
  outputs: {
    faceWidth: {
      label: 'Width of a flat face, toe to toe',
      symbol: 'W',
      unit: 'in',
      digits: 3,
      formula: 'sqrt(legA^2 + legB^2 - 2 * legA * legB * cosDegrees(angle))',
    },
    throat: {
      label: 'Throat, root to face',
      symbol: 't',
      unit: 'in',
      digits: 3,
      formula:
        'legA < legB * cosDegrees(angle) ? legA : legB < legA * cosDegrees(angle) ? legB : legA * legB * sinDegrees(angle) / faceWidth',
    },
    area: {
      label: 'Area of the triangle',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula: 'legA * legB * sinDegrees(angle) / 2',
    },
  },
  beware: [
    'This is the triangle only. A convex face adds metal that the code does not count; a concave one takes throat away.',
    'Legs here are measured along the plates. For a skewed tee the structural code gives its leg size another way: see the leg from the throat.',
  ],
  cite: [
    { source: 'geometry', at: 'triangle with the root at one corner', known: 'derived' },
    { source: 'aws-d1.1', at: '2010 clause 2.4: effective throat', known: 'read' },
  ],
  related: ['fillet-leg', 'fillet-minimum'],
  notes({ legA, legB }) {
    const [shorter, longer] = [Math.min(legA, legB), Math.max(legA, legB)];
    if (longer <= 1.25 * shorter) return [];
    return [
      {
        kind: 'caution',
        text: 'The legs are unequal. Where a drawing asks for one size, the shorter leg is the size.',
      },
    ];
  },
  compute({ legA, legB, angle }) {
    const radians = (angle * Math.PI) / 180;
    const [sine, cosine] = [Math.sin(radians), Math.cos(radians)];
    const faceWidth = Math.sqrt(legA ** 2 + legB ** 2 - 2 * legA * legB * cosine);
    const area = (legA * legB * sine) / 2;
    if (legA < legB * cosine) return { faceWidth, throat: legA, area };
    if (legB < legA * cosine) return { faceWidth, throat: legB, area };
    return { faceWidth, throat: (2 * area) / faceWidth, area };
  },
});
