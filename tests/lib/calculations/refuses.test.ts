/**
 * Where a question has no answer, and just beside it one that has. The sentence stands by the field
 * at fault; a refusal that is missing would print a number that means nothing.
 */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import type { Calculation, Input } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

const example = (calculation: Calculation): Typed =>
  Object.fromEntries(
    Object.entries<Input>(calculation.inputs).map(([name, { example: shown }]) => [
      name,
      typeof shown === 'object' && 'us' in shown ? shown.us : shown,
    ]),
  );
async function asked(id: string, change: Typed) {
  const calculation = await loadCalculation(id);
  return answer(calculation, { ...example(calculation), ...change }, 'us');
}

type Row = [field: string, sentence: RegExp, refused: Typed, answered: Typed];
const list = (...lengths: [string, string][]) => ({
  pieces: lengths.map(([length, count]) => ({ length, count })),
});
const readings = (...pairs: [string, string][]) => ({
  readings: pairs.map(([dial, meter]) => ({ dial, meter })),
});
const material = (row: Record<string, string>) => ({
  exercises: [
    { piece: 'flat bar', pieces: '1', electrodes: '0', minutes: '60', attempts: '1', ...row },
  ],
});
const bar = { thickness: '3/8 in', width: '4 in', length: '8 in' };
const points = (...all: [number, number][]) =>
  all.map(([x, y]) => ({ x: String(x), y: String(y) }));

const refusals: Record<string, Row[]> = {
  'booth-calibration': [
    ['readings', /^List at least one reading/, { readings: [] }, readings(['100', '98'])],
    // An offset of 60 A leaves no dial for 60 A.
    [
      'wanted',
      /offset is larger/,
      { wanted: '60', ...readings(['40', '100']) },
      { wanted: '61', ...readings(['40', '100']) },
    ],
  ],
  'class-materials': [
    ['exercises', /^Give at least one exercise/, { exercises: [] }, material(bar)],
    [
      'exercises.1.thickness',
      /^Thickness is missing/,
      material({ width: '4 in', length: '8 in' }),
      material(bar),
    ],
    [
      'exercises.1.width',
      /^Width is missing/,
      material({ thickness: '3/8 in', length: '8 in' }),
      material(bar),
    ],
    [
      'exercises.1.length',
      /^Length of the piece is missing/,
      material({ thickness: '3/8 in', width: '4 in' }),
      material(bar),
    ],
    [
      'exercises.1.nps',
      /^Nominal pipe size is missing/,
      material({ piece: 'pipe', schedule: '80', length: '4 in' }),
      material({ piece: 'pipe', nps: '6', schedule: '80', length: '4 in' }),
    ],
    [
      'exercises.1.schedule',
      /^Schedule is missing/,
      material({ piece: 'pipe', nps: '6', length: '4 in' }),
      material({ piece: 'none' }),
    ],
    [
      'exercises.1.classification',
      /^Electrode is missing/,
      material({ ...bar, electrodes: '2', diameter: '1/8 in' }),
      material({ ...bar, electrodes: '2', diameter: '1/8 in', classification: 'E7018' }),
    ],
    [
      'exercises.1.diameter',
      /^Electrode diameter is missing/,
      material({ ...bar, electrodes: '2', classification: 'E7018' }),
      material({ piece: 'flat bar', pieces: '0' }),
    ],
    [
      'exercises',
      /longer than a trimmed bar of flat bar/,
      material({ ...bar, length: '239.6 in' }),
      material({ ...bar, length: '239.5 in' }),
    ],
  ],
  'cut-plan': [
    ['pieces', /^Give at least one piece/, { pieces: [] }, list(['8 in', '1'])],
    [
      'pieces',
      /holds up to \d+ pieces/,
      { pieces: Array.from({ length: 11 }, () => ({ length: '1 in', count: '1000' })) },
      list(['1 in', '1000']),
    ],
    ['pieces', /longer than a trimmed bar/, list(['239.6 in', '1']), list(['239.5 in', '1'])],
  ],
  'duty-cycle': [
    ['current', /not rated there/, { current: '401' }, { current: '400' }],
    [
      'current',
      /not rated there/,
      { current: '301', maximumCurrent: '300' },
      { current: '300', maximumCurrent: '300' },
    ],
  ],
  'electrode-classification': [
    [
      'designator',
      /no low-hydrogen covering/,
      { classification: 'E6010', designator: 'H4' },
      { classification: 'E6010', designator: 'none' },
    ],
  ],
  'electrode-exposure': [
    [
      'designator',
      /stands for the same test/,
      { classification: 'E7018M', designator: 'R' },
      { classification: 'E7018M', designator: 'none' },
    ],
    [
      'classification',
      /Never put it in an electrode oven/,
      { classification: 'E6010' },
      { classification: 'E7018' },
    ],
    [
      'classification',
      /not a low-hydrogen electrode/,
      { classification: 'E6013' },
      { classification: 'E7016' },
    ],
    ['now', /lies before the end of the log/, { now: '20:59' }, { now: '21:00' }],
    [
      'events.2.temperature',
      /oven’s temperature is missing/,
      {
        events: [
          { event: 'opened', at: '18:00' },
          { event: 'in oven', at: '19:00' },
        ],
      },
      { events: [{ event: 'opened', at: '18:00' }] },
    ],
    [
      'events.2.hours',
      /hours at that temperature are missing/,
      {
        events: [
          { event: 'opened', at: '18:00' },
          { event: 'rebaked', at: '19:00', temperature: '750 °F' },
        ],
      },
      { events: [{ event: 'opened', at: '18:00' }], now: '19:00' },
    ],
    [
      'events.2.at',
      /comes before the row above is over/,
      {
        events: [
          { event: 'opened', at: '18:00' },
          { event: 'out', at: '17:59' },
        ],
      },
      {
        events: [
          { event: 'opened', at: '18:00' },
          { event: 'out', at: '18:00' },
        ],
      },
    ],
    [
      'events.2.event',
      /opened once, in the first row/,
      {
        events: [
          { event: 'opened', at: '18:00' },
          { event: 'opened', at: '19:00' },
        ],
      },
      {
        events: [
          { event: 'opened', at: '18:00' },
          { event: 'out', at: '19:00' },
        ],
      },
    ],
  ],
  'fillet-minimum': [
    [
      'thinner',
      /thinner part is given thicker/,
      { thinner: '0.501', thicker: '1/2' },
      { thinner: '1/2', thicker: '1/2' },
    ],
    [
      'thinner',
      /thinner part is given thicker/,
      { thinner: '13 mm', thicker: '1/2' },
      { thinner: '12.7 mm', thicker: '1/2' },
    ],
  ],
  'fillet-passes': [
    [
      'convexity',
      /at most a quarter of the leg/,
      { leg: '1/2', convexity: '0.126' },
      { leg: '1/2', convexity: '1/8' },
    ],
    [
      'leg',
      /more than 200 passes|more than \d+ passes/,
      { leg: '3', runOut: '30' },
      { leg: '3/4' },
    ],
    [
      'passArea',
      /more than \d+ passes/,
      { leg: '3', passArea: '0.002 in2' },
      { leg: '1/2', passArea: '0.02 in2' },
    ],
  ],
  'fillet-profile': [
    // Half of √2 times the leg; and the quarter circle that dips 1 − 1/√2 of it.
    ['bulge', /never wetted in/, { leg: '1', bulge: '0.708' }, { leg: '1', bulge: '0.707' }],
    ['bulge', /cut into the plates/, { leg: '1', bulge: '-0.293' }, { leg: '1', bulge: '-0.292' }],
  ],
  'groove-area': [['rootFace', /root face/i, { rootFace: '0.38' }, { rootFace: '3/8' }]],
  'groove-passes': [
    ['rootFace', /thicker than the plate/, { rootFace: '0.38' }, { rootFace: '3/8' }],
    ['capHeight', /no code leaves more standing/, { capHeight: '0.251' }, { capHeight: '1/4' }],
    [
      'rootOpening',
      /no groove to fill/,
      { rootOpening: '0', includedAngle: '0', capHeight: '0' },
      { rootOpening: '1/16', includedAngle: '0', capHeight: '0' },
    ],
    [
      'capHeight',
      /more than half the width of the face/,
      { rootOpening: '1/4', includedAngle: '0', capHeight: '0.126' },
      { rootOpening: '1/4', includedAngle: '0', capHeight: '1/8' },
    ],
    [
      'passArea',
      /more than 300 passes/,
      { passArea: '0.001 in2', thickness: '2' },
      { passArea: '0.02 in2', thickness: '2' },
    ],
  ],
  'leg-from-rod': [['stub', /nothing was melted/, { stub: '14' }, { stub: '13.9' }]],
  'oven-load': [
    ['lastArc', /last arc has to come after/, { lastArc: '18:15' }, { lastArc: '18:16' }],
    // E7018 in open air: four hours (AWS D1.1 2015 Table 5.1, column A).
    ['issueEvery', /issue for less/, { issueEvery: '4.1' }, { issueEvery: '4' }],
    [
      'classification',
      /Never put it in an electrode oven/,
      { classification: 'E6011' },
      { classification: 'E7018' },
    ],
  ],
  'padding-plan': [
    ['plateWidth', /narrower than one bead/, { plateWidth: '0.374' }, { plateWidth: '3/8' }],
  ],
  'pipe-groove': [
    // NPS 6 schedule 80 has a wall of 0.432 in.
    [
      'rootFace',
      /The wall is \{0\.432 in\|10\.97 mm\}/,
      { rootFace: '0.433' },
      { rootFace: '0.432' },
    ],
  ],
  'preheat-minimum': [
    ['thickness', /table starts at/, { thickness: '0.124' }, { thickness: '1/8' }],
    ['thickness', /table starts at/, { thickness: '2.9 mm' }, { thickness: '3 mm' }],
    [
      'electrodeKind',
      /does not prequalify/,
      { steel: 'A913 Grade 50', electrodeKind: 'not low-hydrogen' },
      { steel: 'A36', electrodeKind: 'not low-hydrogen' },
    ],
  ],
  'procedure-check': [
    [
      'currentTo',
      /ends below its start/,
      { currentFrom: '141', currentTo: '140' },
      { currentFrom: '140', currentTo: '140' },
    ],
    ['voltageTo', /ends below/, { voltageFrom: '26' }, { voltageFrom: '25' }],
    ['travelSpeedTo', /ends below/, { travelSpeedFrom: '8.1' }, { travelSpeedFrom: '8' }],
    ['interpassTo', /ends below/, { interpassFrom: '251' }, { interpassFrom: '250' }],
  ],
  retest: [
    ['failed', /nothing is listed/, { failed: [] }, {}],
    [
      'when',
      /further training and practice first/,
      { reason: 'after six months without the process' },
      { reason: 'after six months without the process', when: 'after training' },
    ],
    [
      'when',
      /further training/,
      { reason: 'after six months without the process' },
      { code: 'ASME IX', reason: 'after six months without the process' },
    ],
  ],
  'run-out-for-leg': [['stub', /nothing was melted/, { stub: '14' }, { stub: '13.9' }]],
  'section-measure': [
    ['root', /exactly one point/, { root: points([200, 600], [1, 1]) }, {}],
    ['root', /exactly one point/, { root: [] }, {}],
    ['toes', /exactly two points/, { toes: points([520, 600]) }, {}],
    ['toes', /exactly two points/, { toes: points([520, 600], [200, 285], [1, 1]) }, {}],
    ['toes', /too close together/, { toes: points([200, 600], [200, 285]) }, {}],
    [
      'toes',
      /meet at 20° to 170°/,
      {
        toes: points([520, 600], [500, 620]),
        plateA: undefined,
        plateB: undefined,
        face: undefined,
        fusion: undefined,
      },
      { plateA: undefined, plateB: undefined },
    ],
    [
      'face',
      /at most \d+ points/,
      {
        face: points(
          ...Array.from({ length: 200 }, (_, i): [number, number] => [478 - i, 545 - i]),
        ),
      },
      {},
    ],
  ],
  'source-line': [
    // 15 V and 2.5 V a millimeter reach 75 V at 24 mm.
    ['arcLength', /The arc goes out/, { arcLength: '24 mm' }, { arcLength: '23.9 mm' }],
  ],
  'source-slope': [
    [
      'longArcVoltage',
      /longer arc needs more volts/,
      { longArcVoltage: '22' },
      { longArcVoltage: '22.1' },
    ],
    [
      'longArcCurrent',
      /drooping machine gives less/,
      { longArcCurrent: '127' },
      { longArcCurrent: '126' },
    ],
  ],
  'starting-current': [
    ['diameter', /no electrode size/, { diameter: '0.2' }, { diameter: '5/32' }],
    [
      'use',
      /open root is run here with E6010/,
      { use: 'open root' },
      { use: 'open root', classification: 'E6010' },
    ],
    [
      'diameter',
      /outside the prequalified limit/,
      { diameter: '3/16', position: 'overhead' },
      { diameter: '5/32', position: 'overhead' },
    ],
    [
      'diameter',
      /outside the prequalified limit/,
      { diameter: '3/16', position: 'vertical' },
      { diameter: '5/32', position: 'vertical' },
    ],
  ],
  'visual-check': [
    [
      'purpose',
      /ASME IX judges test coupons only/,
      { code: 'ASME IX', purpose: 'production, static load' },
      { code: 'ASME IX' },
    ],
    [
      'purpose',
      /a test coupon goes by ASME IX/,
      { code: 'ASME B31.3' },
      { code: 'ASME B31.3', purpose: 'production, static load' },
    ],
  ],
  'voltage-estimate': [
    [
      '',
      /no covered electrode burns there: check the watch/,
      { arcTime: '200' },
      { arcTime: '65' },
    ],
    [
      'cableDrop',
      /no arc is left/,
      { arcTime: undefined, meterVoltage: '15', cableDrop: '5.1' },
      { arcTime: undefined, meterVoltage: '15', cableDrop: '5' },
    ],
    [
      'classification',
      /only worth printing for E7018/,
      { classification: 'E6010', arcTime: undefined, meterVoltage: undefined },
      { classification: 'E6010', arcTime: undefined },
    ],
  ],
  'weigh-in': [
    ['stubsMass', /Stubs cannot weigh/, { stubsMass: '0.35', rodsMass: '0.35' }, {}],
    ['couponAfter', /gained nothing/, { couponAfter: '3.4' }, { couponAfter: '3.41' }],
    // 0.714 − 0.115 = 0.599 lb were melted.
    ['couponAfter', /more than was melted/, { couponAfter: '4' }, { couponAfter: '3.998' }],
  ],
};

const rows = Object.entries(refusals).flatMap(([id, all]) =>
  all.map(([field, sentence, refused, answered]) => ({ id, field, sentence, refused, answered })),
);

describe('no answer', () => {
  it.each(rows.map((row) => [row.id, row.field, String(row.sentence), row] as const))(
    '%s refuses by %s with %s, and answers beside it',
    async (id, field, _, { sentence, refused, answered }) => {
      const found = await asked(id, refused);
      expect(found.ok ? found.results : found.problems[0]).toMatchObject({
        field,
        text: expect.stringMatching(sentence),
      });
      // It stands alone below the field, so it names what is wrong: “Convexity must be …”.
      expect(found.ok || found.problems[0]?.text).toMatch(/^[\p{Lu}\d]/u);
      expect(await asked(id, answered)).toMatchObject({ ok: true });
    },
  );
});
