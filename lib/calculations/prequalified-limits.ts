import { defineProcedure, type Reason } from '../calculation.ts';
import {
  citePassLimits,
  citeSmallerOutOfPosition,
  passLimits,
  positions,
  smallerOutOfPosition,
} from '../tables/prequalified-limits-d1.1.ts';

const size = { printed: { us: 'in', metric: 'mm' }, fraction: 32 } as const;

export default defineProcedure({
  title: 'Limits for a prequalified procedure',
  summary:
    'The largest electrode, the thickest pass and the largest single-pass fillet that need no procedure test.',
  inputs: {
    position: {
      label: 'Position',
      choices: positions,
      example: 'vertical',
      obtain: 'How the joint lies when it is welded.',
    },
    electrodeKind: {
      label: 'Electrode kind',
      choices: ['low-hydrogen', 'not low-hydrogen'],
      example: 'low-hydrogen',
      default: 'low-hydrogen',
      obtain:
        'E7015, E7016, E7018 and E7048 are low-hydrogen; E6010 and E6011 are not. E7014 is held to the smaller size as well.',
    },
  },
  outputs: {
    filletDiameter: { label: 'Largest electrode for fillets', symbol: 'd', ...size },
    grooveDiameter: { label: 'Largest electrode for grooves', symbol: 'd', ...size },
    rootPassDiameter: { label: 'Largest electrode for the root pass of a groove', ...size },
    rootPassThickness: { label: 'Thickest root pass', ...size },
    fillPassThickness: { label: 'Thickest fill pass', ...size },
    singlePassFillet: { label: 'Largest fillet in one pass', symbol: 'z', ...size },
  },
  beware: [
    'These are ceilings for procedures that skip their own test, not advice. A {1/2 in} fillet in one pass uphill is allowed, and no beginner makes one with a {1/8 in} electrode.',
    'Beyond them a procedure is not wrong, only not prequalified: it must then be proved by test.',
  ],
  cite: [citePassLimits, citeSmallerOutOfPosition],
  related: ['fillet-passes', 'groove-passes', 'fillet-minimum', 'weave-width'],
  compute({ position, electrodeKind }) {
    const row = passLimits[position];
    const outOfPosition = position === 'vertical' || position === 'overhead';
    const because: Reason[] = [
      {
        kind: 'row',
        text: `Used: the column ${position} of shielded metal arc welding.`,
        cite: citePassLimits,
      },
    ];
    if (!outOfPosition) {
      because.push({
        kind: 'passed',
        text: 'Not used: the note on low-hydrogen electrodes; it speaks of vertical and overhead only.',
      });
      return { ...row, because };
    }
    if (electrodeKind === 'not low-hydrogen') {
      because.push({
        kind: 'passed',
        text: 'Not used: the note that ends low-hydrogen electrodes and E7014 at {5/32 in|4 mm}.',
        cite: citeSmallerOutOfPosition,
      });
      return { ...row, because };
    }
    because.push({
      kind: 'rule',
      text: 'Vertical and overhead, low-hydrogen electrodes end at {5/32 in|4 mm}: a {3/16 in|4.8 mm} one is outside the prequalified limit, not merely hard to hold.',
      cite: citeSmallerOutOfPosition,
    });
    return {
      ...row,
      filletDiameter: smallerOutOfPosition,
      grooveDiameter: smallerOutOfPosition,
      rootPassDiameter: smallerOutOfPosition,
      because,
    };
  },
});
