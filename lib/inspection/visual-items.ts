/**
 * The visual check item by item. Each judges one thing and says by which limit; what was not read
 * cannot be judged.
 */
import type { Citation, Printed } from '../calculation.ts';
import { citeConvexity, convexityLimits, faceRow } from '../tables/convexity-d1.1.ts';
import type { Pair, Purpose } from '../tables/visual-limits.ts';
import * as limits from '../tables/visual-limits.ts';
import { printStated } from '../text/quantity-text.ts';
import type { System } from '../units.ts';
import { type Place, worstWindow } from './undercut-window.ts';

export type Verdict = 'pass' | 'fail' | 'cannot be judged from this';

export interface Item {
  item: string;
  verdict: Verdict;
  reading: string;
  limit: string;
  cite: Citation;
}

type YesNo = 'yes' | 'no' | undefined;
type Reading = Printed | undefined;

export interface Readings {
  code: 'AWS D1.1' | 'ASME IX' | 'ASME B31.3';
  purpose: Purpose;
  weld: 'fillet' | 'groove with backing' | 'groove, open root';
  thickness: Printed;
  crack: YesNo;
  incompleteFusion: YesNo;
  overlap: YesNo;
  craterFilled: YesNo;
  arcStrike: YesNo;
  looseSpatter: YesNo;
  misalignment: Reading;
  filletSize: Reading;
  leg: Reading;
  convexity: Reading;
  faceWidth: Reading;
  undercutDepth: Reading;
  undercutPlaces: { from: Printed; to: Printed; depth: Printed }[] | undefined;
  transverseToTension: YesNo;
  reinforcement: Reading;
  porosityPerInch: Reading;
  porosityPerFoot: Reading;
  poreCount: number | undefined;
  largestPore: Reading;
  incompletePenetration: Reading;
  rootConcavity: Reading;
  meltThrough: Reading;
}

const unit = (system: System) => (system === 'us' ? 'in' : 'mm');
const tell = (value: number, system: System) =>
  printStated(value, unit(system)).replace('\u00a0', ' ');
const size = (pair: Pair) => `{${plain(pair.us)} in|${pair.metric} mm}`;
const plain = (inches: number) => printStated(inches, 'in').replace(/\s*in$/u, '');
const unread = 'not read';

/** Compares one reading with one limit of its system. */
function most(
  item: string,
  reading: Reading,
  at: Pair,
  cite: Citation,
  text = `at most ${size(at)}`,
): Item {
  if (!reading)
    return { item, verdict: 'cannot be judged from this', reading: unread, limit: text, cite };
  const within = reading.value <= at[reading.system] * (1 + 1e-9);
  return {
    item,
    verdict: within ? 'pass' : 'fail',
    reading: tell(reading.value, reading.system),
    limit: text,
    cite,
  };
}

function never(
  item: string,
  found: YesNo,
  cite: Citation,
  wanted: 'yes' | 'no' = 'no',
  text = 'none',
): Item {
  if (!found)
    return { item, verdict: 'cannot be judged from this', reading: unread, limit: text, cite };
  return { item, verdict: found === wanted ? 'pass' : 'fail', reading: found, limit: text, cite };
}

const rowOf = <T extends { upTo: Pair }>(rows: readonly T[], by: Printed): T =>
  (rows.find((row) => by.value <= row.upTo[by.system] * (1 + 1e-9)) ?? rows.at(-1)) as T;

export function visualItems(it: Readings): Item[] {
  if (it.code === 'ASME B31.3') return pipingItems(it);
  const test = it.purpose === 'welder’s test coupon';
  const base =
    it.code === 'ASME IX' ? limits.sectionNine : test ? limits.testClause : limits.table2000;
  const items = [
    never('Crack', it.crack, base),
    never('Incomplete fusion', it.incompleteFusion, base),
  ];
  if (it.code === 'ASME IX') return [...items, ...rootItems(it, base)];
  items.push(
    never('Craters filled', it.craterFilled, base, 'yes', 'filled to the size of the weld'),
    never('Overlap', it.overlap, limits.profiles),
    undercutItem(it),
  );
  if (it.weld === 'fillet') items.push(...filletItems(it));
  else items.push(reinforcementItem(it));
  if (!test) items.push(...porosityItems(it));
  if (test || it.weld === 'groove, open root') items.push(...rootItems(it, base));
  return [...items, ...besideTheWeld(it)];
}

/** What lies beside the weld, or was wrong before it: told only where somebody looked. */
function besideTheWeld({
  arcStrike,
  looseSpatter,
  misalignment,
  weld,
  thickness,
}: Readings): Item[] {
  const items: Item[] = [];
  if (arcStrike !== undefined)
    items.push(
      never(
        'Arc strike outside the weld',
        arcStrike,
        limits.strikeCite,
        'no',
        'none; ground smooth where one is',
      ),
    );
  if (looseSpatter !== undefined)
    items.push(
      never(
        'Loose spatter and slag',
        looseSpatter,
        limits.spatterCite,
        'no',
        'brushed off; what sticks fast may stay, unless another test or the paint asks for it off',
      ),
    );
  if (misalignment !== undefined && weld !== 'fillet') {
    const { share, at, cite } = limits.misalignment;
    items.push(
      most(
        'Misalignment',
        misalignment,
        shareOf(at, share, thickness),
        cite,
        `at most a tenth of the thinner part, and ${size(at)}`,
      ),
    );
  }
  return items;
}

/** The smaller of a printed size and a share of the thickness, in both systems. */
const shareOf = (pair: Pair, part: number, { value, system }: Printed): Pair => ({
  us: Math.min(pair.us, part * (system === 'us' ? value : value / 25.4)),
  metric: Math.min(pair.metric, part * (system === 'metric' ? value : value * 25.4)),
});

function undercutItem(it: Readings): Item {
  const { undercut } = limits;
  const { undercutDepth: depth, thickness } = it;
  if (it.purpose === 'welder’s test coupon')
    return most('Undercut', depth, undercut.test.at, undercut.test.cite);
  if (it.purpose === 'production, cyclic load') {
    const row = it.transverseToTension === 'no' ? undercut.cyclicOther : undercut.cyclicPrimary;
    const where = it.transverseToTension === 'no' ? '' : ', in primary members across the tension';
    return most('Undercut', depth, row.at, row.cite, `at most ${size(row.at)}${where}`);
  }
  if (thickness.value >= limits.thickFrom[thickness.system] * (1 - 1e-9))
    return most('Undercut', depth, undercut.thick.at, undercut.thick.cite);
  const text = `at most ${size(undercut.thin.at)}; up to ${size(undercut.thinShort.at)} for ${size(limits.shortSum)} added up in any ${size(limits.window)}`;
  const one = most('Undercut', depth, undercut.thin.at, undercut.thin.cite, text);
  if (one.verdict !== 'fail' || !depth) return one;
  if (depth.value > undercut.thinShort.at[depth.system] * (1 + 1e-9)) return one;
  if (!it.undercutPlaces || it.undercutPlaces.length === 0)
    return {
      ...one,
      verdict: 'cannot be judged from this',
      reading: `${one.reading}; list the places`,
    };
  return { ...one, ...placesVerdict(it.undercutPlaces, depth.system) };
}

/** A reading in one system; a gauge and a drawing may be in different ones. */
const inSystem = ({ value, system }: Printed, wanted: System): number =>
  system === wanted ? value : wanted === 'us' ? value / 25.4 : value * 25.4;

/** Only places deeper than the plain limit are added up. */
function placesVerdict(
  places: NonNullable<Readings['undercutPlaces']>,
  system: System,
): Pick<Item, 'verdict' | 'reading'> {
  const { thin, thinShort } = limits.undercut;
  const to = (size: Printed) => inSystem(size, system);
  const listed: Place[] = places.map(({ from, to: end, depth }) => ({
    from: to(from),
    to: to(end),
    depth: to(depth),
  }));
  const deepest = Math.max(...listed.map(({ depth }) => depth));
  const counted = listed.filter(({ depth }) => depth > thin.at[system] * (1 + 1e-9));
  const sum = worstWindow(counted, limits.window[system]);
  const good =
    deepest <= thinShort.at[system] * (1 + 1e-9) && sum <= limits.shortSum[system] * (1 + 1e-9);
  return {
    verdict: good ? 'pass' : 'fail',
    reading: `${tell(deepest, system)} deep, ${tell(Number(sum.toFixed(4)), system)} in the worst ${tell(limits.window[system], system)}`,
  };
}

function filletItems(it: Readings): Item[] {
  const items: Item[] = [];
  const { filletSize, leg, faceWidth } = it;
  const undersizeCite = limits.table2000;
  if (filletSize && leg && it.purpose !== 'welder’s test coupon') {
    const { by } = rowOf(limits.undersize, filletSize);
    const short = filletSize.value - inSystem(leg, filletSize.system);
    items.push({
      item: 'Leg',
      verdict:
        short <= 1e-9
          ? 'pass'
          : short <= by[filletSize.system] * (1 + 1e-9)
            ? 'cannot be judged from this'
            : 'fail',
      reading: tell(leg.value, leg.system),
      limit: `the size; below it by at most ${size(by)} for at most a tenth of the length`,
      cite: undersizeCite,
    });
  } else if (filletSize && leg) {
    const same = inSystem(leg, filletSize.system);
    items.push({
      item: 'Leg',
      verdict: same >= filletSize.value * (1 - 1e-9) ? 'pass' : 'fail',
      reading: tell(leg.value, leg.system),
      limit: `at least the size, ${tell(filletSize.value, filletSize.system)}`,
      cite: limits.testClause,
    });
  } else
    items.push({
      item: 'Leg',
      verdict: 'cannot be judged from this',
      reading: unread,
      limit: 'the size on the drawing',
      cite: undersizeCite,
    });
  if (faceWidth) {
    const top = convexityLimits[faceRow(faceWidth.value, faceWidth.system)];
    items.push(most('Convexity', it.convexity, top, citeConvexity));
  } else
    items.push({
      item: 'Convexity',
      verdict: 'cannot be judged from this',
      reading: unread,
      limit: 'by the width of the face',
      cite: citeConvexity,
    });
  return items;
}

function reinforcementItem(it: Readings): Item {
  if (it.purpose === 'welder’s test coupon')
    return most(
      'Height of the cover pass',
      it.reinforcement,
      limits.reinforcementTest.at,
      limits.reinforcementTest.cite,
    );
  const row = rowOf(limits.reinforcement, it.thickness);
  return most('Height of the cover pass', it.reinforcement, row.most, limits.reinforcementCite);
}

function porosityItems(it: Readings): Item[] {
  if (it.weld !== 'fillet' && it.transverseToTension === 'yes')
    return [
      most(
        'Piping porosity',
        it.porosityPerInch,
        limits.noPores.at,
        limits.noPores.cite,
        'none in a groove across the tension',
      ),
    ];
  if (it.purpose === 'production, cyclic load') return countedPores(it);
  return [
    most(
      'Pores, diameters added up in an inch',
      it.porosityPerInch,
      limits.porosityPerInch.at,
      limits.porosityPerInch.cite,
    ),
    most(
      'Pores, diameters added up in a foot',
      it.porosityPerFoot,
      limits.porosityPerFoot.at,
      limits.porosityPerFoot.cite,
    ),
  ];
}

/** Under cyclic load each pore counts, however small, and none may be large. */
function countedPores({ weld, poreCount, largestPore }: Readings): Item[] {
  const { count, in: length, cite } = limits.mostPores;
  const stiffener =
    weld === 'fillet' ? '; the fillet of a stiffener to its web goes by the static row' : '';
  return [
    {
      item: 'Pores counted',
      verdict:
        poreCount === undefined
          ? 'cannot be judged from this'
          : poreCount <= count
            ? 'pass'
            : 'fail',
      reading: poreCount === undefined ? unread : String(poreCount),
      limit: `at most one in any ${size(length)} of weld${stiffener}`,
      cite,
    },
    most('Largest pore', largestPore, limits.largestPore.at, limits.largestPore.cite),
  ];
}

function rootItems(it: Readings, cite: Citation): Item[] {
  if (it.weld !== 'groove, open root') return [];
  const none = { us: 0, metric: 0 };
  const items = [most('Incomplete penetration', it.incompletePenetration, none, cite, 'none')];
  if (it.code === 'ASME IX') return items;
  const { rootConcavity, meltThrough } = limits;
  return [
    ...items,
    withFullThickness(
      most(
        'Root concavity',
        it.rootConcavity,
        rootConcavity.at,
        rootConcavity.cite,
        `at most ${size(rootConcavity.at)}, and the joint, cover pass included, nowhere thinner than the plate`,
      ),
      it,
    ),
    most('Melt-through', it.meltThrough, meltThrough.at, meltThrough.cite),
  ];
}

/** A hollow at the root is made good by the cover pass, or the joint is thinner than the plate. */
function withFullThickness(item: Item, { rootConcavity, reinforcement }: Readings): Item {
  if (item.verdict !== 'pass' || !rootConcavity || rootConcavity.value === 0) return item;
  if (!reinforcement)
    return {
      ...item,
      verdict: 'cannot be judged from this',
      reading: `${item.reading}; read the cover pass too`,
    };
  return coveredBy(rootConcavity, reinforcement) ? item : { ...item, verdict: 'fail' };
}

const inInches = ({ value, system }: Printed) => (system === 'us' ? value : value / 25.4);
const coveredBy = (hollow: Printed, cover: Printed) =>
  inInches(hollow) <= inInches(cover) * (1 + 1e-9);

/** ASME B31.3, normal fluid service, girth welds and fillets. */
function pipingItems(it: Readings): Item[] {
  const { thickness } = it;
  const share = (pair: Pair, part: number): Pair => shareOf(pair, part, thickness);
  const undercut = share(limits.undercut.piping.at, 1 / 4);
  const { depth, share: part, cite } = limits.incompletePenetrationPiping;
  const items = [
    never('Crack', it.crack, limits.processPiping('crack')),
    never('Incomplete fusion', it.incompleteFusion, limits.processPiping('lack of fusion')),
    most(
      'Undercut',
      it.undercutDepth,
      undercut,
      limits.undercut.piping.cite,
      `at most ${size(limits.undercut.piping.at)}, and a quarter of the wall`,
    ),
    most(
      'Surface pores',
      it.porosityPerInch,
      { us: 0, metric: 0 },
      limits.processPiping('surface porosity'),
      'none',
    ),
  ];
  if (it.weld === 'fillet') return items;
  items.push(
    most(
      'Height of the cover pass',
      it.reinforcement,
      rowOf(limits.reinforcementPiping, thickness).most,
      limits.processPiping('reinforcement'),
    ),
  );
  if (it.weld === 'groove, open root')
    items.push(
      hollowRoot(it),
      most(
        'Incomplete penetration',
        it.incompletePenetration,
        share(depth, part),
        cite,
        `at most ${size(depth)} and a fifth of the wall deep; {1-1/2 in|38 mm} in any {6 in|150 mm}`,
      ),
      most(
        'Protrusion at the root',
        it.meltThrough,
        rowOf(limits.reinforcementPiping, thickness).most,
        limits.processPiping('reinforcement or protrusion'),
      ),
    );
  return items;
}

/** A hollow at the root is made good by the cover pass: the joint is nowhere thinner than the wall. */
function hollowRoot({ rootConcavity, reinforcement }: Readings): Item {
  const item = 'Root concavity';
  const limit = 'the joint, cover pass included, nowhere thinner than the wall';
  const cite = limits.processPiping('concave root surface');
  if (!rootConcavity || !reinforcement)
    return { item, verdict: 'cannot be judged from this', reading: unread, limit, cite };
  const filled = coveredBy(rootConcavity, reinforcement);
  const reading = tell(rootConcavity.value, rootConcavity.system);
  return { item, verdict: filled ? 'pass' : 'fail', reading, limit, cite };
}
