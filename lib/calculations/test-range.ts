import { defineProcedure, type Printed, type Reason } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import { classifications } from '../tables/classifications.ts';
import { readDigits } from '../tables/electrodes-a5.1.ts';
import { none, testPositions, tests } from '../tables/test-positions.ts';
import {
  depositReach,
  diametersIX,
  editions,
  type Reach,
  sizesD11,
  specimensOf,
} from '../tables/test-sizes.ts';
import { type Backing, covers, type FNumber } from '../welds/filler-cover.ts';

const backings = ['with backing', 'without backing'] as const satisfies readonly Backing[];
const progressions = ['uphill', 'downhill', 'none'] as const;

const classification = {
  label: 'Electrode',
  choices: classifications,
  example: 'E7018',
  obtain: 'Printed on the electrode that the welder used.',
} as const;
const backing = {
  label: 'Backing',
  choices: backings,
  example: 'with backing',
  obtain:
    'A strip, or weld metal already there, is backing. An open root is without. Fill over an open root is with backing.',
} as const;
const progression = {
  label: 'Progression in the vertical',
  choices: progressions,
  example: 'uphill',
  obtain: 'Which way the weld ran where the joint stood upright; none where it never did.',
} as const;
const layers = {
  label: 'Layers',
  symbol: 'n',
  unit: '1',
  whole: true,
  limits: { min: 1, max: 200, why: 'a weld has at least one layer' },
  example: '3',
  obtain: 'Counted while welding.',
} as const;
const printedSize = { printed: { us: 'in', metric: 'mm' } } as const;

export default defineProcedure({
  title: 'What a welder’s test qualifies',
  summary: 'Positions, thicknesses, diameters and fillers that one test covers, under two codes.',
  inputs: {
    code: {
      label: 'Code',
      choices: ['AWS D1.1', 'ASME IX'],
      example: 'AWS D1.1',
      obtain: 'The contract names it, with its edition.',
    },
    edition: {
      label: 'Edition of AWS D1.1',
      choices: editions,
      example: '2010 or later',
      default: '2010 or later',
      obtain:
        'The contract names it. Editions to the early 2000s name their test pipes. ASME IX does not ask this.',
    },
    test: {
      label: 'Test',
      choices: tests,
      example: '3G+4G',
      obtain: 'How the coupon was fixed: G for groove, F for fillet, 1 flat to 6 inclined.',
    },
    form: {
      label: 'Welded on',
      choices: ['plate', 'pipe'],
      example: 'plate',
      obtain: 'What the coupon was made of.',
    },
    thickness: {
      label: 'Thickness of the coupon',
      symbol: 'T',
      ...printedSize,
      limits: { min: 0.05, max: 10, why: 'no test coupon is thinner or thicker' },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper on the plate, or the wall of the pipe.',
    },
    outsideDiameter: {
      label: 'Outside diameter of the pipe',
      symbol: 'D',
      ...printedSize,
      limits: { min: 0.2, max: 100, why: 'no test pipe is smaller or larger' },
      example: '',
      optional: true,
      obtain:
        'For pipe only: caliper or tape across the outside; the nominal size does not measure it.',
    },
    classification: { ...classification, default: 'E7018' },
    backing: { ...backing, default: 'with backing' },
    layers: { ...layers, optional: true },
    progression: { ...progression, default: 'uphill' },
    deposits: {
      label: 'Deposits, where more than one filler was used',
      list: {
        classification,
        thickness: {
          label: 'Deposit thickness',
          symbol: 't',
          ...printedSize,
          limits: { min: 0.02, max: 10, why: 'a deposit is thicker than nothing' },
          example: { us: '1/8', metric: '3' },
          obtain: 'Measured in the groove after that filler, cover not counted.',
        },
        layers: { ...layers, optional: true },
        backing,
        progression: { ...progression, optional: true },
      },
      optional: true,
      example: [
        {
          classification: 'E7018',
          thickness: '3/8 in',
          layers: '3',
          backing: 'with backing',
          progression: 'uphill',
        },
      ],
      obtain: 'One row for each filler, root first. Left empty, one filler made the whole coupon.',
    },
  },
  outputs: {
    positionsGroove: { label: 'Grooves, in these positions', text: true },
    positionsFillet: { label: 'Fillets, in these positions', text: true },
    thicknessFrom: {
      label: 'Thickness, from',
      ...printedSize,
      fraction: 32,
      words: ['unlimited', 'no minimum', 'see deposits'],
    },
    thicknessTo: {
      label: 'Thickness, to',
      ...printedSize,
      fraction: 32,
      words: ['unlimited', 'no minimum', 'see deposits'],
    },
    diameterFrom: {
      label: 'Outside diameter of pipe, from',
      ...printedSize,
      fraction: 32,
      words: ['unlimited', 'no minimum', 'see deposits'],
    },
    diameterTo: {
      label: 'Outside diameter of pipe, to',
      ...printedSize,
      fraction: 32,
      words: ['unlimited', 'no minimum', 'see deposits'],
    },
    fillers: {
      label: 'Filler by filler',
      list: {
        classification: { label: 'Electrode', text: true },
        fNumber: { label: 'Group', text: true },
        backing: { label: 'Backing', text: true },
        own: { label: 'Own reach', unit: 'in', digits: 3 },
        together: { label: 'With the others that cover it', unit: 'in', digits: 3 },
        reach: { label: 'In words', text: true },
        covers: { label: 'Also covers', text: true },
        progression: { label: 'Progression', text: true },
      },
    },
    specimens: {
      label: 'Specimens',
      list: {
        specimen: { label: 'Specimen', text: true },
        count: { label: 'Number', unit: '1' },
      },
    },
  },
  beware: [
    'A draft for the qualified person who signs. The contract’s code and edition decide, and nothing here certifies anybody.',
    'Changing the vertical progression, uphill to downhill or back, asks for a new test in both codes.',
    'A test with a backing strip never qualifies an open root.',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2020 Table 6.10, positions by plate tests', known: 'read' },
    { source: 'aws-d1.1', at: '2020 Table 6.11, thickness by plate tests', known: 'memory' },
    { source: 'aws-d1.1', at: '2020 Table 10.12, positions by pipe tests', known: 'memory' },
    { source: 'aws-d1.1', at: '2020 Table 10.13, thickness and size by pipe tests', known: 'read' },
    { source: 'asme-ix', at: 'QW-452, QW-461.9, QW-433', known: 'memory' },
  ],
  related: ['bend-strain'],
  compute(given) {
    const { code, edition, test, form, thickness, outsideDiameter } = given;
    const row = testPositions[code][form][test];
    if (!row) {
      const known = Object.keys(testPositions[code][form]).join(', ');
      throw new NoAnswer(`${test} on ${form} has no row under ${code}; there are ${known}`, 'test');
    }
    if (form === 'pipe' && !outsideDiameter)
      throw new NoAnswer('Outside diameter of the pipe is missing', 'outsideDiameter');
    const groove = /G/.test(test);
    if (
      code === 'AWS D1.1' &&
      form === 'plate' &&
      groove &&
      thickness.value < (thickness.system === 'us' ? 0.37 : 9.4)
    )
      throw new NoAnswer(
        'must be at least {3/8 in|10 mm}: the code’s plate tests start there',
        'thickness',
      );
    const because: Reason[] = [{ kind: 'row', text: `${code}, ${form}, ${test}.`, cite: row.cite }];
    if (test === '3G' && form === 'plate')
      because.push({
        text: 'The codes differ here: AWS D1.1 gives 3G the horizontal groove as well, ASME IX gives flat and vertical only.',
        cite: { source: 'aws-d1.1', at: '2020 Table 6.10', known: 'read' },
      });
    if (row.onPipe)
      because.push({ text: `From this plate test also ${row.onPipe}.`, cite: row.cite });
    const deposits = depositsOf(given);
    const sizes =
      code === 'AWS D1.1'
        ? sizesD11(form, groove, thickness, outsideDiameter, edition)
        : { ...sizesIX(groove, deposits), ...diametersIX(form, outsideDiameter) };
    for (const text of sizes.notes) because.push({ kind: 'row', text, cite: sizes.cite });
    for (const text of sizes.cautions ?? [])
      because.push({ kind: 'caution', text, cite: { ...sizes.cite, known: 'memory' } });
    if (code === 'AWS D1.1')
      because.push({
        text: 'A test with a higher F-number covers the lower ones, in the same kind of backing. The coupon’s thickness counts, whatever each filler laid.',
        cite: { source: 'aws-d1.1', at: 'Table 6.13 (2020)', known: 'memory' },
      });
    else
      because.push({
        text: 'Each filler counts for itself: twice its deposit, or any thickness from {1/2 in|13 mm} laid in three layers or more.',
        cite: { source: 'asme-ix', at: '2010 QW-452.1(b), QW-404.30', known: 'read' },
      });
    if (code === 'ASME IX' && deposits.length > 1)
      for (const one of deposits)
        if (one.backing === 'without backing')
          because.push({
            text: `${one.classification} as an open root is qualified by its own deposit alone. What the other fillers add to it is over backing.`,
            cite: { source: 'asme-ix', at: 'QW-433', known: 'memory' },
          });
    if (groove && opensOnlyWithOthers(deposits))
      because.push({
        kind: 'caution',
        text: 'A filler that lay over an open root counts as welded with backing: this test does not qualify it for an open root.',
        cite: { source: 'asme-ix', at: 'QW-433', known: 'memory' },
      });
    if (deposits.every((one) => one.backing === 'with backing') && groove)
      because.push({
        kind: 'caution',
        text: 'Backing was used throughout, so an open root is not qualified.',
      });
    return {
      positionsGroove: row.groove,
      positionsFillet: row.fillet,
      thicknessFrom: sizes.thicknessFrom,
      thicknessTo: sizes.thicknessTo,
      diameterFrom: row.groove === none && form === 'plate' ? 'no minimum' : sizes.diameterFrom,
      diameterTo: sizes.diameterTo,
      fillers: deposits.map((one) => fillerRow(one, deposits, code)),
      specimens: specimensOf(code, form, test, thickness),
      because,
    };
  },
});

/** Some deposits have backing, some not: those over the root are easily taken for more. */
const opensOnlyWithOthers = (deposits: readonly Deposit[]): boolean =>
  new Set(deposits.map(({ backing: strip }) => strip)).size > 1;

interface Deposit {
  classification: string;
  fNumber: FNumber;
  thickness: Printed;
  layers: number | undefined;
  backing: Backing;
  progression: string | undefined;
}

interface Laid {
  classification: (typeof classifications)[number];
  thickness: Printed;
  layers: number | undefined;
  backing: Backing;
  progression: string | undefined;
}

/** The listed deposits, or the whole coupon by one filler. */
function depositsOf(given: Laid & { deposits: Laid[] | undefined }): Deposit[] {
  const {
    deposits,
    classification: electrode,
    thickness,
    layers: count,
    backing: strip,
    progression: way,
  } = given;
  const laid =
    deposits && deposits.length > 0
      ? deposits
      : [{ classification: electrode, thickness, layers: count, backing: strip, progression: way }];
  return laid.map((one) => ({ ...one, fNumber: readDigits(one.classification).covering.fNumber }));
}

function sizesIX(
  groove: boolean,
  deposits: readonly Deposit[],
): { thicknessFrom: Reach; thicknessTo: Reach } {
  if (!groove) return { thicknessFrom: 'no minimum', thicknessTo: 'unlimited' };
  const [only, ...others] = deposits;
  if (!only || others.length > 0)
    return { thicknessFrom: 'no minimum', thicknessTo: 'see deposits' };
  return { thicknessFrom: 'no minimum', thicknessTo: depositReach(only.thickness, only.layers) };
}

function fillerRow(one: Deposit, all: readonly Deposit[], code: string) {
  const shared = {
    classification: one.classification,
    fNumber: one.fNumber,
    backing: one.backing,
    progression: one.progression ?? 'none',
  };
  const lower = (['F1', 'F2', 'F3', 'F4'] as const).filter((f) => f < one.fNumber);
  if (code === 'AWS D1.1')
    return {
      ...shared,
      own: undefined,
      together: undefined,
      reach: 'by the coupon',
      covers: lower.join(', ') || 'no other group',
    };
  const reaches = all
    .filter((other) => covers(other, one) || covers(other, { ...one, backing: 'with backing' }))
    .map((other) => depositReach(other.thickness, other.layers));
  const own = depositReach(one.thickness, one.layers);
  const inches = reaches.map((reach) =>
    reach === 'unlimited' ? Number.POSITIVE_INFINITY : (reach as { us: number }).us,
  );
  const together = inches.reduce((sum, reach) => sum + reach, 0);
  return {
    ...shared,
    own: own === 'unlimited' ? undefined : (own as { us: number }).us,
    together: Number.isFinite(together) ? together : undefined,
    reach:
      own === 'unlimited'
        ? 'any thickness'
        : Number.isFinite(together)
          ? 'twice its deposit'
          : 'any, over its own root',
    covers: lower.length > 0 ? `${lower.join(', ')} with backing` : 'no other group',
  };
}
