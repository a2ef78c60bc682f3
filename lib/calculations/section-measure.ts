import { defineProcedure, type QuantityOutput, type Reason } from '../calculation.ts';
import type { Point } from '../geometry/outline.ts';
import { distance } from '../geometry/smooth-curve.ts';
import { markedFillet } from '../inputs/marked-fillet.ts';
import { NoAnswer } from '../no-answer.ts';
import type { Measured } from '../section/measured.ts';
import { measuredFillet } from '../section/measured-fillet.ts';

const uncertain = (reading: string, unit: QuantityOutput['unit']) =>
  ({
    label: `Give or take, ${reading}`,
    unit,
    digits: 1,
    optional: true,
  }) as const satisfies QuantityOutput;

const mostMarks = 40;
/** In units of the picture: two marks nearer than this are one mark. */
const leastDistance = 1e-6;

export default defineProcedure({
  title: 'Measure an etched section',
  summary:
    'Legs, throat, convexity, penetration and dilution from points marked on a picture of a cut fillet, each with its uncertainty.',
  inputs: markedFillet,
  outputs: {
    verdict: {
      label: 'Fusion at the root',
      words: [
        'fused to the root',
        'not fused to the root',
        'too close to tell',
        'fusion line not marked',
      ],
    },
    legA: { label: 'Leg on plate A', unit: 'mm', digits: 3 },
    legAUncertainty: uncertain('leg on plate A', 'mm'),
    legB: { label: 'Leg on plate B', unit: 'mm', digits: 3 },
    legBUncertainty: uncertain('leg on plate B', 'mm'),
    angle: { label: 'Angle between the plates', unit: 'deg', digits: 3 },
    angleUncertainty: uncertain('angle', 'deg'),
    faceWidth: { label: 'Width of the face, toe to toe', unit: 'mm', digits: 3 },
    faceWidthUncertainty: uncertain('width of the face', 'mm'),
    throat: { label: 'Theoretical throat', unit: 'mm', digits: 3 },
    throatUncertainty: uncertain('theoretical throat', 'mm'),
    actualThroat: {
      label: 'Actual throat, penetration included',
      unit: 'mm',
      digits: 3,
      optional: true,
    },
    actualThroatUncertainty: uncertain('actual throat', 'mm'),
    convexity: { label: 'Convexity', unit: 'mm', digits: 2, optional: true },
    convexityUncertainty: uncertain('convexity', 'mm'),
    concavity: { label: 'Concavity', unit: 'mm', digits: 2, optional: true },
    concavityUncertainty: uncertain('concavity', 'mm'),
    penetration: {
      label: 'Penetration beyond the root',
      unit: 'mm',
      digits: 2,
      signed: true,
      optional: true,
    },
    penetrationUncertainty: uncertain('penetration', 'mm'),
    depositArea: { label: 'Area of deposit', unit: 'mm2', digits: 3, optional: true },
    depositAreaUncertainty: uncertain('area of deposit', 'mm2'),
    meltedArea: {
      label: 'Area of melted base metal',
      unit: 'mm2',
      digits: 3,
      optional: true,
    },
    meltedAreaUncertainty: uncertain('area of melted base metal', 'mm2'),
    dilution: { label: 'Dilution', unit: 'percent', digits: 2, optional: true },
    dilutionUncertainty: uncertain('dilution', 'percent'),
  },
  beware: [
    'One slice shows one place. The next inch may look different.',
    'The picture must be taken straight on: a tilted section reads short. Wear the gloves and the face shield until the etchant is washed off.',
  ],
  cite: [
    { source: 'geometry', at: 'distances, areas, propagation of uncertainty', known: 'derived' },
    {
      source: 'aws-d1.1',
      at: 'fillet macro of the welder’s test: fusion to the root, not necessarily beyond',
      known: 'read',
    },
    { source: 'aws-a3.0', at: 'leg, throats, convexity, dilution', known: 'memory' },
  ],
  related: ['visual-check', 'fillet-profile', 'convexity-limit'],
  compute({ root, toes, face, fusion, plateA, plateB, scale, scaleError, markingError }) {
    const points = (rows: { x: number; y: number }[] | undefined, field: string): Point[] => {
      if (rows && rows.length > mostMarks)
        throw new NoAnswer(`A face or line takes at most ${mostMarks} points`, field);
      return (rows ?? []).map(({ x, y }): Point => [x, y]);
    };
    const [corner, ...moreRoots] = points(root, 'root');
    const [toeA, toeB, ...moreToes] = points(toes, 'toes');
    if (!corner || moreRoots.length > 0) throw new NoAnswer('Root needs exactly one point', 'root');
    if (!toeA || !toeB || moreToes.length > 0)
      throw new NoAnswer('Toes need exactly two points', 'toes');
    const closest = Math.min(distance(corner, toeA), distance(corner, toeB), distance(toeA, toeB));
    if (closest < leastDistance)
      throw new NoAnswer('Root and toes lie too close together to measure', 'toes');
    const found = measuredFillet(
      {
        root: corner,
        toeA,
        toeB,
        face: points(face, 'face'),
        fusion: points(fusion, 'fusion'),
        plateA: points(plateA, 'plateA'),
        plateB: points(plateB, 'plateB'),
      },
      { scale, scaleError: scaleError / 100, markingError },
    );
    if (found.angle.value < 20 || found.angle.value > 170)
      throw new NoAnswer('The plates must meet at 20° to 170°; look at the marks again', 'toes');
    if (found.legA.value <= 0 || found.legB.value <= 0 || found.throat.value <= 0)
      throw new NoAnswer('These marks make no fillet; look at the toes and the face again', 'toes');
    if (fusion && fusion.length > 0 && !found.penetration)
      throw new NoAnswer(
        'The marked fusion line does not pass the root: mark it from toe to toe',
        'fusion',
      );
    const penetration = found.penetration;
    return {
      verdict: rootVerdict(penetration),
      legA: found.legA.value,
      legAUncertainty: found.legA.uncertainty,
      legB: found.legB.value,
      legBUncertainty: found.legB.uncertainty,
      angle: found.angle.value,
      angleUncertainty: found.angle.uncertainty,
      faceWidth: found.faceWidth.value,
      faceWidthUncertainty: found.faceWidth.uncertainty,
      throat: found.throat.value,
      throatUncertainty: found.throat.uncertainty,
      actualThroat: found.actualThroat?.value,
      actualThroatUncertainty: found.actualThroat?.uncertainty,
      convexity: found.rise && Math.max(0, found.rise.value),
      convexityUncertainty: found.rise?.uncertainty,
      concavity: found.hollow && Math.max(0, found.hollow.value),
      concavityUncertainty: found.hollow?.uncertainty,
      penetration: penetration?.value,
      penetrationUncertainty: penetration?.uncertainty,
      depositArea: found.depositArea?.value,
      depositAreaUncertainty: found.depositArea?.uncertainty,
      meltedArea: found.meltedArea && Math.max(0, found.meltedArea.value),
      meltedAreaUncertainty: found.meltedArea?.uncertainty,
      dilution: found.dilution?.value,
      dilutionUncertainty: found.dilution?.uncertainty,
      because: [...reasons(penetration), ...coarseness(closest, markingError)],
    };
  },
});

function rootVerdict(penetration: Measured | undefined) {
  if (!penetration) return 'fusion line not marked';
  const { value, uncertainty } = penetration;
  if (value - uncertainty >= 0) return 'fused to the root';
  return value + uncertainty < 0 ? 'not fused to the root' : 'too close to tell';
}

/** Coordinates may be millimeters as well as pixels; only then is a weld a few units long. */
function coarseness(closest: number, markingError: number): Reason[] {
  if (closest > 4 * markingError) return [];
  return [
    {
      kind: 'caution',
      text: 'The marks lie hardly farther apart than each may be off, so these readings are loose. Mark on a larger picture; where the coordinates are not pixels, say how far a mark may be off in their unit.',
    },
  ];
}

function reasons(penetration: Measured | undefined): Reason[] {
  const because: Reason[] = [
    {
      kind: 'rule',
      text: 'In at least 95 of 100 sections the true value lies inside what is given and taken, for the marking error and the scale you gave.',
      cite: { source: 'geometry', at: 'propagation of uncertainty', known: 'derived' },
    },
  ];
  if (penetration)
    because.push({
      kind: 'rule',
      text: 'A test fillet must be fused to its root; it need not be fused beyond.',
      cite: { source: 'aws-d1.1', at: 'fillet macro of the welder’s test', known: 'read' },
    });
  if (penetration && rootVerdict(penetration) === 'too close to tell')
    because.push({
      kind: 'caution',
      text: 'The fusion line runs so near the root that this picture cannot tell. Polish finer, etch again and take a closer picture.',
    });
  return because;
}
