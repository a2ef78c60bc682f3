import {
  type ChoiceInput,
  defineProcedure,
  type PrintedInput,
  type Reason,
} from '../calculation.ts';
import { visualItems } from '../inspection/visual-items.ts';
import { NoAnswer } from '../no-answer.ts';
import { purposes } from '../tables/visual-limits.ts';

const yesNo = (label: string, obtain: string) =>
  ({
    label,
    choices: ['no', 'yes'],
    example: 'no',
    optional: true,
    obtain,
  }) as const satisfies ChoiceInput;
const reading = (label: string, symbol: string, us: string, metric: string, obtain: string) =>
  ({
    label,
    symbol,
    printed: { us: 'in', metric: 'mm' },
    limits: { min: 0, max: 12, why: 'a gauge reads from nothing to {12 in}' },
    example: { us, metric },
    optional: true,
    obtain,
  }) as const satisfies PrintedInput;
const place = (label: string, symbol: string, example: string) =>
  ({
    label,
    symbol,
    printed: { us: 'in', metric: 'mm' },
    limits: { min: 0, max: 4000, why: 'measured from one end of the weld' },
    example,
    obtain: 'Rule along the weld from one end.',
  }) as const satisfies PrintedInput;

export default defineProcedure({
  title: 'Visual check',
  summary:
    'Gauge readings against a code’s limits, item by item, for a weld or a welder’s test coupon.',
  inputs: {
    code: {
      label: 'Code',
      choices: ['AWS D1.1', 'ASME IX', 'ASME B31.3'],
      example: 'AWS D1.1',
      obtain: 'The contract or the test names it.',
    },
    purpose: {
      label: 'Judged as',
      choices: purposes,
      example: 'welder’s test coupon',
      obtain: 'A test coupon is judged by the test’s own clause, which is stricter on undercut.',
    },
    weld: {
      label: 'Weld',
      choices: ['fillet', 'groove with backing', 'groove, open root'],
      example: 'groove with backing',
      obtain: 'What you are looking at.',
    },
    thickness: {
      label: 'Thickness of the thinner part, or the wall',
      symbol: 't',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.05, max: 20, why: 'plates and pipes of this course' },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper.',
    },
    crack: yesNo(
      'A crack anywhere',
      'Look along the weld and in the craters, with a lens and a light.',
    ),
    incompleteFusion: yesNo(
      'Incomplete fusion',
      'A line where weld metal lies on the plate without melting in.',
    ),
    craterFilled: {
      ...yesNo('Craters filled', 'No hollow at the end of the weld.'),
      example: 'yes',
    },
    overlap: yesNo('Overlap: metal rolled over the toe', 'A fingernail catches under the edge.'),
    arcStrike: yesNo('Arc strike outside the weld', 'A small burn beside the weld.'),
    looseSpatter: yesNo(
      'Spatter or slag that the brush takes off',
      'Brush once more. What sticks fast to the plate is not meant.',
    ),
    misalignment: reading(
      'Step between the two faces',
      'e',
      '1/32',
      '1',
      'Rule on the higher face, and the gap under it; on pipe inside, where you can.',
    ),
    filletSize: reading('Fillet size on the drawing', 'S', '5/16', '8', 'On the welding symbol.'),
    leg: reading('Shortest leg', 'L', '5/16', '8', 'Fillet gauge, at the smallest place.'),
    faceWidth: reading('Width of the face', 'W', '7/16', '11', 'Caliper from toe to toe.'),
    convexity: reading(
      'Convexity',
      'C',
      '1/16',
      '1.5',
      'Straightedge from toe to toe, rise in the middle.',
    ),
    undercutDepth: reading(
      'Deepest undercut',
      'u',
      '1/64',
      '0.4',
      'Undercut gauge with a pointed pin.',
    ),
    undercutPlaces: {
      label: 'Places with deeper undercut',
      list: {
        from: place('From', 'a', '2 in'),
        to: place('To', 'b', '3 in'),
        depth: place('Depth', 'd', '3/64 in'),
      },
      optional: true,
      example: [{ from: '2 in', to: '3 in', depth: '3/64 in' }],
      obtain: 'One row for each place: where it begins and ends along the weld, and its depth.',
    },
    transverseToTension: yesNo(
      'The weld lies across the tension in a primary member',
      'The drawing or the engineer says so.',
    ),
    reinforcement: reading(
      'Height of the cover pass',
      'r',
      '1/16',
      '1.5',
      'Depth gauge from the plate to the crown.',
    ),
    porosityPerInch: reading(
      'Pores in the worst inch, diameters added',
      'p',
      '0',
      '0',
      'Count pores of {1/32 in} and more.',
    ),
    porosityPerFoot: reading(
      'Pores in the worst foot, diameters added',
      'q',
      '0',
      '0',
      'Count pores of {1/32 in} and more.',
    ),
    poreCount: {
      label: 'Pores where they lie closest, counted',
      symbol: 'n',
      unit: '1',
      whole: true,
      limits: { min: 0, max: 1000, why: 'more are not counted but cut out' },
      example: '0',
      optional: true,
      obtain: 'Over {4 in|100 mm} of weld. Only cyclic load is judged by it.',
    },
    largestPore: reading(
      'Largest pore, its diameter',
      'D',
      '0',
      '0',
      'Gauge or scale under a lens. Only cyclic load is judged by it.',
    ),
    incompletePenetration: reading(
      'Depth of incomplete penetration',
      'i',
      '0',
      '0',
      'From the back, where the root can be seen.',
    ),
    rootConcavity: reading('Root concavity', 'v', '0', '0', 'From the back, with a depth gauge.'),
    meltThrough: reading(
      'Melt-through or protrusion at the root',
      'm',
      '1/32',
      '1',
      'From the back, with a depth gauge.',
    ),
  },
  outputs: {
    verdict: {
      label: 'All together',
      words: ['passes', 'fails', 'not complete: some items were not read'],
    },
    items: {
      label: 'Item by item',
      list: {
        item: { label: 'Item', text: true },
        verdict: { label: 'Verdict', text: true },
        reading: { label: 'Reading', text: true },
        limit: { label: 'Limit', text: true },
        known: { label: 'The limit is known', text: true },
      },
    },
  },
  beware: [
    'A qualified inspector decides, by the edition of the contract. Look after the weld has cooled to the temperature of the shop.',
    'No grinding on the cover pass before the visual check (shop rule).',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2000 and 2004 Table 6.1; 8.1 in 2020', known: 'read' },
    {
      source: 'aws-d1.1',
      at: '4.8.1 and 4.30.1 (2000), 6.10.1 (2020), as quoted',
      known: 'read',
    },
    { source: 'asme-b31.3', at: '1996 Table 341.3.2', known: 'read' },
    { source: 'asme-ix', at: 'QW-194', known: 'memory' },
  ],
  related: ['fillet-profile', 'test-range'],
  compute(given) {
    if (given.code === 'ASME IX' && given.purpose !== 'welder’s test coupon')
      throw new NoAnswer(
        'ASME IX judges test coupons only; production welds go by the construction code',
        'purpose',
      );
    if (given.code === 'ASME B31.3' && given.purpose === 'welder’s test coupon')
      throw new NoAnswer(
        'ASME B31.3 judges the welds of a piping system; a test coupon goes by ASME IX',
        'purpose',
      );
    const found = visualItems(given);
    const verdicts = found.map(({ verdict }) => verdict);
    const verdict = verdicts.includes('fail')
      ? 'fails'
      : verdicts.includes('cannot be judged from this')
        ? 'not complete: some items were not read'
        : 'passes';
    const because: Reason[] = found.map(({ item, verdict: one, limit, cite }) => ({
      kind: one === 'fail' ? 'caution' : 'row',
      text: `${item}: ${one}. Limit: ${limit}.`,
      cite,
    }));
    return {
      verdict,
      items: found.map(({ item, verdict: one, reading: read, limit, cite }) => ({
        item,
        verdict: one,
        reading: read,
        limit,
        known: cite.known,
      })),
      because,
    };
  },
});
