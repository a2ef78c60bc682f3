import { defineProcedure, type Printed } from '../calculation.ts';
import { grooveShape } from '../inputs/groove-shape.ts';
import { fitUpVerdicts, judgedFitUp } from '../inspection/fit-up.ts';
import { NoAnswer } from '../no-answer.ts';
import { type JointDetail, jointDetails, jointNames, stages } from '../tables/joint-details.ts';
import { positions } from '../tables/prequalified-limits-d1.1.ts';
import { convert } from '../units.ts';
import { plannedGroove } from '../welds/planned-groove.ts';

/** Layers as the shop lays them, root pass and fill alike; inches. */
const layers = { rootPassThickness: 1 / 8, fillPassThickness: 1 / 8 };

export default defineProcedure({
  title: 'Fit-up of a V groove',
  summary:
    'Whether the opening and angle you measured are inside the joint’s tolerance, and what the metal costs from one end of it to the other.',
  inputs: {
    joint: {
      label: 'Joint',
      choices: jointNames,
      example: 'on a strip, 45°',
      default: 'on a strip, 45°',
      obtain: 'The sketch on the procedure sheet. Both bevels together make the angle.',
    },
    stage: {
      label: 'Judged',
      choices: stages,
      example: 'after fit-up',
      default: 'after fit-up',
      obtain: 'The drawing keeps to the narrow tolerance; the tacked joint has the wider one.',
    },
    position: {
      label: 'Position',
      choices: positions,
      example: 'flat',
      default: 'flat',
      obtain: 'How the joint lies when it is welded.',
    },
    thickness: grooveShape.thickness,
    rootOpening: {
      label: 'Root opening, measured',
      symbol: 'g',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0, max: 2, why: 'a wider one is no joint of this kind' },
      example: { us: '5/16', metric: '8' },
      obtain: 'Gauge or drill shank at both ends and in the middle. Give the worst.',
    },
    includedAngle: {
      ...grooveShape.includedAngle,
      label: 'Groove angle, measured',
      obtain: 'Bevel gauge on each edge before tacking; the two added.',
    },
    rootFace: grooveShape.rootFace,
    capHeight: { ...grooveShape.capHeight, default: '1/16 in' },
    passArea: {
      label: 'Section area of one pass',
      symbol: 'a',
      unit: 'in2',
      limits: { min: 0.005, max: 0.5, why: 'no hand lays a smaller or larger pass' },
      usual: {
        min: 0.01,
        max: 0.06,
        why: 'covered electrodes lay {0.01 in2} to {0.06 in2} a pass',
      },
      example: { us: '0.03', metric: '20' },
      default: '0.03 in2',
      obtain:
        'About what a {1/8 in} electrode lays in {4-1/2 in} to {5 in}. Rod by rod: see the passes of a groove.',
      estimateBy: 'bead-from-electrode',
    },
  },
  outputs: {
    verdict: { label: 'The fit-up', words: fitUpVerdicts },
    openingFrom: {
      label: 'Opening, at least',
      printed: { us: 'in', metric: 'mm' },
      fraction: 32,
    },
    openingTo: { label: 'Opening, at most', printed: { us: 'in', metric: 'mm' }, fraction: 32 },
    angleFrom: { label: 'Groove angle, at least', unit: 'deg', digits: 3 },
    angleTo: { label: 'Groove angle, at most', unit: 'deg', digits: 3 },
    area: { label: 'Section area as measured, cap included', symbol: 'A', unit: 'in2', digits: 3 },
    extra: {
      label: 'More metal than the joint as drawn',
      unit: 'percent',
      digits: 2,
      signed: true,
    },
    passes: { label: 'Passes as measured', unit: '1' },
    narrowestPasses: { label: 'Passes at the narrowest opening', unit: '1' },
    widestPasses: { label: 'Passes at the widest opening', unit: '1' },
    narrowest: { label: 'Section at the narrowest opening', shape: true },
    widest: { label: 'Section at the widest opening', shape: true },
  },
  beware: [
    'The welding procedure and the code’s figure for your joint decide. These are from memory: look them up before you grind or weld up an edge.',
    'A gap that is too wide is not simply filled. Ask before you build up an edge, and never close it with a rod or a slug laid in the groove.',
  ],
  cite: [
    jointDetails['on a strip, 45°'].cite,
    jointDetails['open root'].cite,
    { source: 'geometry', at: 'trapezoids and a parabola', known: 'derived' },
  ],
  related: ['groove-area', 'groove-passes', 'root-fit-up'],
  compute({ joint, stage, position, rootOpening, includedAngle, passArea, ...shape }) {
    const detail: JointDetail = jointDetails[joint];
    if (!detail.positions.includes(position))
      throw new NoAnswer(
        'Position is not listed for this joint: in the horizontal position the code has only the 45° groove on a strip',
        'position',
      );
    const { opening, angle } = detail.may[stage];
    // The printed figure of the reader's own system, so that section and table agree.
    const { system } = rootOpening;
    const filled = (size: number, degrees: number) =>
      plannedGroove(
        { ...shape, rootOpening: inInches({ value: size, system }), includedAngle: degrees },
        detail.backing,
        position,
        layers,
        { size: passArea, given: true },
      );
    const found = filled(rootOpening.value, includedAngle);
    const drawn = filled(detail.opening[system], detail.angle);
    const narrowest = filled(opening.from[system], angle.from);
    const widest = filled(opening.to[system], angle.to);
    const { verdict, because } = judgedFitUp({ joint, stage, rootOpening, includedAngle });
    return {
      verdict,
      openingFrom: opening.from,
      openingTo: opening.to,
      angleFrom: angle.from,
      angleTo: angle.to,
      area: found.jointArea,
      extra: 100 * (found.jointArea / drawn.jointArea - 1),
      passes: found.passes.length,
      narrowestPasses: narrowest.passes.length,
      widestPasses: widest.passes.length,
      narrowest: narrowest.map,
      widest: widest.map,
      because: [
        ...because,
        {
          kind: 'rule',
          text: `Layers up to {1/8 in|3 mm} thick fill it. From one end of the tolerance to the other the passes go from ${narrowest.passes.length} to ${widest.passes.length}.`,
          cite: { source: 'geometry', known: 'derived' },
        },
      ],
    };
  },
});

const inInches = ({ value, system }: Printed): number =>
  system === 'us' ? value : convert(value, 'mm', 'in');
