import { defineProcedure, type Reason } from '../calculation.ts';
import { onePass } from '../inputs/one-pass.ts';
import { NoAnswer } from '../no-answer.ts';
import {
  citePassLimits,
  passLimits,
  positions,
  saidLimit,
} from '../tables/prequalified-limits-d1.1.ts';
import type { Position } from '../tables/weld-positions.ts';
import { passAreaOf, saidArea } from '../welds/pass-area.ts';
import { type PlannedFillet, plannedFillet } from '../welds/planned-fillet.ts';

const inch = 25.4;

export default defineProcedure({
  title: 'Passes of a fillet',
  summary: 'How many passes an equal-leg fillet takes, and where each one lies.',
  inputs: {
    leg: {
      label: 'Leg of the fillet',
      symbol: 'L',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.0625, max: 3, why: 'fillets are made from {1/16 in} to {3 in}' },
      example: { us: '5/16', metric: '8' },
      obtain: 'On the drawing, to the left of the fillet symbol.',
    },
    ...onePass,
    runOut: { ...onePass.runOut, example: { us: '7', metric: '180' }, default: '7 in' },
    convexity: {
      label: 'Convexity of the finished face',
      symbol: 'C',
      unit: 'in',
      limits: { min: 0, max: 0.75, why: 'a higher crown is overlap, not convexity' },
      usual: { min: 0, max: 0.125, why: 'codes allow {1/16 in} to {1/8 in} on common sizes' },
      example: { us: '0', metric: '0' },
      default: '0 in',
      obtain: 'Straightedge from toe to toe, and the rise in the middle. A flat face has none.',
    },
    position: {
      label: 'Position',
      choices: positions,
      example: 'horizontal',
      default: 'horizontal',
      obtain: 'How the joint lies when it is welded.',
    },
  },
  outputs: {
    passes: { label: 'Passes', unit: '1' },
    layers: { label: 'Layers', unit: '1' },
    singlePassLimit: {
      label: 'Largest fillet in one pass without a procedure test',
      printed: { us: 'in', metric: 'mm' },
      fraction: 16,
    },
    jointArea: { label: 'Section area of the whole weld', symbol: 'A', unit: 'in2', digits: 3 },
    areaEach: { label: 'Section area of each pass, evened', unit: 'in2', digits: 3 },
    runOutEach: {
      label: 'Run-out that lays just this area',
      unit: 'in',
      digits: 2,
      optional: true,
    },
    plan: {
      label: 'The passes in order',
      list: {
        pass: { label: 'Pass', unit: '1' },
        layer: { label: 'Layer', unit: '1' },
        area: { label: 'Section area', unit: 'in2', digits: 3 },
        over: { label: 'Laps over', text: true },
        covers: { label: 'Covers of it', unit: 'percent', digits: 2 },
        lowerLeg: { label: 'Lower leg so far', unit: 'in', fraction: 32 },
        upperLeg: { label: 'Upper leg so far', unit: 'in', fraction: 32 },
      },
    },
    map: { label: 'Section with numbered passes', shape: true },
  },
  beware: [
    'A plan on paper: fit-up, the hand and the welding procedure decide at the joint. Clean every pass before the next.',
    'The single-pass limit is a ceiling for procedures that need no test of their own. It is no advice: a {1/8 in} electrode does not make a sound {1/2 in} fillet in one pass.',
  ],
  cite: [
    { source: 'geometry', at: 'areas of triangle and parabola', known: 'derived' },
    citePassLimits,
    {
      source: 'common-practice',
      at: 'lower pass before upper; the second of three covers two thirds of the first',
      known: 'practice',
    },
  ],
  compute({ leg: typedLeg, convexity, position, ...pass }) {
    const inInches = (size: number) => (typedLeg.system === 'us' ? size : size / inch);
    const leg = inInches(typedLeg.value);
    if (convexity > leg / 4)
      throw new NoAnswer(
        'Convexity must be at most a quarter of the leg: beyond it the bead rolls over',
        'convexity',
      );
    const passArea = passAreaOf(pass);
    const isGiven = pass.passArea !== undefined;
    const { singlePassFillet, fillPassThickness } = passLimits[position];
    const planned = plannedFillet(
      {
        leg,
        convexity,
        position,
        largestRoot: inInches(singlePassFillet[typedLeg.system]),
        thickestFill: inInches(fillPassThickness[typedLeg.system]),
      },
      { size: passArea, given: isGiven },
    );
    const { jointArea, beads } = planned;
    const passes = planned.passes.length;
    const areaEach = jointArea / passes;
    return {
      passes,
      layers: beads.length,
      singlePassLimit: singlePassFillet,
      jointArea,
      areaEach,
      runOutEach: isGiven ? undefined : (pass.runOut * passArea) / areaEach,
      plan: planned.passes.map(({ number, layer, bead, over, lowerLeg, upperLeg }) => ({
        pass: number,
        layer,
        area: bead.area / inch ** 2,
        over: over && `pass ${over.number}`,
        covers: over && 100 * over.share,
        lowerLeg: lowerLeg / inch,
        upperLeg: upperLeg / inch,
      })),
      map: planned.map,
      because: [
        {
          kind: 'rule',
          text: `The weld has ${saidArea(jointArea)}, a pass ${saidArea(passArea)}${isGiven ? ', as given' : ' from one electrode over its run-out'}: ${planned.byArea} ${planned.byArea === 1 ? 'pass' : 'passes'}.`,
        },
        ...passReasons(planned, position),
      ],
    };
  },
});

function passReasons({ byArea, beads, passes }: PlannedFillet, position: Position): Reason[] {
  const { singlePassFillet, fillPassThickness } = passLimits[position];
  const because: Reason[] = [];
  if (passes.length > byArea)
    because.push({
      kind: 'caution',
      text: `Passes of that size would be thicker than this position allows without a procedure test, so there are ${passes.length}.`,
      cite: citePassLimits,
    });
  because.push({
    kind: 'row',
    text: `Without a procedure test, one pass may make up to ${saidLimit(singlePassFillet)} of leg in this position, and a layer over it may be up to ${saidLimit(fillPassThickness)} thick.`,
    cite: citePassLimits,
  });
  if (passes.length > 1)
    because.push({
      kind: 'rule',
      text: `The root pass goes first, into the corner. Then layer on layer: ${beads.join(' + ')} passes. ${position === 'vertical' ? 'Each layer goes from one plate to the other, bead beside bead.' : 'Each layer goes from the lower plate up; the lower bead is the shelf for the next.'}`,
      cite: { source: 'common-practice', known: 'practice' },
    });
  if (passes.length === 2)
    because.push({
      kind: 'caution',
      text: 'Two passes mean a cover as wide as the face: a weave. Stringers need one pass or three.',
      cite: { source: 'common-practice', known: 'practice' },
    });
  return because;
}
