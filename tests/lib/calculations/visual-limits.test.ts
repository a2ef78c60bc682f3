/**
 * Every limit of the visual check at its printed figure, just under and just over it, in both unit
 * systems, for every code, purpose and kind of weld that it binds. Figures as printed: AWS D1.1 Table
 * 6.1 (2000, 2004, 2015; 8.1 in 2020), clause 6.10.1 (2020), both as quoted; ASME B31.3 Table 341.3.2
 * (1996). From memory: the cyclic row of pores, the height of a cover pass in production, convexity,
 * misalignment, loose spatter, ASME IX QW-194.
 */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import visualCheck from '../../../lib/calculations/visual-check.ts';

type System = 'us' | 'metric';
type Pair = Readonly<Record<System, number>>;
interface Where {
  code: string;
  purposes: readonly string[];
  welds: readonly string[];
}
interface Limit extends Where {
  item: string;
  input: string;
  /** Thickness of the part. */
  t: Pair;
  at: Pair;
  way: 'at most' | 'at least';
  more: Readonly<Record<System, Typed>>;
}

const structural = 'AWS D1.1';
const vessels = 'ASME IX';
const piping = 'ASME B31.3';
const staticLoad = 'production, static load';
const cyclicLoad = 'production, cyclic load';
const coupon = 'welder’s test coupon';
const production = [staticLoad, cyclicLoad];
const fillet = 'fillet';
const openRoot = 'groove, open root';
const grooves = ['groove with backing', openRoot];
const welds = [fillet, ...grooves];

const pair = (us: number, metric: number): Pair => ({ us, metric });
const same = (typed: Typed) => ({ us: typed, metric: typed });
const usual = pair(3 / 8, 10);
const limit = (
  where: Where,
  item: string,
  input: string,
  at: Pair,
  { t = usual, way = 'at most', more = same({}) }: Partial<Pick<Limit, 't' | 'way' | 'more'>> = {},
): Limit => ({ ...where, item, input, at, t, way, more });
const on = (code: string, purposes: readonly string[], kinds: readonly string[]): Where => ({
  code,
  purposes,
  welds: kinds,
});
const faced = (us: string, metric: string, more: Typed = {}) => ({
  more: { us: { faceWidth: us, ...more }, metric: { faceWidth: metric, ...more } },
});
const sized = (us: string, metric: string) => ({
  way: 'at least' as const,
  more: { us: { filletSize: us }, metric: { filletSize: metric } },
});

const cover = 'Height of the cover pass';
const inInch = 'Pores, diameters added up in an inch';
const inFoot = 'Pores, diameters added up in a foot';
const across = { more: same({ transverseToTension: 'yes' }) };
const along = { more: same({ transverseToTension: 'no' }) };
const allD11 = [staticLoad, cyclicLoad, coupon];

const limits: Limit[] = [
  // AWS D1.1, production.
  ...(
    [
      ['Undercut', 'undercutDepth', pair(1 / 32, 1), pair(0.999, 24.9)],
      ['Undercut', 'undercutDepth', pair(1 / 16, 2), pair(1, 25)],
    ] as const
  ).map(([item, input, at, t]) =>
    limit(on(structural, [staticLoad], welds), item, input, at, { t }),
  ),
  limit(on(structural, [cyclicLoad], welds), 'Undercut', 'undercutDepth', pair(0.01, 0.25)),
  limit(on(structural, [cyclicLoad], welds), 'Undercut', 'undercutDepth', pair(0.01, 0.25), {
    t: pair(1.5, 40),
    ...across,
  }),
  limit(on(structural, [cyclicLoad], welds), 'Undercut', 'undercutDepth', pair(1 / 32, 1), along),
  limit(on(structural, [cyclicLoad], welds), 'Undercut', 'undercutDepth', pair(1 / 32, 1), {
    t: pair(1.5, 40),
    ...along,
  }),
  ...(
    [
      [pair(3 / 8, 10), pair(1 / 8, 3)],
      [pair(1, 25), pair(1 / 8, 3)],
      [pair(1.001, 25.1), pair(3 / 16, 5)],
      [pair(2, 50), pair(3 / 16, 5)],
      [pair(2.001, 50.1), pair(1 / 4, 6)],
    ] as const
  ).map(([t, at]) => limit(on(structural, production, grooves), cover, 'reinforcement', at, { t })),
  limit(on(structural, [staticLoad], welds), inInch, 'porosityPerInch', pair(3 / 8, 10)),
  limit(on(structural, [staticLoad], welds), inFoot, 'porosityPerFoot', pair(3 / 4, 20)),
  limit(on(structural, [staticLoad], [fillet]), inInch, 'porosityPerInch', pair(3 / 8, 10), across),
  limit(
    on(structural, production, grooves),
    'Piping porosity',
    'porosityPerInch',
    pair(0, 0),
    across,
  ),
  limit(on(structural, [cyclicLoad], welds), 'Largest pore', 'largestPore', pair(3 / 32, 2.5)),

  // AWS D1.1, fillets: the leg may fall short for a tenth of the length, at a coupon never.
  ...(
    [
      ['3/16 in', '5 mm', pair(3 / 16 - 1 / 16, 3)],
      ['1/4 in', '6 mm', pair(1 / 4 - 3 / 32, 3.5)],
      ['5/16 in', '8 mm', pair(5 / 16 - 1 / 8, 5)],
      ['1/2 in', '12 mm', pair(1 / 2 - 1 / 8, 9)],
    ] as const
  ).map(([us, metric, at]) =>
    limit(on(structural, production, [fillet]), 'Leg, not failing', 'leg', at, sized(us, metric)),
  ),
  limit(on(structural, allD11, [fillet]), 'Leg', 'leg', pair(5 / 16, 8), sized('5/16 in', '8 mm')),
  ...(
    [
      ['5/16 in', '8 mm', pair(1 / 16, 2)],
      ['0.313 in', '8.1 mm', pair(1 / 8, 3)],
      ['0.999 in', '24.9 mm', pair(1 / 8, 3)],
      ['1 in', '25 mm', pair(3 / 16, 5)],
    ] as const
  ).map(([us, metric, at]) =>
    limit(on(structural, allD11, [fillet]), 'Convexity', 'convexity', at, faced(us, metric)),
  ),

  // AWS D1.1, a welder's coupon.
  ...[usual, pair(1, 25), pair(2.5, 60)].flatMap((t) => [
    limit(on(structural, [coupon], welds), 'Undercut', 'undercutDepth', pair(1 / 32, 1), { t }),
    limit(on(structural, [coupon], grooves), cover, 'reinforcement', pair(1 / 8, 3), { t }),
  ]),
  ...(
    [
      ['Incomplete penetration', 'incompletePenetration', pair(0, 0)],
      ['Root concavity', 'rootConcavity', pair(1 / 16, 2)],
      ['Melt-through', 'meltThrough', pair(1 / 8, 3)],
    ] as const
  ).map(([item, input, at]) =>
    limit(on(structural, allD11, [openRoot]), item, input, at, {
      // The cover makes up for a hollow root, so it is told too.
      more: { us: { reinforcement: '1/8 in' }, metric: { reinforcement: '3 mm' } },
    }),
  ),
  ...(
    [
      [usual, pair(0.0375, 1)],
      [pair(1.25, 30), pair(1 / 8, 3)],
      [pair(2, 50), pair(1 / 8, 3)],
    ] as const
  ).map(([t, at]) =>
    limit(on(structural, allD11, grooves), 'Misalignment', 'misalignment', at, { t }),
  ),

  // ASME IX judges coupons only.
  limit(
    on(vessels, [coupon], [openRoot]),
    'Incomplete penetration',
    'incompletePenetration',
    pair(0, 0),
  ),

  // ASME B31.3: a share of a thin wall, and no more than a figure on a thick one.
  ...(
    [
      [pair(1 / 8, 4), pair(1 / 32, 1)],
      [pair(0.1, 3), pair(0.025, 0.75)],
      [pair(1, 25), pair(1 / 32, 1)],
    ] as const
  ).map(([t, at]) => limit(on(piping, production, welds), 'Undercut', 'undercutDepth', at, { t })),
  limit(on(piping, production, welds), 'Surface pores', 'porosityPerInch', pair(0, 0)),
  ...(
    [
      [pair(1 / 4, 6), pair(1 / 16, 1.5)],
      [pair(0.251, 6.1), pair(1 / 8, 3)],
      [pair(1 / 2, 13), pair(1 / 8, 3)],
      [pair(0.501, 13.1), pair(5 / 32, 4)],
      [pair(1, 25), pair(5 / 32, 4)],
      [pair(1.001, 25.1), pair(3 / 16, 5)],
    ] as const
  ).flatMap(([t, at]) => [
    limit(on(piping, production, grooves), cover, 'reinforcement', at, { t }),
    limit(on(piping, production, [openRoot]), 'Protrusion at the root', 'meltThrough', at, { t }),
  ]),
  ...(
    [
      [pair(0.2, 6), pair(1 / 32, 1)],
      [pair(0.1, 3), pair(0.02, 0.6)],
    ] as const
  ).map(([t, at]) =>
    limit(
      on(piping, production, [openRoot]),
      'Incomplete penetration',
      'incompletePenetration',
      at,
      { t },
    ),
  ),
  limit(on(piping, production, [openRoot]), 'Root concavity', 'rootConcavity', pair(1 / 16, 2), {
    more: { us: { reinforcement: '1/16 in' }, metric: { reinforcement: '2 mm' } },
  }),
];

/** What must not be there, or must; the words that pass. */
const seen: (Where & { item: string; input: string; passes: 'yes' | 'no' })[] = [
  ...[
    on(structural, allD11, welds),
    on(vessels, [coupon], welds),
    on(piping, production, welds),
  ].flatMap((where) => [
    { ...where, item: 'Crack', input: 'crack', passes: 'no' as const },
    { ...where, item: 'Incomplete fusion', input: 'incompleteFusion', passes: 'no' as const },
  ]),
  ...(
    [
      ['Craters filled', 'craterFilled', 'yes'],
      ['Overlap', 'overlap', 'no'],
      ['Arc strike outside the weld', 'arcStrike', 'no'],
      ['Loose spatter and slag', 'looseSpatter', 'no'],
    ] as const
  ).map(([item, input, passes]) => ({ ...on(structural, allD11, welds), item, input, passes })),
];

/** One pore in 4 in (100 mm) under cyclic load; the number is a count, alike in both systems. */
const counted = { ...on(structural, [cyclicLoad], welds), item: 'Pores counted' };

const unit = { us: 'in', metric: 'mm' } as const;
const systems = ['us', 'metric'] as const;
/** Less than anybody reads off a gauge. */
const hair: Pair = pair(0.0005, 0.005);

function itemsOf(typed: Typed): { item: string; verdict: string }[] {
  const answered = answer(visualCheck, typed);
  if (!answered.ok) throw new Error(answered.problems.map(({ text }) => text).join('; '));
  return answered.results.items as { item: string; verdict: string }[];
}
const verdictOf = (typed: Typed, item: string) =>
  itemsOf(typed).find((one) => one.item === item)?.verdict ?? 'no such item';

const each = <T extends Where>(one: T) =>
  one.purposes.flatMap((purpose) => one.welds.map((weld) => ({ code: one.code, purpose, weld })));

describe.each(
  limits.flatMap((one) =>
    systems.map(
      (system) =>
        [
          `${one.code}, ${one.purposes.join(' and ')}, ${one.welds.join(' and ')}`,
          system,
          one,
        ] as const,
    ),
  ),
)('%s', (_, system, one) => {
  const { item, input, t, at, way, more } = one;
  const size = (value: number) => `${Number(value.toFixed(6))} ${unit[system]}`;
  const name = item.replace(', not failing', '');
  /** A short leg is not failed before its length is known, and not passed either. */
  const short = name === 'Leg' && item !== name;
  it(`${item}: ${way} ${size(at[system])} where t is ${size(t[system])}`, () => {
    const over = way === 'at most' ? hair[system] : -hair[system];
    for (const whole of each(one)) {
      const verdict = (value: number) =>
        verdictOf(
          { ...whole, thickness: size(t[system]), ...more[system], [input]: size(value) },
          name,
        );
      const good = short ? 'cannot be judged from this' : 'pass';
      expect(verdict(at[system]), 'at').toBe(good);
      if (at[system] > 0) expect(verdict(at[system] - over), 'just within').toBe(good);
      const beyond = verdict(at[system] + over);
      if (short || item !== 'Leg' || whole.purpose === coupon) {
        const listed =
          item === 'Undercut' &&
          whole.code === structural &&
          whole.purpose === staticLoad &&
          t[system] < pair(1, 25)[system];
        expect(beyond, 'just beyond').toBe(listed ? 'cannot be judged from this' : 'fail');
      } else expect(beyond, 'just beyond').toBe('cannot be judged from this');
    }
  });
});

it.each(seen)('$code: $item passes only where it is “$passes”', (one) => {
  for (const whole of each(one))
    for (const word of ['yes', 'no'])
      expect(verdictOf({ ...whole, thickness: '3/8 in', [one.input]: word }, one.item)).toBe(
        word === one.passes ? 'pass' : 'fail',
      );
});

it('passes one pore in the worst four inches under cyclic load and fails two', () => {
  for (const whole of each(counted)) {
    const verdict = (poreCount: string) =>
      verdictOf({ ...whole, thickness: '3/8 in', poreCount }, counted.item);
    expect(['0', '1', '2'].map(verdict)).toEqual(['pass', 'pass', 'fail']);
  }
});

it('leaves no item of any code, purpose and weld without a limit that is tried here', () => {
  const tried = new Set(
    [...limits, ...seen, counted].flatMap((one) =>
      each(one).map(({ code, purpose, weld }) => `${code}, ${purpose}, ${weld}: ${one.item}`),
    ),
  );
  for (const where of [
    on(structural, allD11, welds),
    on(vessels, [coupon], welds),
    on(piping, production, welds),
  ])
    for (const whole of each(where))
      for (const transverseToTension of ['yes', 'no'])
        for (const { item } of itemsOf({
          ...whole,
          thickness: '3/8 in',
          transverseToTension,
          arcStrike: 'no',
          looseSpatter: 'no',
          misalignment: '0',
          faceWidth: '1/2 in',
        }))
          expect([...tried]).toContain(`${whole.code}, ${whole.purpose}, ${whole.weld}: ${item}`);
});

describe('undercut over the plain limit on a part thinner than 1 in (25 mm), static load', () => {
  const typed = (system: System): Typed => ({
    code: structural,
    purpose: staticLoad,
    weld: 'groove with backing',
    thickness: system === 'us' ? '3/4 in' : '20 mm',
    undercutDepth: system === 'us' ? '3/64 in' : '1.5 mm',
  });
  const verdict = (system: System, places: [number, number, number][], more: Typed = {}) =>
    verdictOf(
      {
        ...typed(system),
        undercutPlaces: places.map(([from, to, depth]) => ({
          from: `${from} ${unit[system]}`,
          to: `${to} ${unit[system]}`,
          depth: `${depth} ${unit[system]}`,
        })),
        ...more,
      },
      'Undercut',
    );

  it.each([
    ['us', 2, 12, 3 / 64],
    ['metric', 50, 300, 1.5],
  ] as const)(
    'passes exactly the sum allowed in the worst window and fails a hair more, %s',
    (system, sum, window, depth) => {
      const little = hair[system];
      // Two places that just fit into one window together.
      const pair = (more: number, apart = 0): [number, number, number][] => [
        [3, 3 + sum / 2, depth],
        [3 + window - sum / 2 + apart - more, 3 + window + apart, depth],
      ];
      expect(verdict(system, pair(0))).toBe('pass');
      expect(verdict(system, pair(-little))).toBe('pass');
      expect(verdict(system, pair(little))).toBe('fail');
      // As much longer, but pushed out of the window by as much.
      expect(verdict(system, pair(little, little))).toBe('pass');
    },
  );

  it.each([
    ['us', 1 / 32, 1 / 16],
    ['metric', 1, 2],
  ] as const)(
    'adds up only places deeper than the plain limit, and allows none deeper than twice that, %s',
    (system, plain, most) => {
      const little = hair[system];
      const long = system === 'us' ? 9 : 250;
      const short = system === 'us' ? 1 : 25;
      expect(verdict(system, [[0, long, plain]])).toBe('pass');
      expect(verdict(system, [[0, long, plain + little]])).toBe('fail');
      expect(verdict(system, [[0, short, most]])).toBe('pass');
      expect(verdict(system, [[0, short, most + little]])).toBe('fail');
      const deeper = (depth: number) => ({ undercutDepth: `${depth} ${unit[system]}` });
      expect(verdict(system, [[0, short, plain]], deeper(most))).toBe('pass');
      expect(verdict(system, [[0, short, plain]], deeper(most + little))).toBe('fail');
    },
  );

  it.each([
    ['us', '1 in'],
    ['metric', '25 mm'],
  ] as const)('asks for no places from %s: %s on', (system, thickness) => {
    expect(verdict(system, [[0, 100, 0.04]], { thickness })).toBe('pass');
  });

  it.each([
    ['a coupon', coupon],
    ['cyclic load', cyclicLoad],
  ])('has no allowance for short lengths at %s', (_, purpose) => {
    for (const system of systems)
      expect(
        verdict(system, [[0, 0.1, system === 'us' ? 3 / 64 : 1.5]], {
          purpose,
          transverseToTension: 'no',
        }),
      ).toBe('fail');
  });
});
