/**
 * What the trade also says for a word that a form lists; case, blanks and hyphens do not count. A
 * row applies only where the input lists its word.
 */
const years = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, place) => String(from + place));

export const otherWords: Readonly<Record<string, readonly string[]>> = {
  yes: ['true', 'y'],
  no: ['false', 'n'],

  'AWS D1.1': ['D1.1', 'D1.1/D1.1M', 'AWS D1.1/D1.1M'],
  'ASME IX': ['IX', 'Section IX', 'ASME Section IX', 'ASME BPVC Section IX', 'ASME BPVC IX'],
  'ASME B31.3': ['B31.3'],
  '2010 or later': years(2010, 2029),
  'older, with named test pipes': [...years(1980, 2004), 'older'],

  flat: ['F', '1G', '1F', 'PA', 'downhand'],
  horizontal: ['H', '2G', '2F', 'PB', 'PC'],
  vertical: ['V', '3G', '3F', 'PF', 'vertical up', 'vertical uphill'],
  overhead: ['O', 'OH', '4G', '4F', 'PD', 'PE'],
  uphill: ['up', 'upward', 'vertical up', 'vertical uphill'],
  downhill: ['down', 'downward', 'vertical down', 'vertical downhill'],

  'low-hydrogen': ['LH', 'basic'],
  'not low-hydrogen': [
    'no low-hydrogen',
    'non-low-hydrogen',
    'other',
    'other than low-hydrogen',
    'cellulosic',
    'rutile',
  ],
  'with backing': [
    'yes',
    'true',
    'with',
    'backing',
    'backed',
    'strip',
    'backing strip',
    'backing bar',
  ],
  'without backing': ['no', 'false', 'without', 'none', 'no backing', 'open root'],
  pipe: ['pipes', 'tube', 'tubular'],
  plate: ['plates'],
  SMAW: ['stick', 'MMA', '111'],
  GTAW: ['TIG', '141'],
  GMAW: ['MIG', 'MAG', '135'],

  'groove, open root': ['open root', 'open-root groove', 'groove without backing'],
  'production, static load': ['static', 'static load', 'statically loaded'],
  'production, cyclic load': ['cyclic', 'cyclic load', 'cyclically loaded'],
  'welder’s test coupon': ['test', 'coupon', 'test coupon', 'welder test'],

  opened: ['open', 'unsealed', 'sealed opened', 'container opened', 'can opened', 'box opened'],
  out: ['issued', 'taken out', 'removed', 'exposed', 'out of oven', 'in air'],
  'in oven': ['oven', 'in the oven', 'in holding oven', 'in the holding oven', 'back', 'returned'],
  rebaked: ['rebake', 'baked', 'bake'],

  'at once': ['immediate', 'immediately', 'immediate retest'],
  'after training': ['training', 'after further training', 'further training', 'after practice'],
  looking: ['VT', 'visual'],
  'bend, break or section': [
    'bend',
    'bends',
    'bend test',
    'break',
    'macro',
    'macro-etch',
    'section',
  ],
  radiograph: ['RT', 'x-ray', 'radiography'],
  'slag or incomplete fusion': ['slag', 'incomplete fusion', 'lack of fusion'],
  'none seen': ['none'],
  corner: ['edge'],
  'fill and fillet': ['fill', 'fillet', 'cap', 'cover'],
  'open root': ['root', 'open', 'no backing', 'without backing'],

  STD: ['standard'],
  XS: ['XH', 'extra strong', 'extra heavy'],
  XXS: ['XXH', 'double extra strong', 'double extra heavy'],
  A588: ['A588 Grade A', 'A588 Grade B', 'A588 Grade C', 'A588 Grade K'],
  'A618 Grade II': ['A618'],
  'A537 Class 1': ['A537'],
  parabola: ['parabolic'],
  arc: ['circle', 'circular', 'circular arc'],
  cosine: ['cos'],
  strip: ['backing', 'with backing', 'steel backing', 'backing strip', 'backing bar'],
  'AISC 360': ['AISC', '360', 'AISC 360-05', 'AISC 360-10', 'AISC 360-16', 'AISC 360-22'],
  AC: ['alternating', 'alternating current'],
  DC: ['DCEP', 'DCEN', 'DC+', 'DC−', 'direct', 'direct current'],
  ...cableSizes(),
};

/** A cable is ordered by its number alone; 2/0 is also 00. */
function cableSizes(): Record<string, string[]> {
  return Object.fromEntries([
    ...['6', '4', '3', '2', '1'].map((n) => [
      `${n} AWG`,
      [n, `AWG ${n}`, `#${n}`, `No. ${n}`, `${n} gauge`],
    ]),
    ...[1, 2, 3, 4].map((n) => [`${n}/0 AWG`, [`${n}/0`, `AWG ${n}/0`, '0'.repeat(n)]]),
    ...['16', '25', '35', '50', '70', '95'].map((n) => [`${n} mm2`, [n, `${n} mm²`, `${n} sq mm`]]),
  ]);
}

/** Nominal pipe sizes by their metric name. */
export const byDiametreNominal: Readonly<Record<string, string>> = {
  dn15: '1/2',
  dn20: '3/4',
  dn25: '1',
  dn32: '1-1/4',
  dn40: '1-1/2',
  dn50: '2',
  dn65: '2-1/2',
  dn80: '3',
  dn90: '3-1/2',
  dn100: '4',
  dn125: '5',
  dn150: '6',
  dn200: '8',
  dn250: '10',
  dn300: '12',
};
