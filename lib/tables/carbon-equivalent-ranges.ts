/**
 * The steels for which each carbon equivalent was made, in percent of mass. Outside its range an
 * index still has a value, but nobody has measured that it means anything.
 */
import type { Citation, Reason } from '../calculation.ts';

type Element =
  | 'carbon'
  | 'manganese'
  | 'silicon'
  | 'copper'
  | 'nickel'
  | 'chromium'
  | 'molybdenum'
  | 'vanadium'
  | 'niobium'
  | 'boron';
export type Steel = Readonly<Record<Element, number>>;

/** Ends included. */
type Range = readonly [least: number, most: number];

const iiw = {
  carbon: [0.05, 0.25],
  /** Of the index itself: what method A covers. */
  index: [0.3, 0.7],
  cite: { source: 'en-1011-2', at: 'C.2, method A', known: 'memory' },
} as const satisfies { carbon: Range; index: Range; cite: Citation };

const pcm = {
  made: 0.11,
  madeCite: { source: 'carbon-equivalent-guide', at: 'Pcm', known: 'read' },
  used: 0.18,
  usedCite: {
    source: 'carbon-equivalent-guide',
    at: 'Pcm; the upper figure is from memory',
    known: 'memory',
  },
} as const satisfies Record<string, number | Citation>;

const cet = {
  carbon: [0.05, 0.32],
  manganese: [0.5, 1.9],
  most: {
    silicon: 0.8,
    copper: 0.7,
    nickel: 2.5,
    chromium: 1.5,
    molybdenum: 0.75,
    vanadium: 0.18,
    niobium: 0.06,
    boron: 0.005,
  },
  cite: { source: 'en-1011-2', at: 'C.3, method B', known: 'memory' },
} as const satisfies {
  carbon: Range;
  manganese: Range;
  most: Partial<Steel>;
  cite: Citation;
};

/** A caution for each index that this steel lies outside of. */
export const outsideRanges = (steel: Steel, ceIIW: number): Reason[] =>
  [withoutManganese(steel), outsideIIW(steel, ceIIW), outsidePcm(steel), outsideCET(steel)].filter(
    (one) => one !== undefined,
  );

const caution = (text: string, cite?: Citation): Reason => ({
  kind: 'caution',
  text,
  ...(cite && { cite }),
});
const isOutside = (value: number, [least, most]: Range): boolean => value < least || value > most;
const said = ([least, most]: Range, decimals = 2): string =>
  `{${least.toFixed(decimals)} percent} to {${most.toFixed(decimals)} percent}`;

const withoutManganese = ({ manganese }: Steel): Reason | undefined =>
  manganese === 0
    ? caution(
        'Manganese counts as 0 here, but every structural steel holds some. Look at the report again.',
      )
    : undefined;

function outsideIIW({ carbon }: Steel, ceIIW: number): Reason | undefined {
  if (isOutside(carbon, iiw.carbon))
    return caution(`The IIW index holds for ${said(iiw.carbon)} carbon.`, iiw.cite);
  if (isOutside(ceIIW, iiw.index))
    return caution(`Method A, which uses the IIW index, covers ${said(iiw.index)}.`, iiw.cite);
  return undefined;
}

function outsidePcm({ carbon }: Steel): Reason | undefined {
  if (carbon <= pcm.made) return undefined;
  const made = `Pcm was made for pipeline steels with up to about {${pcm.made} percent} carbon`;
  return carbon <= pcm.used
    ? caution(`${made}; at this carbon, take it as a second opinion.`, pcm.madeCite)
    : caution(`${made} and is not used above about {${pcm.used} percent}.`, pcm.usedCite);
}

function outsideCET(steel: Steel): Reason | undefined {
  const { carbon, manganese } = steel;
  const ranges: string[] = [];
  if (isOutside(carbon, cet.carbon)) ranges.push(`carbon ${said(cet.carbon)}`);
  // Steel without a figure for manganese has its caution already.
  if (manganese !== 0 && isOutside(manganese, cet.manganese))
    ranges.push(`manganese ${said(cet.manganese, 1)}`);
  for (const [name, most] of Object.entries(cet.most) as [keyof typeof cet.most, number][])
    if (steel[name] > most) ranges.push(`${name} up to {${most} percent}`);
  return ranges.length === 0 ? undefined : caution(`CET holds for ${ranges.join(', ')}.`, cet.cite);
}
