/**
 * What may be left empty, what is then taken, and what has to be a whole number: what a reader is told
 * at each field, written down once more (custom of the course). What is not listed has to be typed.
 */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import type { Calculation, Input, Output } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

interface Told {
  /** May be left empty, and nothing is taken for it. */
  optional?: string;
  /** Counts. */
  whole?: string;
  /** What is taken for an empty field. */
  taken?: Readonly<Record<string, string>>;
}

const rod = { diameter: '1/8 in', electrodeLength: '14 in', stub: '2 in' };
const metal = { coatingFraction: '0.30', recovery: '0.70' };
const steel = { density: '7850 kg/m3' };
const onePass = { passes: '1', bulgeShare: '10' };

const told: Record<string, Told> = {
  'groove-area': { taken: { groove: 'V', rootFace: '0 in', capHeight: '0 in', ...steel } },
  'groove-fit-up': {
    taken: {
      joint: 'on a strip, 45°',
      stage: 'after fit-up',
      position: 'flat',
      rootFace: '0 in',
      capHeight: '1/16 in',
      passArea: '0.03 in2',
    },
  },
  'groove-passes': {
    optional: 'passArea',
    taken: {
      ...{ rootFace: '0 in', capHeight: '0 in', backing: 'strip', position: 'flat' },
      ...rod,
      ...metal,
      ...steel,
      ...{ runOut: '4-1/2 in', rootPassThickness: '1/8 in', fillPassThickness: '1/8 in' },
    },
  },
  'groove-position': {},
  'heat-input': { taken: { efficiency: '0.8' } },
  'joint-restarts': { whole: 'passes', taken: { passes: '1' } },
  'leg-from-rod': { whole: 'passes', taken: { ...rod, ...metal, ...onePass } },
  'load-voltage': {},
  'oven-load': {
    whole: 'booths electrodesPerContainer inOven ovenHolds',
    taken: { designator: 'none', issueEvery: '1 h', spare: '25 percent', inOven: '0' },
  },
  'padding-plan': {},
  'passes-left': {},
  'pipe-groove': { taken: { bevelAngle: '37.5 deg', capHeight: '0 in', ...steel } },
  'pipe-position': {},
  'pipe-position-shares': {},
  'pipe-size': {},
  'plate-for-clock': {},
  'preheat-cet': { taken: { ambient: '20 degC' } },
  'preheat-minimum': {},
  'prequalified-limits': { taken: { electrodeKind: 'low-hydrogen' } },
  'procedure-check': {
    optional:
      'current currentFrom currentTo voltage voltageFrom voltageTo travelSpeed travelSpeedFrom travelSpeedTo interpass interpassFrom interpassTo arcEnergyTo',
  },
  retest: { taken: { reason: 'a first test' } },
  'rod-check': { optional: 'arcTime', taken: { bead: 'stringer bead', factor: '0.0472' } },
  'root-fit-up': { taken: { bevelAngle: '37.5 deg', rootPassThickness: '1/8 in' } },
  'run-out-for-leg': { whole: 'passes', taken: { ...rod, ...metal, ...onePass } },
  'run-out-heat': { taken: { factor: '0.0472' } },
  'run-out-length': { taken: { factor: '0.0472' } },
  'section-measure': {
    optional: 'face fusion plateA plateB',
    taken: { scaleError: '0.5', markingError: '2' },
  },
  'source-line': {},
  'source-slope': {},
  'starting-current': { taken: { use: 'fill and fillet' } },
  'test-range': {
    optional: 'outsideDiameter layers deposits',
    whole: 'layers',
    taken: {
      edition: '2010 or later',
      classification: 'E7018',
      backing: 'with backing',
      progression: 'uphill',
    },
  },
  'transverse-shrinkage': {},
  'travel-speed': {},
  'travel-speed-limits': { taken: { leastShare: '60' } },
  'ventilation-check': { optional: 'captureVelocity', whole: 'welders' },
  'visual-check': {
    optional:
      'crack incompleteFusion craterFilled overlap arcStrike looseSpatter misalignment filletSize leg faceWidth convexity undercutDepth undercutPlaces transverseToTension reinforcement porosityPerInch porosityPerFoot poreCount largestPore incompletePenetration rootConcavity meltThrough',
    whole: 'poreCount',
  },
  'voltage-estimate': {
    optional: 'consumedLength arcTime current meterVoltage',
    taken: { cableDrop: '0' },
  },
  'weave-width': { taken: { diameter: '1/8 in' } },
  'weigh-in': { whole: 'rods', taken: { rods: '10' } },
};

const words = (text = '') => text.split(' ').filter(Boolean);
const example = (calculation: Calculation): Typed =>
  Object.fromEntries(
    Object.entries<Input>(calculation.inputs).map(([name, { example: shown }]) => [
      name,
      typeof shown === 'object' && 'us' in shown ? shown.us : shown,
    ]),
  );

describe.each(Object.entries(told))('%s', (id, { optional, whole, taken = {} }) => {
  it('asks for what is missing, and for nothing that may be left empty', async () => {
    const calculation = await loadCalculation(id);
    const free = [...words(optional), ...Object.keys(taken)];
    for (const [name, { label }] of Object.entries<Input>(calculation.inputs)) {
      const answered = answer(calculation, { ...example(calculation), [name]: undefined }, 'us');
      const asked =
        !answered.ok &&
        answered.problems.some(
          ({ field, text }) =>
            field === name && [`${label} is missing`, `${label}: nothing is listed`].includes(text),
        );
      expect(asked, name).toBe(!free.includes(name));
    }
  });

  it('takes for an empty field what it says, as if it had been typed', async () => {
    const calculation = await loadCalculation(id);
    const typed = example(calculation);
    const values = (change: Typed) => {
      const answered = answer(calculation, { ...typed, ...change }, 'us');
      return answered.ok ? answered.values : answered.problems;
    };
    for (const [name, text] of Object.entries(taken))
      expect(values({ [name]: undefined }), name).toEqual(values({ [name]: text }));
  });

  it('counts in whole numbers where half a one is nothing, and nowhere else', async () => {
    const calculation = await loadCalculation(id);
    for (const [name, input] of Object.entries<Input>(calculation.inputs)) {
      if (!('limits' in input)) continue;
      const answered = answer(calculation, { ...example(calculation), [name]: '1.5' }, 'us');
      const refused =
        !answered.ok &&
        answered.problems.some(({ text }) => text === `${input.label} needs a whole number`);
      expect(refused, name).toBe(words(whole).includes(name));
    }
  });
});

/** Results that an answer may do without, each with what is typed so that it does. */
const withoutResult: [id: string, typed: Typed, missing: string][] = [
  ['groove-passes', { passArea: '0.03 in2' }, 'runOutEach'],
  ['padding-plan', { plateWidth: '3/8 in' }, 'pitch evenedOverlap valleyDepth'],
  ['passes-left', { depth: '1/16 in' }, 'evenThickness'],
  ['pipe-position', { pipeInclination: '0', clockAngle: '90' }, 'faceRotation'],
  ['procedure-check', { voltage: undefined }, 'arcEnergy'],
  ['rod-check', { arcTime: undefined }, 'travelSpeed meltRate'],
];

describe('a result that can be missing', () => {
  it.each(withoutResult)(
    '%s with %o gives no %s, and says that it may',
    async (id, change, missing) => {
      const { outputs, ...calculation } = await loadCalculation(id);
      const asked = (typed: Typed) => {
        const answered = answer({ outputs, ...calculation } as Calculation, typed, 'us');
        if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
        return Object.keys(outputs).filter((name) => answered.results[name] === undefined);
      };
      const typed = example({ outputs, ...calculation } as Calculation);
      expect(asked({ ...typed, ...change })).toEqual(words(missing));
      const may = Object.entries<Output>(outputs).filter(
        ([, output]) => 'optional' in output && output.optional,
      );
      expect(may.map(([name]) => name)).toEqual(words(missing));
    },
  );
});
