/** What is asked for: its unit, its words, its number, and what to say of a count. */
import { describe, expect, it } from 'vitest';
import type { Output } from '../../../lib/calculation.ts';
import {
  type Asked,
  numberOf,
  tolerance,
  unitAsked,
  wordsOf,
} from '../../../lib/practice/asked.ts';
import { quotedLabel } from '../../../lib/practice/quoted-label.ts';
import { isCount, numberIn, readIn } from '../../../lib/practice/read-answer.ts';
import { namedIn } from '../../../lib/practice/scene.ts';
import { shopLists } from '../../../lib/practice/shop-lists.ts';

const printed: Output = { label: 'Leg', printed: { us: 'in', metric: 'mm' } };
const size: Output = { label: 'Leg', unit: 'in' };
const asked = (output: Output, result: unknown, system: 'us' | 'metric' = 'us') =>
  ({
    calculation: { outputs: { it: output } },
    results: { it: result },
    want: 'it',
    system,
  }) as unknown as Asked;

describe('numberOf', () => {
  it('takes the figure that is printed for the system of the unit', () => {
    const row = { us: 0.1875, metric: 5 };
    expect(numberOf(printed, row, 'in')).toBe(0.1875);
    expect(numberOf(printed, row, 'mm')).toBe(5);
    // A table that prints one unit for both keeps the first figure.
    const volts: Output = { label: 'Voltage', printed: { us: 'V', metric: 'V' } };
    expect(numberOf(volts, { us: 80, metric: 90 }, 'V')).toBe(80);
  });

  it('converts a size to the unit, and has no number for words, rows or nothing', () => {
    expect(numberOf(size, 2, 'mm')).toBeCloseTo(50.8, 12);
    expect(numberOf(size, 'unlimited', 'mm')).toBeUndefined();
    expect(numberOf(size, undefined, 'mm')).toBeUndefined();
    expect(numberOf(size, { us: 1, metric: 2 }, 'mm')).toBeUndefined();
    expect(numberOf(printed, null, 'in')).toBeUndefined();
    expect(numberOf(printed, 'unlimited', 'in')).toBeUndefined();
    expect(numberOf({ label: 'Why', text: true }, 3, 'in')).toBeUndefined();
  });
});

describe('wordsOf and unitAsked', () => {
  it('offer words only where the result is a word', () => {
    const either: Output = { label: 'Thickness', unit: 'in', words: ['unlimited'] };
    expect(wordsOf(asked(either, 'unlimited'))).toEqual(['unlimited']);
    expect(wordsOf(asked(either, 0.5))).toBeUndefined();
    expect(wordsOf(asked(size, 'unlimited'))).toBeUndefined();
    expect(wordsOf(asked({ label: 'Fits', yes: true }, true))).toEqual(['yes', 'no']);
  });

  it('take a bare number in the unit of the reader', () => {
    expect(unitAsked(asked(size, 1))).toBe('in');
    expect(unitAsked(asked(size, 1, 'metric'))).toBe('mm');
    expect(unitAsked(asked(printed, 1, 'metric'))).toBe('mm');
    expect(unitAsked(asked({ label: 'Fits', yes: true }, true))).toBe('1');
  });

  it('allow two parts in a hundred (common practice of a ruler and a watch, no source)', () => {
    expect(tolerance).toBe(0.02);
  });
});

describe('an answer as a number', () => {
  it('is a count where a bare whole number is asked for, and none with digits or a unit', () => {
    expect(isCount({ label: 'Passes', unit: '1' }, 5)).toBe(true);
    expect(isCount({ label: 'Passes', unit: '1' }, 4.8)).toBe(false);
    expect(isCount({ label: 'Share', unit: '1', digits: 3 }, 1)).toBe(false);
    expect(isCount(size, 1)).toBe(false);
    expect(isCount(printed, 1)).toBe(false);
  });

  it('is read in its own unit or another, and is none where there is none', () => {
    expect(numberIn('3/8 in', 'mm')).toBeCloseTo(9.525, 12);
    expect(numberIn('9.525', 'mm')).toBe(9.525);
    expect(numberIn('unlimited', 'mm')).toBeNaN();
    // A difference of temperatures may have °C behind it; a temperature keeps its own.
    expect(readIn('-65.5 °C', 'Cdeg')).toMatchObject({ value: -65.5, unit: 'Cdeg' });
    expect(readIn('20 °C', 'degF')).toMatchObject({ value: 20, unit: 'degC' });
  });
});

describe('words of a problem', () => {
  it.each([
    ['Leg along the first plate', '“leg along the first plate”'],
    ['Width of a flat face, toe to toe', '“width of a flat face”'],
    ['Convexity: face above the toes', '“convexity”'],
    ['Hydrogen (HD)', '“hydrogen”'],
    ['CET of the plate', '“CET of the plate”'],
    ['CET of Plate', '“CET of Plate”'],
    ['A', '“A”'],
  ])('quote %s as %s', (label, quoted) => {
    expect(quotedLabel({ label })).toBe(quoted);
  });

  it('name inputs in braces, and no quantities', () => {
    expect(namedIn('A plate {thickness} thick, {3/8 in|10 mm} off, {legA}, {legA}.')).toEqual([
      'thickness',
      'legA',
      'legA',
    ]);
    expect(namedIn('nothing')).toEqual([]);
  });
});

describe('shopLists', () => {
  const figures = (name: string) => {
    const list = shopLists[name];
    if (!Array.isArray(list)) throw new Error(name);
    return list.map((text) => Number.parseFloat(String(text)));
  };

  it('goes round the clock by half hours of 15°, from the first to the last', () => {
    expect(figures('clockAngle')).toEqual(Array.from({ length: 23 }, (_, i) => 15 * (i + 1)));
    expect(figures('pipeInclination')).toEqual([0, 15, 30, 45, 60, 75, 90]);
  });

  it('sets currents and times by fives, as a dial and a watch are read', () => {
    for (const name of ['current', 'arcTime']) {
      const all = figures(name);
      for (const [place, value] of all.entries()) expect(value).toBe((all[0] ?? 0) + 5 * place);
    }
    expect([figures('current')[0], figures('current').at(-1)]).toEqual([85, 175]);
    expect([figures('arcTime')[0], figures('arcTime').at(-1)]).toEqual([45, 100]);
  });
});
