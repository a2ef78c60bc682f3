/**
 * Which thicknesses and diameters a test qualifies, and which specimens are cut. Figures are the
 * printed ones of each unit system.
 */
import type { Citation, Printed } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import type { System } from '../units.ts';
import type { Code, Form } from './test-positions.ts';

export interface Pair {
  us: number;
  metric: number;
}
export type Reach = Pair | 'unlimited' | 'no minimum' | 'see deposits';

export interface Sizes {
  thicknessFrom: Reach;
  thicknessTo: Reach;
  diameterFrom: Reach;
  diameterTo: Reach;
  cite: Citation;
  notes: string[];
  cautions?: string[];
}

export const editions = ['2010 or later', 'older, with named test pipes'] as const;
export type Edition = (typeof editions)[number];

const both = ({ value, system }: Printed, times: number): Pair => {
  const other = system === 'us' ? value * 25.4 : value / 25.4;
  return system === 'us'
    ? { us: value * times, metric: other * times }
    : { us: other * times, metric: value * times };
};
const at = (us: number, metric: number) => ({ us, metric });
const pick = (pair: Pair, system: System) => pair[system];

/** The test pipes that AWS D1.1 named up to the early 2000s, and what each pair covered. */
const namedPipes = [
  {
    pipes: [
      { od: at(2.375, 60.3), wall: at(0.218, 5.54) },
      { od: at(3.5, 88.9), wall: at(0.216, 5.49) },
    ],
    thickness: [at(0.063, 1.6), at(0.674, 17.1)] as const,
    diameter: [at(3 / 4, 19), at(4, 102)] as const,
  },
  {
    pipes: [
      { od: at(6.625, 168.3), wall: at(0.562, 14.27) },
      { od: at(8.625, 219.1), wall: at(0.5, 12.7) },
    ],
    thickness: [at(0.187, 4.7), 'unlimited'] as const,
    diameter: [at(4, 102), 'unlimited'] as const,
  },
];

function sizesByNamedPipe(t: Printed, od: Printed): Sizes {
  const same = (size: Printed, pair: Pair) =>
    Math.abs(size.value - pair[size.system]) <= 0.015 * pair[size.system];
  const row = namedPipes.find(({ pipes }) =>
    pipes.some((pipe) => same(od, pipe.od) && same(t, pipe.wall)),
  );
  if (!row)
    throw new NoAnswer(
      'is none of the test pipes that those editions name: NPS 2 Sch 80, NPS 3 Sch 40, NPS 6 Sch 120, NPS 8 Sch 80',
      'outsideDiameter',
    );
  return {
    thicknessFrom: row.thickness[0],
    thicknessTo: row.thickness[1],
    diameterFrom: row.diameter[0],
    diameterTo: row.diameter[1],
    cite: {
      source: 'aws-d1.1',
      at: 'editions to the early 2000s, standard pipe tests',
      known: 'memory',
    },
    notes: ['Editions to the early 2000s go by the named test pipe, and this is one of them.'],
  };
}

/** AWS D1.1: by the thickness of the coupon, whatever was deposited with what. */
export function sizesD11(
  form: Form,
  groove: boolean,
  t: Printed,
  od: Printed | undefined,
  edition: Edition = '2010 or later',
): Sizes {
  const { value, system } = t;
  if (!groove)
    return {
      thicknessFrom: at(1 / 8, 3),
      thicknessTo: 'unlimited',
      diameterFrom: form === 'pipe' && od ? both(od, 1) : at(24, 600),
      diameterTo: 'unlimited',
      cite: {
        source: 'aws-d1.1',
        at: '2020 Table 6.11; pipe fillets Table 10.13',
        known: 'memory',
      },
      notes: [],
    };
  if (form === 'plate') {
    const memory: Citation = { source: 'aws-d1.1', at: '2020 Table 6.11', known: 'memory' };
    const thick = value >= pick(at(1, 25), system);
    const limited = Math.abs(value - pick(at(3 / 8, 10), system)) < 0.02 * value;
    return {
      thicknessFrom: at(1 / 8, 3),
      thicknessTo: thick ? 'unlimited' : limited ? at(3 / 4, 20) : both(t, 2),
      diameterFrom: at(24, 600),
      diameterTo: 'unlimited',
      cite: memory,
      notes: [
        thick
          ? 'A coupon of {1 in|25 mm} or more qualifies any thickness.'
          : limited
            ? 'The {3/8 in|10 mm} coupon qualifies up to {3/4 in|20 mm}.'
            : 'A coupon between {3/8 in|10 mm} and {1 in|25 mm} qualifies up to twice its thickness.',
      ],
    };
  }
  const read: Citation = { source: 'aws-d1.1', at: '2020 Table 10.13', known: 'read' };
  const diameter = od as Printed;
  if (edition !== '2010 or later') return sizesByNamedPipe(t, diameter);
  if (diameter.value <= pick(at(4.5, 114.3), diameter.system) * 1.001)
    return {
      thicknessFrom: at(1 / 8, 3),
      thicknessTo: at(3 / 4, 20),
      diameterFrom: at(3 / 4, 20),
      diameterTo: at(4, 100),
      cite: read,
      notes: [
        'Pipe of NPS 4 or less. Editions to the early 2000s named the test pipes (NPS 2 Sch 80 or NPS 3 Sch 40) and gave {0.063 in} to {0.674 in} instead: the edition of the contract decides.',
      ],
    };
  const heavy = value > pick(at(3 / 8, 10), system);
  const half = both(diameter, 0.5);
  return {
    thicknessFrom: heavy ? at(3 / 16, 5) : at(1 / 8, 3),
    thicknessTo: heavy ? 'unlimited' : at(3 / 4, 20),
    diameterFrom: half.us > 4 ? half : at(4, 100),
    diameterTo: 'unlimited',
    cite: read,
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

/** ASME IX QW-452.3: the smallest outside diameter for grooves. */
export function diametersIX(
  form: Form,
  od: Printed | undefined,
): Pick<Sizes, 'diameterFrom' | 'diameterTo' | 'cite' | 'notes'> {
  const cite: Citation = { source: 'asme-ix', at: 'QW-452.3', known: 'read' };
  const step = at(2 + 7 / 8, 73);
  if (form === 'plate' || !od)
    return {
      diameterFrom: step,
      diameterTo: 'unlimited',
      cite: { source: 'asme-ix', at: 'QW-461.9 note 2', known: 'read' },
      notes: [
        'A test on plate counts for pipe from {2-7/8 in|73 mm} outside diameter, in the positions named.',
      ],
    };
  const { value, system } = od;
  if (value < pick(at(1, 25), system))
    return {
      diameterFrom: both(od, 1),
      diameterTo: 'unlimited',
      cite,
      notes: ['Under {1 in|25 mm}: from the size that was welded.'],
    };
  if (value <= pick(step, system))
    return {
      diameterFrom: at(1, 25),
      diameterTo: 'unlimited',
      cite,
      notes:
        Math.abs(value - pick(step, system)) < 1e-6
          ? [
              'At exactly {2-7/8 in|73 mm} summaries differ: the text “1 to 2-7/8” gives a minimum of 1 in, “2-7/8 and over” would give 2-7/8 in. The text is used here.',
            ]
          : ['From {1 in|25 mm} to {2-7/8 in|73 mm}: qualifies from {1 in|25 mm}.'],
    };
  return {
    diameterFrom: step,
    diameterTo: 'unlimited',
    cite,
    notes: ['Over {2-7/8 in|73 mm}: qualifies from {2-7/8 in|73 mm}.'],
  };
}

/** ASME IX QW-452.1(b): twice the deposit, or any thickness from 1/2 in (13 mm) in three layers. */
export function depositReach(t: Printed, layers: number | undefined): Pair | 'unlimited' {
  const thick = t.value >= pick(at(1 / 2, 13), t.system);
  return thick && (layers ?? 1) >= 3 ? 'unlimited' : both(t, 2);
}

export interface Specimen {
  specimen: string;
  count: number;
}

/** Bend, break and macro specimens of one test weld. `both` positions of a combined test add up. */
export function specimensOf(code: Code, form: Form, test: string, t: Printed): Specimen[] {
  if (/F/.test(test)) {
    const each = test.split('+').length;
    return [
      { specimen: 'fillet break', count: each },
      { specimen: 'macro-etch', count: each },
    ];
  }
  const turned = /5G|6G/.test(test);
  const perTest = (one: string): Specimen[] => {
    const two = /5G|6G/.test(one) ? 2 : 1;
    const side =
      code === 'AWS D1.1'
        ? t.value > pick(at(3 / 8, 10), t.system) * 1.001
        : t.value >= pick(at(3 / 8, 10), t.system);
    if (form === 'plate' && code === 'AWS D1.1' && side)
      return [{ specimen: 'side bend', count: 2 }];
    return side
      ? [{ specimen: 'side bend', count: 2 * two }]
      : [
          { specimen: 'face bend', count: two },
          { specimen: 'root bend', count: two },
        ];
  };
  if (code === 'ASME IX' && test === '2G+5G' && turned) {
    const [first, second] = perTest('5G');
    return second
      ? [
          { ...(first as Specimen), count: 3 },
          { ...second, count: 3 },
        ]
      : [{ ...(first as Specimen), count: 6 }];
  }
  const counted = new Map<string, number>();
  for (const one of test.split('+'))
    for (const { specimen, count } of perTest(one))
      counted.set(specimen, (counted.get(specimen) ?? 0) + count);
  return [...counted].map(([specimen, count]) => ({ specimen, count }));
}
