import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import heatInput from '../../../lib/calculations/heat-input.ts';
import procedureCheck from '../../../lib/calculations/procedure-check.ts';

const results = (given: Record<string, string>) => {
  const answered = answer(procedureCheck, given);
  if (!answered.ok) throw new Error(answered.problems[0]?.text);
  return answered.results as Record<string, unknown>;
};

describe('procedure-check', () => {
  it('places a reading below, inside or above its range', () => {
    const three = fc.tuple(
      fc.integer({ min: 10, max: 300 }),
      fc.integer({ min: 10, max: 300 }),
      fc.integer({ min: 10, max: 300 }),
    );
    fc.assert(
      fc.property(three, (numbers) => {
        const [low, middle, high] = numbers.toSorted((a, b) => a - b).map((n) => `${n} A`);
        const at = (current = '', currentFrom = '', currentTo = '') =>
          results({ current, currentFrom, currentTo }).currentInside;
        expect(at(middle, low, high)).toBe('yes');
        if (low !== middle) expect(at(low, middle, high)).toBe('no, too low');
        if (middle !== high) expect(at(high, low, middle)).toBe('no, too high');
      }),
    );
  });

  it('says no as a whole when one item is outside and the others are inside', () => {
    const good = { current: '125', currentFrom: '115', currentTo: '140' };
    expect(results(good).verdict).toBe('yes, as far as it was checked');
    expect(results({ ...good, interpass: '300', interpassTo: '250' }).verdict).toBe('no');
  });

  it('takes one end of a range for enough, and leaves the rest unchecked', () => {
    expect(results({ interpass: '40 degF', interpassFrom: '50 degF' })).toMatchObject({
      interpassInside: 'no, too low',
      currentInside: 'not checked',
      arcEnergyInside: 'not checked',
    });
  });

  it('lets the same size in another unit stand on the end of the range', () => {
    const given = { travelSpeed: '203.2 mm/min', travelSpeedTo: '8 in/min' };
    expect(results(given).travelSpeedInside).toBe('yes');
    expect(results({ interpass: '121 degC', interpassTo: '249.8 degF' }).interpassInside).toBe(
      'yes',
    );
  });

  it('says that nothing was checked until something was', () => {
    expect(results({}).verdict).toBe('nothing was checked');
    expect(results({ current: '125' }).verdict).toBe('nothing was checked');
    expect(results({ current: '125', currentFrom: '115' }).verdict).toBe(
      'yes, as far as it was checked',
    );
  });

  it.each(['voltage', 'current', 'travelSpeed'])('has no arc energy without %s', (name) => {
    const given = { voltage: '23', current: '131', travelSpeed: '6.5', arcEnergyTo: '20' };
    expect(results(given).arcEnergyInside).toBe('no, too high');
    expect(results({ ...given, [name]: '' })).toMatchObject({ arcEnergyInside: 'not checked' });
    expect(results({ ...given, [name]: '' }).arcEnergy).toBeUndefined();
  });

  it('has the arc energy of heat-input', () => {
    const given = { voltage: '23', current: '131', travelSpeed: '6.5' };
    const answered = answer(heatInput, given);
    expect(answered.ok && answered.results.arcEnergy).toBeCloseTo(
      results(given).arcEnergy as number,
      12,
    );
  });
});
