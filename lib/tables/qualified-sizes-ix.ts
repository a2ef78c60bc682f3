/** ASME IX: diameters by the test pipe, thickness by what each filler deposited. */
import type { Citation, Printed } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { type QualifiedSizes, type Reach, timesSize } from './qualified-sizes.ts';
import type { Form } from './test-positions.ts';

const size = (us: number, metric: number): PrintedFigure => ({ us, metric });
const smallPipe = size(1, 25);
const largePipe = size(2 + 7 / 8, 73);
const thickDeposit = size(1 / 2, 13);
const thinPlate = size(3 / 16, 5);

interface Coupon {
  form: Form;
  /** A groove weld; otherwise a fillet weld. */
  isGroove: boolean;
  thickness: Printed;
  /** What each filler laid, and in how many layers. */
  deposits: readonly { thickness: Printed; layers: number | undefined }[];
  /** Of pipe. */
  outsideDiameter: Printed | undefined;
}

/** A fillet qualifies any thickness, unless its plate is thin; a groove what its fillers reach. */
export function sizesIX(coupon: Coupon): QualifiedSizes {
  const { form, isGroove, deposits, outsideDiameter } = coupon;
  if (!isGroove && form === 'plate') return plateFillet(coupon.thickness);
  return {
    thicknessFrom: 'no minimum',
    thicknessTo: isGroove ? thicknessTo(deposits) : 'unlimited',
    ...diameters(form, outsideDiameter),
  };
}

/** QW-452.5: thin plate qualifies thin plate only. */
function plateFillet(thickness: Printed): QualifiedSizes {
  const isThin = thickness.value < thinPlate[thickness.system];
  return {
    thicknessFrom: isThin ? timesSize(thickness, 1) : 'no minimum',
    thicknessTo: isThin ? timesSize(thickness, 2) : 'unlimited',
    diameterFrom: largePipe,
    diameterTo: 'unlimited',
    cite: { source: 'asme-ix', at: 'QW-452.5', known: 'memory' },
    notes: [
      isThin
        ? 'A fillet on plate under {3/16 in|5 mm} qualifies from its own thickness to twice that, with legs up to its thickness.'
        : 'A fillet on plate of {3/16 in|5 mm} or more qualifies any thickness and size, and pipe from {2-7/8 in|73 mm} outside diameter.',
    ],
  };
}

/** With more than one filler there is no single answer: each has its own reach. */
function thicknessTo(deposits: Coupon['deposits']): Reach {
  const [only, ...others] = deposits;
  return only && others.length === 0 ? depositReach(only.thickness, only.layers) : 'see deposits';
}

/** QW-452.3: the smallest outside diameter for grooves. */
function diameters(
  form: Form,
  outside: Printed | undefined,
): Pick<QualifiedSizes, 'diameterFrom' | 'diameterTo' | 'cite' | 'notes'> {
  if (form === 'plate' || !outside)
    return {
      diameterFrom: largePipe,
      diameterTo: 'unlimited',
      cite: { source: 'asme-ix', at: 'QW-461.9 note 2', known: 'read' },
      notes: [
        'A test on plate counts for pipe from {2-7/8 in|73 mm} outside diameter, in the positions named.',
      ],
    };
  const cite: Citation = { source: 'asme-ix', at: 'QW-452.3', known: 'read' };
  const { value, system } = outside;
  if (value < smallPipe[system])
    return {
      diameterFrom: timesSize(outside, 1),
      diameterTo: 'unlimited',
      cite,
      notes: ['Under {1 in|25 mm}: from the size that was welded.'],
    };
  if (value <= largePipe[system])
    return {
      diameterFrom: smallPipe,
      diameterTo: 'unlimited',
      cite,
      notes: [
        Math.abs(value - largePipe[system]) < 1e-6
          ? 'At exactly {2-7/8 in|73 mm} summaries differ: the text “1 to 2-7/8” gives a minimum of 1 in, “2-7/8 and over” would give 2-7/8 in. The text is used here.'
          : 'From {1 in|25 mm} to {2-7/8 in|73 mm}: qualifies from {1 in|25 mm}.',
      ],
    };
  return {
    diameterFrom: largePipe,
    diameterTo: 'unlimited',
    cite,
    notes: ['Over {2-7/8 in|73 mm}: qualifies from {2-7/8 in|73 mm}.'],
  };
}

/** QW-452.1(b): twice the deposit, or any thickness from 1/2 in (13 mm) laid in three layers or more. */
export function depositReach(thickness: Printed, layers = 1): PrintedFigure | 'unlimited' {
  const isThick = thickness.value >= thickDeposit[thickness.system];
  return isThick && layers >= 3 ? 'unlimited' : timesSize(thickness, 2);
}
