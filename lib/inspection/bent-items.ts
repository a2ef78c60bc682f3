/** The openings of one bent strap, judged item by item under both codes. */
import type { Citation, Printed } from '../calculation.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { bendD11, bendIX } from '../tables/bend-limits.ts';
import { printReading } from '../text/print-reading.ts';
import { printStated } from '../text/quantity-text.ts';
import type { System } from '../units.ts';
import { inSystem } from './visual-item.ts';

export interface Opening {
  size: Printed;
  place: 'face' | 'corner';
  cause: 'none seen' | 'slag or incomplete fusion';
}
export type BentVerdict = 'pass' | 'fail' | 'bend another strap';
export interface BentItem {
  code: 'AWS D1.1' | 'ASME IX';
  item: string;
  verdict: BentVerdict;
  reading: string;
  limit: string;
  cite: Citation;
}

const touch = 1 + 1e-9;
const over = ({ value, system }: Printed, limit: PrintedFigure) => value > limit[system] * touch;
const flawed = ({ cause }: Opening) => cause !== 'none seen';

const told = (pair: PrintedFigure) =>
  `{${printStated(pair.us, 'in').replace(/\s*in$/u, '')} in|${pair.metric} mm}`;
const unit = (system: System) => (system === 'us' ? 'in' : 'mm');
const plainSpace = (text: string) => text.replace('\u00a0', ' ');
const tell = (value: number, system: System, limit?: PrintedFigure) =>
  plainSpace(
    limit ? printReading(value, unit(system), limit[system]) : printStated(value, unit(system)),
  );

/** The largest of them as a reading, in the system it was measured in. */
function largest(openings: readonly Opening[], limit?: PrintedFigure): string {
  const [first, ...rest] = openings;
  if (!first) return 'none';
  const { size } = rest.reduce(
    (best, one) => (inSystem(one.size, 'us') > inSystem(best.size, 'us') ? one : best),
    first,
  );
  return tell(size.value, size.system, limit);
}

function oneByOne(
  code: BentItem['code'],
  item: string,
  openings: readonly Opening[],
  limit: PrintedFigure,
  cite: Citation,
  otherwise: BentVerdict = 'fail',
): BentItem {
  const bad = openings.some(({ size }) => over(size, limit));
  const text = `no longer than ${told(limit)}`;
  return {
    code,
    item,
    verdict: bad ? otherwise : 'pass',
    reading: largest(openings, limit),
    limit: text,
    cite,
  };
}

/** A corner crack with slag or incomplete fusion in it is an opening like any other. */
const likeOpenings = (all: readonly Opening[]) =>
  all.filter((one) => one.place === 'face' || flawed(one));
const bareCorners = (all: readonly Opening[]) =>
  all.filter((one) => one.place === 'corner' && !flawed(one));

/**
 * AWS D1.1 (2015 clause 4.9.3.3): the largest opening, the smaller ones added up, and bare corner
 * cracks, which ask for another strap.
 */
export function itemsD11(all: readonly Opening[]): BentItem[] {
  const { cite, corner, countedFrom, largest: most, sum } = bendD11;
  const counted = likeOpenings(all).filter(
    ({ size }) => over(size, countedFrom) && !over(size, most),
  );
  const system =
    counted.every(({ size }) => size.system === 'metric') && counted.length > 0 ? 'metric' : 'us';
  const total = counted.reduce((added, { size }) => added + inSystem(size, system), 0);
  return [
    oneByOne('AWS D1.1', 'Largest opening', likeOpenings(all), most, cite),
    {
      code: 'AWS D1.1',
      item: 'Openings added up',
      verdict: total > sum[system] * touch ? 'fail' : 'pass',
      reading: counted.length === 0 ? 'none' : tell(Number(total.toFixed(4)), system, sum),
      limit: `those longer than ${told(countedFrom)}, up to ${told(most)}, add up to at most ${told(sum)}`,
      cite,
    },
    oneByOne(
      'AWS D1.1',
      'Corner crack without a flaw in it',
      bareCorners(all),
      corner,
      cite,
      'bend another strap',
    ),
  ];
}

/** ASME IX QW-163: the largest opening; a bare corner crack is not counted. */
export function itemsIX(all: readonly Opening[]): BentItem[] {
  const { cite, largest: most } = bendIX;
  const corners = bareCorners(all);
  return [
    oneByOne('ASME IX', 'Largest opening', likeOpenings(all), most, cite),
    {
      code: 'ASME IX',
      item: 'Corner crack without a flaw in it',
      verdict: 'pass',
      reading: largest(corners),
      limit: 'not counted',
      cite,
    },
  ];
}
