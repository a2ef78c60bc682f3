import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCalculation } from '../../../lib/calculations.ts';
import { readGiven, writeGiven } from '../../../lib/text/given-line.ts';

describe('the line of given values', () => {
  it('comes back as it was written, lists and gaps too', async () => {
    const { inputs } = await loadCalculation('visual-check');
    const value = fc.stringMatching(/^[0-9a-z /.-]{1,12}$/);
    const rows = fc.array(fc.record({ from: value, to: value }), { minLength: 1, maxLength: 3 });
    const given = fc.record(
      { code: value, thickness: value, undercutPlaces: rows, convexity: value },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(given, (typed) => {
        expect(readGiven(inputs, writeGiven(inputs, typed))).toEqual(typed);
      }),
    );
  });
  it('is as short as its values', async () => {
    const { inputs } = await loadCalculation('heat-input');
    expect(writeGiven(inputs, { travelSpeed: '6 in/min', voltage: '22 V', current: '125 A' })).toBe(
      '22 V|125 A|6 in/min',
    );
  });
  it('refuses a value that would break it', async () => {
    const { inputs } = await loadCalculation('heat-input');
    expect(() => writeGiven(inputs, { voltage: '22|1' })).toThrow(TypeError);
  });
});

it('says which value holds the sign that parts them', async () => {
  const { inputs } = await loadCalculation('heat-input');
  expect(() => writeGiven(inputs, { current: '1|2' })).toThrow('current holds a |: 1|2');
  // A number is written as it is; gaps at the end are left out, those before stay.
  expect(writeGiven(inputs, { current: 125 })).toBe('|125');
  expect(readGiven(inputs, '|125')).toEqual({ current: '125' });
  expect(readGiven(inputs, '')).toEqual({});
});
