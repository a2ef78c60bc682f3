/** Slips are named, right answers are taken in any form, and nothing is only called wrong. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { type Asked, judge, wordsOf } from '../../../lib/practice/judge.ts';
import type { System } from '../../../lib/units.ts';

async function ask(id: string, want: string, typed: Typed, system: System = 'us'): Promise<Asked> {
  const calculation = await loadCalculation(id);
  const found = answer(calculation, typed);
  if (!found.ok) throw new Error(found.problems.map(({ text }) => text).join());
  return { calculation, typed, results: found.results, want, system };
}
const heat = { voltage: '22 V', current: '125 A', travelSpeed: '6 in/min' };
const throat = { throat: '1/4 in' };

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
