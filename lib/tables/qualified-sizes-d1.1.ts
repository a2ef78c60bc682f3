/**
 * AWS D1.1: thicknesses and diameters by the coupon, whatever was deposited with what. Tables 6.11
 * (plate) and 10.13 (pipe) of 2020; older editions named their test pipes.
 */
import type { Citation, Printed } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import { sizesByNamedPipe } from './named-test-pipes.ts';
import { type QualifiedSizes, timesSize } from './qualified-sizes.ts';
import type { Form } from './test-positions.ts';

/**
 * The editions differ for pipe: later ones go by diameter and wall, older ones by named test pipes.
 */
export const editions = ['2010 or later', 'older, with named test pipes'] as const;
export type Edition = (typeof editions)[number];

const size = (us: number, metric: number) => ({ us, metric });
const thickCoupon = size(1, 25);
/** The least coupon on plate; on pipe, the thickest that is not heavy-walled. */
const commonCoupon = size(3 / 8, 10);
const smallPipe = size(4.5, 114.3);

/** NPS 4 or less: the code gives such pipe one row, whatever its wall. */
export const isSmallPipe = ({ value, system }: Printed): boolean =>
  value <= smallPipe[system] * 1.001;
/** A plate test counts for pipe of this outside diameter and more. */
const pipeLikePlate = size(24, 600);

interface Coupon {
  form: Form;
  /** A groove weld; otherwise a fillet weld. */
  isGroove: boolean;
  thickness: Printed;
  /** Of pipe. */
  outsideDiameter: Printed | undefined;
  edition: Edition;
}

/** Throws NoAnswer for a plate thinner than the code's tests, and for a pipe that an older edition does not name. */
export function sizesD11({
  form,
  isGroove,
  thickness,
  outsideDiameter,
  edition,
}: Coupon): QualifiedSizes {
  if (!isGroove) return filletSizes(form, outsideDiameter);
  if (form === 'plate') return plateSizes(thickness);
  const diameter = outsideDiameter as Printed;
  return edition === '2010 or later'
    ? pipeSizes(thickness, diameter)
    : sizesByNamedPipe(thickness, diameter);
}

const filletSizes = (form: Form, outsideDiameter: Printed | undefined): QualifiedSizes => ({
  thicknessFrom: size(1 / 8, 3),
  thicknessTo: 'unlimited',
  diameterFrom: form === 'pipe' && outsideDiameter ? timesSize(outsideDiameter, 1) : 'no minimum',
  diameterTo: 'unlimited',
  cite: {
    source: 'aws-d1.1',
    at: '2020 Table 6.11; pipe fillets Table 10.13',
    known: 'memory',
  },
  notes: [],
});

function plateSizes(thickness: Printed): QualifiedSizes {
  const { value, system } = thickness;
  // Short of 3/8 in and 10 mm by what a nominal plate may lack.
  if (value < { us: 0.37, metric: 9.4 }[system])
    throw new NoAnswer(
      'Thickness must be at least {3/8 in|10 mm}: the code’s plate tests start there',
      'thickness',
    );
  const cite: Citation = { source: 'aws-d1.1', at: '2020 Table 6.11', known: 'memory' };
  const shared = {
    thicknessFrom: size(1 / 8, 3),
    diameterFrom: pipeLikePlate,
    diameterTo: 'unlimited',
    cite,
  } as const;
  if (value >= thickCoupon[system])
    return {
      ...shared,
      thicknessTo: 'unlimited',
      notes: ['A coupon of {1 in|25 mm} or more qualifies any thickness.'],
    };
  if (value <= commonCoupon[system] * 1.001)
    return {
      ...shared,
      thicknessTo: size(3 / 4, 20),
      notes: ['The {3/8 in|10 mm} coupon qualifies up to {3/4 in|20 mm}.'],
    };
  return {
    ...shared,
    thicknessTo: timesSize(thickness, 2),
    notes: [
      'A coupon between {3/8 in|10 mm} and {1 in|25 mm} qualifies up to twice its thickness.',
    ],
  };
}

function pipeSizes(wall: Printed, diameter: Printed): QualifiedSizes {
  const cite: Citation = { source: 'aws-d1.1', at: '2020 Table 10.13', known: 'read' };
  if (isSmallPipe(diameter))
    return {
      thicknessFrom: size(1 / 8, 3),
      thicknessTo: size(3 / 4, 20),
      diameterFrom: size(3 / 4, 20),
      diameterTo: size(4, 100),
      cite,
      notes: [
        'Pipe of NPS 4 or less. Editions to the early 2000s named the test pipes (NPS 2 Sch 80 or NPS 3 Sch 40) and gave {0.063 in} to {0.674 in} instead: the edition of the contract decides.',
      ],
    };
  const heavy = wall.value > commonCoupon[wall.system];
  const half = timesSize(diameter, 0.5);
  return {
    thicknessFrom: heavy ? size(3 / 16, 5) : size(1 / 8, 3),
    thicknessTo: heavy ? 'unlimited' : size(3 / 4, 20),
    diameterFrom: half.us > 4 ? half : size(4, 100),
    diameterTo: 'unlimited',
    cite,
    notes: [
      'The smallest diameter is half that of the test pipe or {4 in|100 mm}, whichever is greater (footnote f, from memory).',
    ],
    ...(heavy && {
      cautions: [
        'Unlimited by the rows of 2010 and 2020. Older editions name NPS 6 Sch 120 or NPS 8 Sch 80 as the large test pipe (from memory); by those a lighter one does not qualify unlimited thickness. Read the edition of the contract before anybody counts on it.',
      ],
    }),
  };
}
