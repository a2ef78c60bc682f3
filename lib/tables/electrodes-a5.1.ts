/**
 * AWS A5.1 carbon steel electrodes: what the digits promise. Strength figures are those printed in
 * each unit system (70 ksi stands beside 490 MPa, which is not its conversion).
 */
import type { Citation } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import type { Classification } from './classifications.ts';

/**
 * Groups in which welders are qualified, lowest first: AWS D1.1:2020 Table 6.13, ASME IX QW-432.
 */
export const fNumbers = ['F1', 'F2', 'F3', 'F4'] as const;

interface Covering {
  covering: string;
  current: string;
  lowHydrogen: boolean;
  fNumber: (typeof fNumbers)[number];
  cite: Citation;
}

const read: Citation = {
  source: 'filler-handbook',
  at: 'p. 2, table of the last digits',
  known: 'read',
};
const recalled: Citation = { source: 'aws-a5.1', at: 'Table 1', known: 'memory' };

const either = 'AC, or DC with either polarity';
const acOrDcep = 'AC or DCEP';
const acOrDcen = 'AC or DCEN';

const row = (
  covering: string,
  current: string,
  fNumber: Covering['fNumber'],
  cite = read,
): Covering => ({ covering, current, lowHydrogen: fNumber === 'F4', fNumber, cite });

/** By the last two digits: covering, current, and the group in which welders are qualified. */
export const coverings: Readonly<Record<string, Covering>> = {
  '10': row('cellulose, sodium', 'DCEP', 'F3'),
  '11': row('cellulose, potassium', acOrDcep, 'F3'),
  '12': row('titania, sodium', acOrDcen, 'F2'),
  '13': row('titania, potassium', either, 'F2'),
  '14': row('titania, iron powder 25 to 40 %', either, 'F2'),
  '15': row('low-hydrogen, sodium', 'DCEP', 'F4'),
  '16': row('low-hydrogen, potassium', acOrDcep, 'F4'),
  '18': row('low-hydrogen, iron powder 25 to 40 %', acOrDcep, 'F4'),
  '19': row('iron oxide and titania, potassium', either, 'F2', recalled),
  '20': row('iron oxide, sodium', acOrDcen, 'F1'),
  '24': row('titania, iron powder 50 %', either, 'F1'),
  '27': row('iron oxide, iron powder 50 %', either, 'F1'),
  '28': {
    ...row('low-hydrogen, iron powder 50 %', acOrDcep, 'F1'),
    lowHydrogen: true,
  },
  '48': row('low-hydrogen, iron powder 25 to 40 %', acOrDcep, 'F4'),
};

/** By the digit before the last; see `citePositions`. */
export const positions = {
  '1': 'flat, horizontal, vertical and overhead',
  '2': 'flat, and fillets in the horizontal position',
  '4': 'flat, horizontal, overhead, and vertical downhill',
} as const;

/** Tensile strength of the weld metal, at least, by the first two digits; see `citeStrengths`. */
export const strengths = {
  '60': { us: 60, metric: 430 },
  '70': { us: 70, metric: 490 },
} as const;

/** Of `positions`. */
export const citePositions: Citation = {
  source: 'filler-handbook',
  at: 'p. 2, third digit',
  known: 'read',
};
/** Of `strengths`. */
export const citeStrengths: Citation = { source: 'aws-a5.1', at: 'Table 2', known: 'read' };

/** The least that the weld metal must give in the test of the specification. */
interface WeldMetal {
  text: string;
  cite: Citation;
}
const aElga: Citation = { source: 'aws-a5.1', at: 'Tables 2 and 3', known: 'read' };

/** Yield, elongation and notch toughness, where they were read. */
export const weldMetals: Partial<Record<Classification, WeldMetal>> = {
  E6010: {
    text: 'Weld metal: yield {48 ksi|330 MPa} at least, elongation 22 %, 27 J at {-30 degC}.',
    cite: aElga,
  },
  E6012: {
    text: 'Weld metal: elongation 17 % at least; no impact test is asked for.',
    cite: aElga,
  },
  E6013: {
    text: 'Weld metal: elongation 17 % at least; no impact test is asked for.',
    cite: aElga,
  },
  E7014: {
    text: 'Weld metal: elongation 17 % at least; no impact test is asked for.',
    cite: aElga,
  },
  E7024: {
    text: 'Weld metal: elongation 17 % at least; no impact test is asked for.',
    cite: aElga,
  },
  E7018: {
    text: 'Weld metal: yield {58 ksi|400 MPa} at least, elongation 22 %, 27 J at {-30 degC}.',
    cite: aElga,
  },
  'E7018-1': {
    text: 'The -1 stands for toughness in greater cold: 20 ft·lb at {-50 degF}.',
    cite: aElga,
  },
  E7018M: {
    text: 'The M stands for military use: yield {53 ksi} to {72 ksi}, elongation 24 % at least, 67 J at {-30 degC}, DCEP only.',
    cite: aElga,
  },
};

export interface Digits {
  strength: PrintedFigure;
  position: string;
  positionDigit: string;
  covering: Covering;
  ending: string;
}

/** The parts of a classification, such as E7018-1: E, strength, position, covering, ending. */
export function readDigits(classification: Classification): Digits {
  const [strength, positionDigit] = [classification.slice(1, 3), classification.slice(3, 4)];
  const covering = coverings[classification.slice(3, 5)] as Covering;
  const ending = classification.slice(5);
  return {
    strength: strengths[strength as keyof typeof strengths],
    position: positions[positionDigit as keyof typeof positions],
    positionDigit,
    covering: ending === 'M' ? { ...covering, current: 'DCEP' } : covering,
    ending,
  };
}
