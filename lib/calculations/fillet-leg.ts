import { defineFormula } from '../calculation.ts';
import { plateAngle } from '../inputs/plate-angle.ts';

/**
 * A fillet of equal legs with a given throat. Two measures go by the name of leg when the plates
 * are not square to each other: the length along the plate, and the code's leg size, which is the
 * distance from a toe straight across to the other plate. At 90° they are the same.
 */
export default defineFormula({
  title: 'Fillet leg from the throat',
  summary: 'The leg that gives a wanted throat, square or skewed, and what a gauge should read.',
  inputs: {
    throat: {
      label: 'Throat wanted',
      symbol: 't',
      unit: 'in',
      limits: { min: 0.01, max: 4, why: 'no fillet weld is smaller or larger' },
      usual: { min: 0.08, max: 1.5, why: 'throats are usually {3/32 in} to {1-1/2 in}' },
      example: { us: '0.22', metric: '5.6' },
      obtain: 'From the drawing, where it gives a throat; a leg on a square tee times 0.707.',
      estimateBy: 'fillet-throat',
    },
    angle: plateAngle,
  },
  outputs: {
    leg: {
      label: 'Leg, along the plate',
      symbol: 'b',
      unit: 'in',
      digits: 3,
      round: { to: '1/16 in|0.5 mm', way: 'up' },
      formula: 'throat / cosDegrees(angle / 2)',
    },
    codeSize: {
      label: 'Leg size by the code: from a toe across to the other plate',
      symbol: 'ω',
      unit: 'in',
      digits: 3,
      formula: '2 * throat * sinDegrees(angle / 2)',
    },
    faceWidth: {
      label: 'Width of a flat face, toe to toe',
      symbol: 'W',
      unit: 'in',
      digits: 3,
      formula: '2 * throat * tanDegrees(angle / 2)',
    },
    area: {
      label: 'Area of the triangle',
      symbol: 'A',
      unit: 'in2',
      digits: 3,
      formula: 'throat^2 * tanDegrees(angle / 2)',
    },
    sizeFactor: {
      label: 'Code leg size against that of a square tee with the same throat',
      symbol: 'k',
      unit: '1',
      digits: 3,
      formula: 'sqrt(2) * sinDegrees(angle / 2)',
    },
  },
  beware: [
    'On a skewed tee say which leg you mean. At 135° the leg along the plate is 1.85 times that of a square tee, the code’s leg size only 1.31 times.',
    'The plates fit. A root opening over {1/16 in|2 mm} is added to the leg, and over {3/16 in|5 mm} the joint is no longer a fillet to be filled.',
  ],
  cite: [
    { source: 'geometry', at: 'isosceles triangle with the root at its tip', known: 'derived' },
    {
      source: 'aws-d1.1',
      at: 'annex on skewed tee joints, leg size factors',
      known: 'memory',
    },
  ],
  related: ['fillet-throat', 'fillet-minimum'],
  compute({ throat, angle }) {
    const half = (angle * Math.PI) / 360;
    return {
      leg: throat / Math.cos(half),
      codeSize: 2 * throat * Math.sin(half),
      faceWidth: 2 * throat * Math.tan(half),
      area: throat ** 2 * Math.tan(half),
      sizeFactor: Math.SQRT2 * Math.sin(half),
    };
  },
});
