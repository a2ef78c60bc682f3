/**
 * Where typing ends: the last value that is taken at either end, and where a caution begins. The
 * figures are custom of the course (common practice, no source) except where the reason beside one
 * names a table or a standard; a bound that moved would let nonsense in or keep a real reading out.
 */
import { describe, expect, it } from 'vitest';
import type { Input, Inputs } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { readInputs } from '../../../lib/read-inputs.ts';

/** Calculations and input: from, to; then from where to where it is usual. */
const bounds = `
groove-area groove-passes thickness: 0.02 in, 12 in; 0.1 in, 2 in
groove-fit-up thickness: 0.02 in, 12 in; 0.1 in, 2 in
groove-area groove-passes rootOpening: 0 in, 4 in; 0 in, 1/2 in
groove-fit-up rootOpening: 0 in, 2 in
groove-area groove-passes groove-fit-up includedAngle: 0 deg, 120 deg; 0 deg, 90 deg
groove-area groove-passes groove-fit-up rootFace: 0 in, 12 in
groove-area groove-passes groove-fit-up capHeight: 0 in, 1/4 in; 0 in, 1/8 in
groove-fit-up passArea: 0.005 in2, 0.5 in2; 0.01 in2, 0.06 in2
groove-passes passArea: 0.001 in2, 0.5 in2; 0.01 in2, 0.06 in2
groove-passes rootPassThickness fillPassThickness: 0.03 in, 1/2 in
groove-passes leg-from-rod run-out-for-leg weave-width diameter: 0.04 in, 5/16 in
groove-passes leg-from-rod run-out-for-leg electrodeLength: 6 in, 36 in
groove-passes leg-from-rod run-out-for-leg stub: 0 in, 30 in; 1 in, 4 in
groove-passes leg-from-rod run-out-for-leg coatingFraction: 0, 0.7; 0.08, 0.4
groove-passes leg-from-rod run-out-for-leg recovery: 0.2, 1; 0.55, 0.8
groove-area groove-passes pipe-groove density: 0.05 lb/in3, 0.8 lb/in3; 0.275 lb/in3, 0.295 lb/in3
groove-passes joint-restarts leg-from-rod padding-plan runOut: 0.5 in, 60 in; 3 in, 16 in
groove-position axisInclination: 0 deg, 90 deg
groove-position faceRotation: 0 deg, 360 deg
heat-input travel-speed-limits procedure-check voltage: 5 V, 100 V; 16 V, 40 V
heat-input travel-speed-limits procedure-check current: 5 A, 2000 A; 20 A, 550 A
heat-input procedure-check travelSpeed: 0.1 in/min, 200 in/min; 2 in/min, 20 in/min
heat-input efficiency: 0.1, 1
joint-restarts jointLength: 0.1 in, 10000 in
joint-restarts leg-from-rod run-out-for-leg passes: 1, 100
leg-from-rod run-out-for-leg bulgeShare: 0 percent, 100 percent; 0 percent, 25 percent
run-out-for-leg leg: 0.03 in, 4 in; 1/8 in, 1 in
load-voltage current: 1 A, 2000 A
oven-load booths: 1, 500
oven-load perHour: 0.1, 60; 2, 15
oven-load firstArc: 0 h, 48 h
oven-load lastArc: 0 h, 72 h
oven-load issueEvery: 0.25 h, 9 h; 0.25 h, 1 h
oven-load spare: 0 percent, 200 percent
oven-load electrodesPerContainer: 1, 5000
oven-load inOven ovenHolds: 0, 100000
padding-plan width: 0.02 in, 4 in; 0.1 in, 1 in
padding-plan height: 0.005 in, 2 in; 0.03 in, 1/4 in
padding-plan overlap: 0 percent, 95 percent; 25 percent, 60 percent
padding-plan plateWidth plateLength: 0.1 in, 240 in
passes-left depth: 0 in, 12 in; 0 in, 2 in
passes-left layerThickness: 0.02 in, 1/2 in; 1/16 in, 3/16 in
pipe-groove root-fit-up bevelAngle: 0 deg, 60 deg; 25 deg, 40 deg
pipe-groove rootOpening: 0 in, 1 in; 0.06 in, 0.19 in
pipe-groove rootFace: 0 in, 1 in; 0 in, 1/8 in
pipe-groove capHeight: 0 in, 1/2 in; 0 in, 1/8 in
pipe-position pipe-position-shares plate-for-clock pipeInclination: 0 deg, 90 deg
pipe-position plate-for-clock clockAngle: 0 deg, 360 deg
preheat-cet cet: 0.2 percent, 0.5 percent
preheat-cet thickness: 10 mm, 90 mm
preheat-cet hydrogen: 1 ml/100g, 20 ml/100g
preheat-cet heatInput: 0.5 kJ/mm, 4 kJ/mm
preheat-cet ambient: -50 degC, 60 degC
preheat-minimum thickness: 0.11 in, 40 in
procedure-check currentFrom currentTo: 5 A, 2000 A
procedure-check voltageFrom voltageTo: 5 V, 100 V
procedure-check travelSpeedFrom travelSpeedTo: 0.1 in/min, 200 in/min
procedure-check interpass interpassFrom interpassTo: -40 degF, 1200 degF
procedure-check arcEnergyTo: 1 kJ/in, 500 kJ/in
rod-check run-out-heat run-out-length voltage-estimate coreDiameter: 1 mm, 8 mm; 2 mm, 6.5 mm
rod-check run-out-heat run-out-length voltage-estimate consumedLength: 10 mm, 900 mm; 150 mm, 450 mm
rod-check beadLength: 5 mm, 3000 mm; 50 mm, 500 mm
run-out-heat runOut: 5 mm, 3000 mm; 50 mm, 500 mm
rod-check arcTime: 1 s, 600 s; 30 s, 150 s
rod-check run-out-heat run-out-length factor: 0.01 kJ/mm3, 0.2 kJ/mm3; 0.0368 kJ/mm3, 0.0608 kJ/mm3
run-out-length heatInput: 0.05 kJ/mm, 10 kJ/mm; 0.4 kJ/mm, 4 kJ/mm
root-fit-up diameter: 1/16 in, 1/4 in; 0.09 in, 0.16 in
root-fit-up rootOpening rootFace: 0 in, 1/2 in
root-fit-up rootPassThickness: 0.02 in, 1/2 in; 0.09 in, 0.2 in
root-fit-up length: 1/2 in, 1000 in
section-measure scale: 0.00001 mm, 100 mm
section-measure scaleError: 0 percent, 20 percent; 0.1 percent, 5 percent
section-measure markingError: 0, 1000
section-measure root.x root.y toes.x toes.y face.x face.y fusion.x fusion.y plateA.x plateA.y plateB.x plateB.y: -100000, 100000
source-line openCircuitVoltage: 10 V, 1000 V; 40 V, 113 V
source-line shortCircuitCurrent: 10 A, 5000 A; 50 A, 1000 A
source-line arcVoltageAtZero: 0 V, 200 V; 10 V, 30 V
source-line voltsPerMm: 0 V/mm, 60 V/mm; 0.5 V/mm, 6 V/mm
source-line arcLength: 0 mm, 50 mm; 1 mm, 8 mm
source-slope shortArcVoltage longArcVoltage: 1 V, 1000 V; 12 V, 60 V
source-slope shortArcCurrent longArcCurrent: 1 A, 5000 A
starting-current diameter: 0.03 in, 0.4 in
test-range thickness: 0.05 in, 10 in
test-range outsideDiameter: 0.2 in, 100 in
test-range layers deposits.layers: 1, 200
test-range deposits.thickness: 0.02 in, 10 in
transverse-shrinkage area: 0.001 in2, 50 in2
transverse-shrinkage thickness: 0.1 in, 8 in; 1/4 in, 2 in
transverse-shrinkage rootOpening: 0 in, 1 in
travel-speed-limits maximum: 1 kJ/in, 500 kJ/in; 15 kJ/in, 110 kJ/in
travel-speed-limits leastShare: 1 percent, 100 percent
travel-speed beadLength: 0.1 in, 1200 in; 1 in, 40 in
travel-speed arcTime: 1 s, 3600 s; 10 s, 180 s
ventilation-check welders: 1, 500
ventilation-check roomVolume: 100 ft3, 50000000 ft3
ventilation-check ceilingHeight: 5 ft, 200 ft
ventilation-check captureVelocity: 0 ft/min, 5000 ft/min
visual-check thickness: 0.05 in, 20 in
visual-check misalignment filletSize leg faceWidth convexity undercutDepth reinforcement: 0 in, 12 in
visual-check porosityPerInch porosityPerFoot largestPore incompletePenetration rootConcavity meltThrough: 0 in, 12 in
visual-check undercutPlaces.from undercutPlaces.to undercutPlaces.depth: 0 in, 4000 in
visual-check poreCount: 0, 1000
voltage-estimate arcTime: 2 s, 600 s; 30 s, 150 s
voltage-estimate current: 5 A, 1000 A
voltage-estimate meterVoltage: 10 V, 60 V
voltage-estimate cableDrop: 0 V, 20 V
weigh-in rods: 1, 200; 5, 50
weigh-in rodsMass: 50 g, 2500 g
weigh-in stubsMass: 5 g, 250 g
weigh-in couponBefore couponAfter: 100 g, 5000 g
`;

const rows = bounds
  .trim()
  .split('\n')
  .flatMap((line) => {
    const [names = '', figures = ''] = line.split(':');
    const [limits = [], usual] = figures
      .split(';')
      .map((pair) => pair.split(',').map((x) => x.trim()));
    const words = names.split(' ');
    const ids = words.filter((word) => /^[a-z]+(-[a-z]+)+$/.test(word));
    const inputs = words.filter((word) => !ids.includes(word));
    return ids.flatMap((id) => inputs.map((input) => ({ id, input, limits, usual })));
  });

const inputOf = (inputs: Inputs, path: string): Input =>
  path
    .split('.')
    .reduce<Input | { list: Inputs }>(
      (place, name) => (place as { list: Inputs }).list[name] as Input,
      { list: inputs },
    ) as Input;

/** A little beyond a bound, in the unit of the bound; a whole number beyond a count. */
function beyond(text: string, way: -1 | 1, whole: boolean): string {
  const [number = '', over = '', under = '1'] = /^(-?[\d.]+)(?:\/(\d+))?/.exec(text) ?? [];
  const value = Number(over) / Number(under);
  const unit = text.slice(number.length);
  return `${value + way * (whole ? 1 : Math.max(Math.abs(value) * 1e-3, 1e-7))}${unit}`;
}

describe.each(rows)('$id, $input', ({ id, input, limits, usual }) => {
  it(`takes ${limits.join(' to ')} and no more${usual ? `, and finds ${usual.join(' to ')} usual` : ''}`, async () => {
    const one = inputOf((await loadCalculation(id)).inputs, input);
    const whole = 'whole' in one && one.whole === true;
    const read = (text: string) => readInputs({ one } as Inputs, { one: text }, 'declared');
    const [from = '', to = ''] = limits;
    for (const [bound, way, words] of [
      [from, -1, 'must be at least'],
      [to, 1, 'must be at most'],
    ] as const) {
      expect(read(bound).problems, bound).toEqual([]);
      expect(read(beyond(bound, way, whole)).problems[0]?.text, bound).toContain(words);
    }
    expect('usual' in one && one.usual !== undefined).toBe(usual !== undefined);
    const [low = '', high = ''] = usual ?? [];
    for (const [bound, hard, way, words] of usual
      ? ([
          [low, from, -1, 'is usually at least'],
          [high, to, 1, 'is usually at most'],
        ] as const)
      : []) {
      expect(read(bound).cautions, bound).toEqual([]);
      if (bound !== hard)
        expect(read(beyond(bound, way, whole)).cautions[0]?.text, bound).toContain(words);
    }
  });
});

describe('the list of bounds', () => {
  it('holds every quantity that these calculations ask for', async () => {
    for (const id of new Set(rows.map((row) => row.id))) {
      const paths = quantities((await loadCalculation(id)).inputs);
      const listed = rows.filter((row) => row.id === id).map(({ input }) => input);
      expect(listed.sort(), id).toEqual(paths.sort());
    }
  });
});

const quantities = (inputs: Inputs, path = ''): string[] =>
  Object.entries(inputs).flatMap(([name, input]) =>
    'list' in input
      ? quantities(input.list, `${path}${name}.`)
      : 'limits' in input
        ? [path + name]
        : [],
  );
