import { defineProcedure, type Reason } from '../calculation.ts';
import { grooveShape } from '../inputs/groove-shape.ts';
import { onePass } from '../inputs/one-pass.ts';
import {
  citePassLimits,
  passLimits,
  positions,
  saidLimit,
} from '../tables/prequalified-limits-d1.1.ts';
import { passAreaOf, saidArea } from '../welds/pass-area.ts';
import { plannedGroove } from '../welds/planned-groove.ts';

const inch = 25.4;

export default defineProcedure({
  title: 'Passes of a groove',
  summary: 'How many layers and passes a V groove takes, and where each one lies.',
  inputs: {
    ...grooveShape,
    backing: {
      label: 'Behind the root',
      choices: ['strip', 'open root'],
      example: 'strip',
      default: 'strip',
      obtain: 'A steel strip tacked behind, or nothing.',
    },
    position: {
      label: 'Position',
      choices: positions,
      example: 'flat',
      default: 'flat',
      obtain: 'How the joint lies when it is welded.',
    },
    ...onePass,
    runOut: { ...onePass.runOut, example: { us: '4-1/2', metric: '115' }, default: '4-1/2 in' },
    rootPassThickness: {
      label: 'Thickness of the root pass',
      symbol: 't_r',
      unit: 'in',
      limits: { min: 0.03, max: 0.5, why: 'no root pass is thinner or thicker' },
      example: { us: '1/8', metric: '3' },
      default: '1/8 in',
      obtain: 'Depth before and after the root pass, or about the core diameter.',
    },
    fillPassThickness: {
      label: 'Thickness of a fill layer, at most',
      symbol: 't_f',
      unit: 'in',
      limits: { min: 0.03, max: 0.5, why: 'no fill layer is thinner or thicker' },
      example: { us: '1/8', metric: '3' },
      default: '1/8 in',
      obtain: 'Depth before and after a layer; the procedure may limit it.',
    },
  },
  outputs: {
    layers: { label: 'Layers', unit: '1' },
    passes: { label: 'Passes', unit: '1' },
    jointArea: { label: 'Section area, cap included', symbol: 'A', unit: 'in2', digits: 3 },
    runOutEach: {
      label: 'Run-out that comes out even',
      unit: 'in',
      digits: 2,
      optional: true,
    },
    plan: {
      label: 'The passes in order',
      list: {
        pass: { label: 'Pass', unit: '1' },
        layer: { label: 'Layer', unit: '1' },
        kind: { label: 'Kind', text: true },
        area: { label: 'Section area', unit: 'in2', digits: 3 },
        step: { label: 'Width it adds', unit: 'in', digits: 2 },
        over: { label: 'Laps over', text: true },
        covers: { label: 'Covers of it', unit: 'percent', digits: 2 },
        depthLeft: { label: 'Depth left after the layer', unit: 'in', digits: 2 },
      },
    },
    map: { label: 'Numbered passes', shape: true },
  },
  beware: [
    'A plan on paper: the opening after tacking, the hand and the procedure decide. Clean every pass.',
  ],
  cite: [
    { source: 'geometry', at: 'trapezoids and a parabola', known: 'derived' },
    citePassLimits,
    { source: 'common-practice', at: 'thickness of layers, order of beads', known: 'practice' },
  ],
  related: ['groove-area', 'electrode-use', 'fillet-passes'],
  compute({ backing, position, rootPassThickness, fillPassThickness, ...given }) {
    const { thickness, rootOpening, includedAngle, rootFace, capHeight, ...pass } = given;
    const groove = { thickness, rootOpening, includedAngle, rootFace, capHeight };
    const passArea = passAreaOf(pass);
    const { heights, jointArea, beads, ...built } = plannedGroove(
      groove,
      backing,
      position,
      { rootPassThickness, fillPassThickness },
      { size: passArea, given: pass.passArea !== undefined },
    );
    const passes = built.passes.length;
    return {
      layers: heights.length,
      passes,
      jointArea,
      runOutEach:
        pass.passArea === undefined ? (pass.runOut * passArea * passes) / jointArea : undefined,
      plan: built.passes.map(({ number, layer, bead, over }) => ({
        pass: number,
        layer,
        kind: kindOf(layer, heights.length),
        area: bead.area / inch ** 2,
        step: (bead.top[1] - bead.top[0]) / inch,
        over: over && `pass ${over.number}`,
        covers: over && 100 * over.share,
        depthLeft: Math.max(0, thickness - (heights[layer - 1] as number)),
      })),
      map: built.map,
      because: reasons(),
    };

    function reasons(): Reason[] {
      const limits = passLimits[position];
      const because: Reason[] = [
        {
          kind: 'rule',
          text: `The root first, then layer by layer, each full from side to side: ${beads.join(' + ')} from the root up.`,
        },
        {
          kind: 'rule',
          text: `The weld has ${saidArea(jointArea)}, a pass about ${saidArea(passArea)}${pass.passArea === undefined ? ' from one electrode over its run-out' : ', as given'}. Each further pass goes where the passes are largest.`,
        },
        {
          kind: 'row',
          text: `Without a procedure test a root pass may be up to ${saidLimit(limits.rootPassThickness)} thick in this position, a layer over it up to ${saidLimit(limits.fillPassThickness)}: ceilings, not advice.`,
          cite: citePassLimits,
        },
      ];
      if (built.clipped)
        because.push({
          kind: 'caution',
          text: 'A thickness you gave is over that limit, so the plan takes the limit instead.',
          cite: citePassLimits,
        });
      if (position === 'horizontal')
        because.push({
          kind: 'rule',
          text: 'Each layer goes from the lower plate up, so that a bead can rest on the one before.',
          cite: { source: 'common-practice', known: 'practice' },
        });
      if (backing === 'open root')
        because.push({
          kind: 'rule',
          text: 'An open root takes a single root pass.',
          cite: { source: 'common-practice', known: 'practice' },
        });
      return because;
    }
  },
});

function kindOf(layer: number, layers: number): string {
  if (layers === 1) return 'root and cover';
  if (layer === 1) return 'root';
  return layer === layers ? 'cover' : 'fill';
}
