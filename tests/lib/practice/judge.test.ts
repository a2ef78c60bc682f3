/** Slips are named, right answers are taken in any form, and nothing is only called wrong. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { type Asked, judge, unitAsked, wordsOf } from '../../../lib/practice/judge.ts';
import type { System } from '../../../lib/units.ts';

async function ask(id: string, want: string, typed: Typed, system: System = 'us'): Promise<Asked> {
  const calculation = await loadCalculation(id);
  const found = answer(calculation, typed);
  if (!found.ok) throw new Error(found.problems.map(({ text }) => text).join());
  return { calculation, typed, results: found.results, want, system };
}
const heat = { voltage: '22 V', current: '125 A', travelSpeed: '6 in/min' };
const throat = { throat: '1/4 in' };
const speed = { beadLength: '6 in', arcTime: '60 s' };
const metal = { area: '0.5 in2', length: '7 in', density: '0.2836 lb/in3' };
const dc = { currentKind: 'DC', openCircuitVoltage: '75 V' };
// 36 in ÷ 7-1/2 in = 4.8: five electrodes.
const joint = { jointLength: '36 in', runOut: '7-1/2 in', passes: '1' };

describe('a right answer', () => {
  // 60 * 22 * 125 / (1000 * 6) = 27.5
  it.each(['27.5', '28', '27.5 kJ/in', '27 1/2', '1.083 kJ/mm', '27.9', '27.0'])(
    'is taken as %s',
    async (text) => {
      expect(judge(await ask('heat-input', 'arcEnergy', heat), text).right).toBe(true);
    },
  );
  it('is refused outside two in a hundred and the rounding of the page', async () => {
    const asked = await ask('heat-input', 'arcEnergy', heat);
    expect(judge(asked, '28.2').right).toBe(false);
    expect(judge(asked, '26.9').right).toBe(false);
  });
  it('may be the practical size', async () => {
    // 1/4 in of throat: leg 0.354 in, so 3/8 in.
    expect(judge(await ask('fillet-leg', 'leg', throat), '3/8').right).toBe(true);
  });
  it('may be a word in any case, or yes', async () => {
    const asked = await ask('circuit-limit', 'within', dc);
    expect(judge(asked, ' YES ')).toEqual({ right: true, said: 'Right: yes.' });
    expect(unitAsked(asked)).toBe('1');
  });
  it('must be exact where pieces are counted', async () => {
    const asked = await ask('joint-restarts', 'electrodes', joint);
    expect(judge(asked, '5')).toEqual({ right: true, said: 'Right: 5.' });
    expect(judge(asked, '5.0').right).toBe(true);
    expect(judge(asked, '5.01').right).toBe(false);
  });
  it('is said with its practical size', async () => {
    const { said } = judge(await ask('fillet-leg', 'leg', throat), '0.354 in');
    expect(said.replaceAll('\u00a0', ' ')).toBe('Right: 0.354 in, so 3/8 in.');
  });
  it('may be a figure that a source prints, in the reader’s system', async () => {
    const typed = { steel: 'A36', electrodeKind: 'low-hydrogen', thickness: '1 in' };
    const us = await ask('preheat-minimum', 'minimumTemperature', typed);
    expect(unitAsked(us)).toBe('degF');
    expect(judge(us, '50').right).toBe(true);
    const metric = await ask('preheat-minimum', 'minimumTemperature', typed, 'metric');
    expect(unitAsked(metric)).toBe('degC');
    expect(judge(metric, '10').right).toBe(true);
    expect(judge(metric, '50 °F').right).toBe(true);
    expect(judge(metric, '50').right).toBe(false);
  });
  it('is taken in both unit systems, wherever it lies', async () => {
    const calculation = await loadCalculation('travel-speed');
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 180 }),
        fc.integer({ min: 2, max: 30 }),
        (s, inches) => {
          const typed = { beadLength: `${inches} in`, arcTime: `${s} s` };
          const found = answer(calculation, typed);
          if (!found.ok) return;
          const { results } = found;
          const asked = { calculation, typed, results, want: 'travelSpeed', system: 'us' } as const;
          const speed = (60 * inches) / s;
          expect(judge(asked, `${speed} in/min`).right).toBe(true);
          expect(judge({ ...asked, system: 'metric' }, `${speed * 25.4}`).right).toBe(true);
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
    ['a lost kilo', 'heat-input', 'arcEnergy', heat, '27500', /kilo/],
    ['rounded on the way', 'heat-input', 'arcEnergy', heat, '29', /digits/],
    [
      'a count off by one',
      'joint-restarts',
      'electrodes',
      { jointLength: '36 in', runOut: '7-1/2 in', passes: '1' },
      '4',
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
    ['no answer', 'heat-input', 'arcEnergy', heat, ' ', /^Your answer is empty/],
    ['no number', 'heat-input', 'arcEnergy', heat, 'hot', /^Your answer needs a number/],
  ])('%s', async (_, id, want, typed, text, said) => {
    const judged = judge(await ask(id, want, typed), text);
    expect(judged.right).toBe(false);
    expect(judged.said).toMatch(said);
  });

  it.each<[string, string, string, Typed, string, RegExp, System?]>([
    ['two too many', 'joint-restarts', 'electrodes', joint, '7', /^Too many/],
    ['two too few', 'joint-restarts', 'electrodes', joint, '3', /^Too few/],
    ['one too many', 'joint-restarts', 'electrodes', joint, '6', /Off by one: .*rounded up/],
    ['one too few', 'joint-restarts', 'electrodes', joint, '4', /Off by one: .*counts too/],
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
    const judged = judge(await ask(id, want, typed, system), text);
    expect(judged.right).toBe(false);
    expect(judged.said).toMatch(said);
  });

  it('the core put in with the wrong unit', async () => {
    const asked = await ask('fillet-throat', 'throat', { legA: '8 mm', legB: '8 mm' });
    // 8 in of leg: 5.66 in of throat.
    expect(judge(asked, '5.66').said).toMatch(/fits .*leg|25\.4 times too much/);
  });

  it('a radius put in for the diameter', async () => {
    // The run-out goes with the section of the core: half the diameter leaves a quarter.
    const typed = { coreDiameter: '1/8 in', consumedLength: '12 in', runOut: '7-1/2 in' };
    const asked = await ask('run-out-heat', 'heatInput', typed);
    const right = asked.results.heatInput as number;
    expect(judge(asked, `${right / 4} kJ/mm`).said).toMatch(/radius/);
  });

  it('a word that is not the right one', async () => {
    const asked = await ask('groove-position', 'position', {
      axisInclination: '0 deg',
      faceRotation: '180 deg',
      weld: 'groove',
    });
    expect(wordsOf(asked)).toContain('overhead');
    expect(judge(asked, 'Flat').right).toBe(true);
    expect(judge(asked, 'overhead').said).toMatch(/hint/);
    expect(judge(asked, 'sideways').said).toMatch(/one of these/);
  });

  it('never throws and never only says wrong, whatever is typed', async () => {
    const asked = await ask('heat-input', 'heatInput', heat);
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.double().map(String)), (text) => {
        const { said } = judge(asked, text);
        expect(said.length).toBeGreaterThan(8);
        expect(said.replaceAll(text.trim(), '')).not.toMatch(/NaN|undefined/);
      }),
    );
  });
});
