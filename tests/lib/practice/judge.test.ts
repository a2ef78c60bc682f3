/** Slips are named, right answers are taken in any form, and nothing is only called wrong. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import type { Output } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { type Asked, unitAsked, wordsOf } from '../../../lib/practice/asked.ts';
import { judge } from '../../../lib/practice/judge.ts';
import { loadPracticed } from '../../../lib/practice/load-practiced.ts';
import { makeProblem } from '../../../lib/practice/problem.ts';
import { practiced } from '../../../lib/practice/scenes.ts';
import type { System } from '../../../lib/units.ts';

async function ask(id: string, want: string, typed: Typed, system: System = 'us'): Promise<Asked> {
  const calculation = await loadCalculation(id);
  const found = answer(calculation, typed);
  if (!found.ok) throw new Error(found.problems.map(({ text }) => text).join());
  return { calculation, typed, results: found.results, want, system };
}
const heat = { voltage: '22 V', current: '125 A', travelSpeed: '6 in/min' };
const bead = { beadLength: '7 in', arcTime: '80 s' };
const uneven = { legA: '1/4 in', legB: '3/8 in' };
const groove = { thickness: '3/8 in', rootOpening: '1/4 in', includedAngle: '45 deg' };
const padded = { width: '3/8 in', height: '3/32 in', overlap: '40 percent' };
const job = { mass: '1 lb', depositionRate: '2.4 lb/h', operatingFactor: '0.2' };
const plate = { steel: 'A36', electrodeKind: 'low-hydrogen', thickness: '1 in' };
const throat = { throat: '1/4 in' };
const speed = { beadLength: '6 in', arcTime: '60 s' };
const metal = { area: '0.5 in2', length: '7 in', density: '0.2836 lb/in3' };
const dc = { currentKind: 'DC', openCircuitVoltage: '75 V' };
// 36 in ÷ 7-1/2 in = 4.8: five electrodes.
const joint = { jointLength: '36 in', runOut: '7-1/2 in', passes: '1' };

/** The declared unit of what is asked, as it is typed. */
function ownUnit({ calculation, want }: Asked): string {
  const output = calculation.outputs[want] as Output;
  return 'unit' in output && output.unit !== '1' ? output.unit : '';
}

describe('a right answer', () => {
  // 60 * 22 * 125 / (1000 * 6) = 27.5
  it.each(['27.5', '28', '27.5 kJ/in', '27 1/2', '1.083 kJ/mm', '27.9', '27.0'])(
    'is taken as %s',
    async (text) => {
      expect((await judge(await ask('heat-input', 'arcEnergy', heat), text)).right).toBe(true);
    },
  );
  it('is refused outside two in a hundred and the rounding of the page', async () => {
    const asked = await ask('heat-input', 'arcEnergy', heat);
    expect((await judge(asked, '28.2')).right).toBe(false);
    expect((await judge(asked, '26.9')).right).toBe(false);
  });
  it('may be the figure that a table prints in the other system', async () => {
    // AISC 360-16 Table J2.4 prints 3/16 in and 5 mm in one row (from memory).
    const asked = await ask('fillet-minimum', 'minimumLeg', {
      thinner: '3/8 in',
      thicker: '1/2 in',
    });
    expect((await judge(asked, '3/16')).right).toBe(true);
    expect((await judge(asked, '5 mm')).right).toBe(true);
    expect((await judge(asked, '6 mm')).right).toBe(false);
  });
  it('may be the practical size', async () => {
    // 1/4 in of throat: leg 0.354 in, so 3/8 in.
    expect((await judge(await ask('fillet-leg', 'leg', throat), '3/8')).right).toBe(true);
  });
  it('may be a word in any case, or yes', async () => {
    const asked = await ask('circuit-limit', 'within', dc);
    expect(await judge(asked, ' YES ')).toEqual({ right: true, said: 'Right: yes.' });
    expect(unitAsked(asked)).toBe('1');
  });
  it('must be exact where pieces are counted', async () => {
    const asked = await ask('joint-restarts', 'electrodes', joint);
    expect(await judge(asked, '5')).toEqual({ right: true, said: 'Right: 5.' });
    expect((await judge(asked, '5.0')).right).toBe(true);
    expect((await judge(asked, '5.01')).right).toBe(false);
  });
  it('of a difference of temperatures is written like a temperature', async () => {
    const cold = { cet: '0.277', thickness: '10 mm', hydrogen: '5', heatInput: '1 kJ/mm' };
    // 160·tanh(10/35) − 110 = −65.5 °C, and a difference is shown alike to both readers.
    const asked = await ask('preheat-cet', 'thicknessTerm', cold, 'metric');
    for (const text of ['-65.5', '-65.5 °C', '−65.5 C'])
      expect((await judge(asked, text)).right).toBe(true);
    expect((await judge(asked, '65.5')).said).toMatch(/sign is the other way/);
  });
  it('of nothing is nothing', async () => {
    const asked = await ask('pipe-position-shares', 'vertical', { pipeInclination: '90 deg' });
    expect((await judge(asked, '0')).right).toBe(true);
    expect(await judge(asked, '5')).toEqual({ right: false, said: 'Here it is nothing at all.' });
  });
  it('is said with its practical size', async () => {
    const { said } = await judge(await ask('fillet-leg', 'leg', throat), '0.354 in');
    expect(said.replaceAll('\u00a0', ' ')).toBe('Right: 0.354 in, so 3/8 in.');
  });
  it('may be a figure that a source prints, in the reader’s system', async () => {
    const typed = { steel: 'A36', electrodeKind: 'low-hydrogen', thickness: '1 in' };
    const us = await ask('preheat-minimum', 'minimumTemperature', typed);
    expect(unitAsked(us)).toBe('degF');
    expect((await judge(us, '50')).right).toBe(true);
    const metric = await ask('preheat-minimum', 'minimumTemperature', typed, 'metric');
    expect(unitAsked(metric)).toBe('degC');
    expect((await judge(metric, '10')).right).toBe(true);
    expect((await judge(metric, '50 °F')).right).toBe(true);
    expect((await judge(metric, '50')).right).toBe(false);
  });
  it('is taken in both unit systems, wherever it lies', async () => {
    const calculation = await loadCalculation('travel-speed');
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 20, max: 180 }),
        fc.integer({ min: 2, max: 30 }),
        async (s, inches) => {
          const typed = { beadLength: `${inches} in`, arcTime: `${s} s` };
          const found = answer(calculation, typed);
          if (!found.ok) return;
          const { results } = found;
          const asked = { calculation, typed, results, want: 'travelSpeed', system: 'us' } as const;
          const speed = (60 * inches) / s;
          expect((await judge(asked, `${speed} in/min`)).right).toBe(true);
          expect((await judge({ ...asked, system: 'metric' }, `${speed * 25.4}`)).right).toBe(true);
        },
      ),
    );
  });
});

describe('a slip is named', () => {
  it.each<[string, string, string, Typed, string, RegExp]>([
    [
      'inches for millimeters',
      'travel-speed',
      'travelSpeed',
      { beadLength: '6 in', arcTime: '60 s' },
      '0.236',
      /mm|millimeters/,
    ],
    ['another unit', 'heat-input', 'arcEnergy', heat, '28 A', /does not fit/],
    [
      'the heat with efficiency for the one without',
      'heat-input',
      'arcEnergy',
      heat,
      '22',
      /heat input/,
    ],
    ['efficiency forgotten', 'heat-input', 'heatInput', heat, '27.5', /arc energy|efficiency/],
    ['the throat for the leg', 'fillet-leg', 'leg', throat, '1/4', /throat/],
    [
      'the leg for the throat',
      'fillet-throat',
      'throat',
      { legA: '5/16 in', legB: '5/16 in' },
      '5/16',
      /leg/,
    ],
    [
      'rounded down where it must be up',
      'fillet-leg',
      'leg',
      throat,
      '5/16',
      /Rounded the wrong way/,
    ],
    [
      'minutes for seconds',
      'travel-speed',
      'travelSpeed',
      { beadLength: '6 in', arcTime: '65 s' },
      '0.0923',
      /seconds and minutes/,
    ],
    ['a decimal point', 'heat-input', 'arcEnergy', heat, '2.75', /decimal point/],
    ['a lost kilo', 'heat-input', 'arcEnergy', heat, '27500', /J\/in/],
    ['rounded on the way', 'heat-input', 'arcEnergy', heat, '29', /digits/],
    [
      'a count off by one',
      'joint-restarts',
      'electrodes',
      { jointLength: '36 in', runOut: '7-1/2 in', passes: '2' },
      '9',
      /Off by one/,
    ],
    [
      'a count that is no whole number',
      'joint-restarts',
      'electrodes',
      { jointLength: '36 in', runOut: '7-1/2 in', passes: '1' },
      '4.8',
      /whole number/,
    ],
    ['the other system, no unit written', 'heat-input', 'arcEnergy', heat, '1.083', /kJ\/mm/],
    [
      'the right number, a wrong unit',
      'heat-input',
      'heatInput',
      heat,
      '22 kJ/mm',
      /is right, but kJ\/mm/,
    ],
    [
      'an efficiency that divides',
      'heat-input',
      'heatInput',
      heat,
      '34.4',
      /divides by the arc eff/,
    ],
    ['seconds as hundredths', 'travel-speed', 'travelSpeed', bead, '8.75', /0.8 min/],
    ['one leg for both', 'fillet-throat', 'throat', uneven, '0.177', /first plate” for/],
    ['multiplied for divided', 'fillet-leg', 'leg', { throat: '0.22 in' }, '0.156', /wrong way/],
    ['a part left out', 'groove-area', 'area', groove, '0.0583', /root opening” out/],
    ['the whole angle for its half', 'groove-area', 'area', groove, '0.234', /half the angle/],
    ['the rest of a share', 'bead-overlap', 'pitch', padded, '0.15', /60 % instead of 40 %/],
    ['a share on the wrong side', 'arc-time', 'clockHours', job, '0.0833', /operating factor/],
    [
      'a count with a share left out',
      'electrode-use',
      'electrodes',
      { mass: '1 lb', recovery: '0.7' },
      '17',
      /efficiency” out/,
    ],
    ['the figure of the other system', 'preheat-minimum', 'minimumTemperature', plate, '10', /°C/],
    ['no answer', 'heat-input', 'arcEnergy', heat, ' ', /^Your answer is empty/],
    ['no number', 'heat-input', 'arcEnergy', heat, 'hot', /^Your answer needs a number/],
  ])('%s', async (_, id, want, typed, text, said) => {
    const judged = await judge(await ask(id, want, typed), text);
    expect(judged.right).toBe(false);
    expect(judged.said).toMatch(said);
  });

  it.each<[string, string, string, Typed, string, RegExp, System?]>([
    ['two too many', 'joint-restarts', 'electrodes', joint, '7', /^Too many/],
    ['two too few', 'joint-restarts', 'electrodes', joint, '3', /^Too few/],
    ['one too many', 'joint-restarts', 'electrodes', joint, '6', /Off by one: .*rounded up/],
    [
      'one too few',
      'joint-restarts',
      'electrodes',
      { ...joint, passes: '2' },
      '9',
      /Off by one: .*counts too/,
    ],
    ['millimeters for inches', 'travel-speed', 'travelSpeed', speed, '152', /inches|mm/],
    [
      'a pound for a kilogram',
      'deposit',
      'mass',
      metal,
      '0.993',
      /pounds and kilograms|lb|kg/,
      'metric',
    ],
    ['far too much', 'heat-input', 'arcEnergy', heat, '3000', /^Too much, and no usual slip/],
    ['far too little', 'heat-input', 'arcEnergy', heat, '0.003', /^Too little, and no usual slip/],
    ['the other sign', 'heat-input', 'arcEnergy', heat, '-27.5', /sign is the other way/],
    ['ten in a hundred', 'heat-input', 'arcEnergy', heat, '30.2', /^Close: carry more digits/],
    ['a watt for a kilowatt', 'heat-input', 'arcEnergy', heat, '27.5 in', /does not fit/],
    ['no word of the list', 'circuit-limit', 'within', dc, 'perhaps', /one of these: yes, no/],
    ['the wrong word', 'circuit-limit', 'within', dc, 'No', /^Not this one/],
  ])('%s', async (_, id, want, typed, text, said, system = 'us') => {
    const judged = await judge(await ask(id, want, typed, system), text);
    expect(judged.right).toBe(false);
    expect(judged.said).toMatch(said);
  });

  it('the core put in with the wrong unit', async () => {
    const asked = await ask('fillet-throat', 'throat', { legA: '8 mm', legB: '8 mm' });
    // 8 in of leg: 5.66 in of throat.
    expect((await judge(asked, '5.66')).said).toMatch(/right in mm|fits .*leg/);
  });

  it('a radius put in for the diameter', async () => {
    // The run-out goes with the section of the core: half the diameter leaves a quarter.
    const typed = { coreDiameter: '1/8 in', consumedLength: '12 in', runOut: '7-1/2 in' };
    const asked = await ask('run-out-heat', 'heatInput', typed);
    const right = asked.results.heatInput as number;
    expect((await judge(asked, `${right / 4} kJ/mm`)).said).toMatch(/radius/);
  });

  it('a word that is not the right one', async () => {
    const asked = await ask('groove-position', 'position', {
      axisInclination: '0 deg',
      faceRotation: '180 deg',
      weld: 'groove',
    });
    expect(wordsOf(asked)).toContain('overhead');
    expect((await judge(asked, 'Flat')).right).toBe(true);
    expect((await judge(asked, 'overhead')).said).toMatch(/hint/);
    expect((await judge(asked, 'sideways')).said).toMatch(/one of these/);
  });

  it('speaks only of what the problem has', async () => {
    const has = (asked: Asked, pattern: RegExp) =>
      Object.entries({ ...asked.calculation.inputs, ...asked.calculation.outputs }).some(
        ([name, { label }]) => pattern.test(`${name} ${label}`),
      );
    for (const one of await Promise.all(practiced.map(loadPracticed)))
      for (let set = 1; set <= 3; set++) {
        const { calculation } = one;
        const { typed, want, found } = makeProblem(one, set, 0, 'us');
        const asked = { calculation, typed, want, results: found.results, system: 'us' } as const;
        const right = found.results[want];
        if (typeof right !== 'number') continue;
        for (const factor of [
          0.5,
          Math.SQRT1_2,
          0.8,
          1.25,
          Math.SQRT2,
          2,
          4,
          25.4,
          60,
          645.16,
          1000,
        ]) {
          const { said } = await judge(asked, `${right * factor} ${ownUnit(asked)}`.trim());
          if (/arc efficiency/.test(said))
            expect([said, has(asked, /efficiency/i)]).toContain(true);
          if (/throat/.test(said)) expect([said, has(asked, /throat/i)]).toContain(true);
          if (/radius/.test(said)) expect([said, has(asked, /diameter|radius/i)]).toContain(true);
          if (/seconds/.test(said))
            expect([
              `${one.id}: ${said}`,
              has(asked, /time|hour|minute|speed|slow|rate/i),
            ]).toContain(true);
          expect(said).not.toMatch(/NaN|undefined|\d{12}/);
        }
      }
  });

  it('never throws and never only says wrong, whatever is typed', async () => {
    const asked = await ask('heat-input', 'heatInput', heat);
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.string(), fc.double().map(String)), async (text) => {
        const { said } = await judge(asked, text);
        expect(said.length).toBeGreaterThan(8);
        expect(said.replaceAll(text.trim(), '')).not.toMatch(/NaN|undefined/);
      }),
    );
  });
});
