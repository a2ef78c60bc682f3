import { defineProcedure, type Reason } from '../calculation.ts';
import { ringVolume } from '../geometry/ring-volume.ts';
import { electrode } from '../inputs/electrode.ts';
import { orderedPipe } from '../inputs/pipe.ts';
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { citePipe } from '../tables/pipe-b36.10.ts';
import { pipeSize } from '../welds/pipe-size.ts';

export default defineProcedure({
  title: 'Groove round a pipe',
  summary: 'Section, volume and weight of the weld metal in a pipe joint with both ends beveled.',
  inputs: {
    ...orderedPipe,
    bevelAngle: {
      label: 'Bevel angle, of each end',
      symbol: 'β',
      unit: 'deg',
      limits: { min: 0, max: 60, why: 'the groove opens by twice this' },
      usual: {
        min: 25,
        max: 40,
        why: 'pipe ends have {30 deg} to {37.5 deg}; the groove angle is twice that',
        cite: {
          source: 'asme-b16.25',
          at: 'para 3.2(b), 37.5° with 2.5° either way',
          known: 'read',
        },
      },
      example: '37.5',
      default: '37.5 deg',
      obtain: 'Angle finder against the pipe end. A groove angle of 75° is two bevels of 37.5°.',
    },
    rootOpening: {
      label: 'Root opening',
      symbol: 'g',
      unit: 'in',
      limits: { min: 0, max: 1, why: 'wider than that it is no joint' },
      usual: { min: 0.06, max: 0.19, why: 'open roots are set at {3/32 in} to {1/8 in}' },
      example: { us: '1/8', metric: '3.2' },
      obtain: 'Gap rod or a bare core wire, at four places after tacking.',
    },
    rootFace: {
      label: 'Root face',
      symbol: 'f',
      unit: 'in',
      limits: { min: 0, max: 1, why: 'it is part of the wall' },
      usual: { min: 0, max: 0.125, why: 'root faces are {1/16 in} to {3/32 in}' },
      example: { us: '3/32', metric: '2.4' },
      obtain: 'Rule on the flat that was filed on the edge.',
    },
    capHeight: {
      label: 'Height of the cap above the pipe',
      symbol: 'r',
      unit: 'in',
      limits: { min: 0, max: 0.5, why: 'a higher one is ground off' },
      usual: { min: 0, max: 0.125, why: 'a cap stands {1/16 in} to {1/8 in} proud' },
      example: { us: '1/16', metric: '1.6' },
      default: '0 in',
      obtain: 'You choose it: {1/16 in} is neat.',
    },
    density: electrode.density,
  },
  outputs: {
    wall: { label: 'Wall of the pipe', symbol: 'T', unit: 'in' },
    area: { label: 'Section of the groove, cap not counted', symbol: 'A', unit: 'in2' },
    capArea: { label: 'Section of the cap', symbol: 'A_c', unit: 'in2' },
    faceWidth: { label: 'Width of the groove outside', symbol: 'W', unit: 'in' },
    grooveVolume: { label: 'Metal in the groove', symbol: 'V_g', unit: 'in3' },
    capVolume: { label: 'Metal in the cap', symbol: 'V_c', unit: 'in3' },
    volume: { label: 'Metal in the joint, cap included', symbol: 'V', unit: 'in3' },
    mass: { label: 'Weight of that metal', symbol: 'm', unit: 'lb' },
  },
  beware: [
    'Nominal sizes and sharp corners. What bulges through at the root, spatter and stubs come on top.',
    'Sizes are taken from the inch column; the millimeter column differs by less than half a percent.',
  ],
  cite: [
    { source: 'geometry', at: 'ring integral of the section', known: 'derived' },
    { source: 'asme-b16.25', at: 'para 3.1 and 3.2', known: 'read' },
  ],
  related: ['pipe-size', 'root-fit-up', 'electrode-use', 'deposit'],
  compute({ nps, schedule, bevelAngle, rootOpening, rootFace, capHeight, density }) {
    const { outside, wall } = pipeSize(nps, schedule);
    const depth = wall.us - rootFace;
    if (depth < 0)
      throw new NoAnswer(`The wall is ${both(wall)}, so the root face cannot be more`, 'rootFace');
    const outer = outside.us / 2;
    const slope = Math.tan((bevelAngle * Math.PI) / 180);
    const faceWidth = rootOpening + 2 * depth * slope;
    const rectangle = rootOpening * wall.us;
    const triangles = depth ** 2 * slope;
    const capArea = (2 / 3) * faceWidth * capHeight;
    // Each part of the section sweeps the circle of its own center of area (Pappus).
    const grooveVolume =
      ringVolume(rectangle, outer - wall.us / 2) + ringVolume(triangles, outer - depth / 3);
    const capVolume = ringVolume(capArea, outer + 0.4 * capHeight);
    const volume = grooveVolume + capVolume;
    const because: Reason[] = [
      {
        kind: 'row',
        text: `NPS ${nps}, schedule ${schedule}: ${both(outside)} outside, wall ${both(wall)}.`,
        cite: citePipe(nps, schedule),
      },
      {
        kind: 'rule',
        text: 'Each part of the section goes round on the circle of its own center. The groove is wider outside, so a middle diameter for all of it would come out a little low.',
        cite: { source: 'geometry', at: 'Pappus', known: 'derived' },
      },
    ];
    if (wall.metric > 22)
      because.push({
        kind: 'caution',
        text: 'Over {22 mm} of wall the standard end has a compound bevel, steeper above; this straight one has more metal.',
        cite: { source: 'asme-b16.25', at: 'para 3.1', known: 'read' },
      });
    if (wall.metric <= 3 && bevelAngle > 0)
      because.push({
        kind: 'caution',
        text: 'Up to {3 mm} of wall the standard end is square, without a bevel.',
        cite: { source: 'asme-b16.25', at: 'para 3.1', known: 'read' },
      });
    return {
      wall: wall.us,
      area: rectangle + triangles,
      capArea,
      faceWidth,
      grooveVolume,
      capVolume,
      volume,
      mass: volume * density,
      because,
    };
  },
});

const both = ({ us, metric }: PrintedFigure) => `{${us} in|${metric} mm}`;
