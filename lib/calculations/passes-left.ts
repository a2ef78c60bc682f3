import { type Citation, defineProcedure, type Reason } from '../calculation.ts';
import { citePassLimits, passLimits } from '../tables/prequalified-limits-d1.1.ts';

const shopRule: Citation = {
  source: 'common-practice',
  at: 'leave 1/32 in to 1/16 in for the cover',
  known: 'practice',
};
const least = 1 / 32;
const most = 1 / 16;
const slack = 1e-9;

/**
 * The last fill layer stops a little below the plate, so that the cover pass has an edge to follow
 * and something to stand in. Layers are kept alike and no thicker than they were being laid.
 */
export default defineProcedure({
  title: 'Layers left in a groove',
  summary: 'How many fill layers are still to come, and whether it is time for the cover.',
  inputs: {
    depth: {
      label: 'Depth left, from the plate’s surface down to the weld',
      symbol: 'D',
      unit: 'in',
      limits: { min: 0, max: 12, why: 'no groove of this course is deeper' },
      usual: { min: 0, max: 2, why: 'practice grooves are no deeper than {2 in}' },
      example: { us: '1/4', metric: '6' },
      obtain: 'Straightedge over the groove, depth gauge down to the shallowest place.',
    },
    layerThickness: {
      label: 'Thickness of a fill layer as you lay it',
      symbol: 'e',
      unit: 'in',
      limits: { min: 0.02, max: 0.5, why: 'no electrode lays a thinner or thicker layer' },
      usual: {
        min: 1 / 16,
        max: passLimits.flat.fillPassThickness.us,
        why: 'a prequalified fill pass ends at {3/16 in|5 mm}',
        cite: citePassLimits,
      },
      example: { us: '3/32', metric: '2.5' },
      obtain: 'Depth before a layer less depth after it.',
    },
  },
  outputs: {
    fillLayers: { label: 'Fill layers before the cover', unit: '1' },
    evenThickness: {
      label: 'Thickness to aim at in each',
      symbol: 'e',
      unit: 'in',
      digits: 2,
      optional: true,
    },
    leftForCover: {
      label: 'Depth then left for the cover',
      unit: 'in',
      digits: 2,
    },
    next: { label: 'Next', words: ['fill layer', 'thin fill layer', 'cover pass', 'too full'] },
  },
  beware: [
    'Measure at several places. The shallowest decides whether there is room, the deepest where to fill first.',
  ],
  cite: [shopRule],
  related: ['groove-passes', 'groove-area', 'prequalified-limits'],
  compute({ depth, layerThickness }) {
    const because: Reason[] = [
      {
        kind: 'rule',
        text: 'Stop filling {1/32 in|1 mm} to {1/16 in|1.5 mm} below the plate: enough for the cover to stand in, and both edges still there to steer by.',
        cite: shopRule,
      },
    ];
    if (depth < least * (1 - slack)) {
      because.push({
        kind: 'caution',
        text: 'The groove is too full: the edges are going. Grind the fill back to {1/32 in|1 mm} before the cover, if the procedure allows grinding.',
        cite: shopRule,
      });
      return {
        fillLayers: 0,
        evenThickness: undefined,
        leftForCover: depth,
        next: 'too full',
        because,
      };
    }
    const fillLayers = Math.max(0, Math.ceil((depth - most) / layerThickness - slack));
    if (fillLayers === 0)
      return {
        fillLayers,
        evenThickness: undefined,
        leftForCover: depth,
        next: 'cover pass',
        because,
      };
    const leftForCover = Math.max(least, depth - fillLayers * layerThickness);
    const evenThickness = (depth - leftForCover) / fillLayers;
    const thin = evenThickness < layerThickness / 2;
    because.push({
      kind: 'rule',
      text: 'Layers = (depth − what is left for the cover) ÷ layer thickness, rounded up; then all are made alike, so none is thicker than you lay them now.',
    });
    if (thin)
      because.push({
        kind: 'caution',
        text: 'That is less than half a layer. Travel faster or take a smaller electrode, so that the edges stay.',
        cite: shopRule,
      });
    return {
      fillLayers,
      evenThickness,
      leftForCover,
      next: thin ? 'thin fill layer' : 'fill layer',
      because,
    };
  },
});
