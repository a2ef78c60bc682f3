/** What a visual check asks: the code, the weld, and everything that the eye and the gauges may find on it. */
import type { ChoiceInput, Inputs, PrintedInput } from '../calculation.ts';
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

export const visualReadings = {
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
} as const satisfies Inputs;
