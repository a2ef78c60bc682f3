/** Reading and printing: inverses, a table of what is read and a table of what is refused. */
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  printNumber,
  printQuantity,
  printStated,
  readQuantity,
} from '../../../lib/text/quantity-text.ts';
import { convert, type Unit, units } from '../../../lib/units.ts';

describe('readQuantity', () => {
  it.each<[string, Unit, number, Unit]>([
    ['5/16', 'in', 0.3125, 'in'],
    ['1-3/8', 'in', 1.375, 'in'],
    ['1 3/8"', 'in', 1.375, 'in'],
    ['1½ in', 'mm', 1.5, 'in'],
    ['½', 'in', 0.5, 'in'],
    ['0.3125', 'in', 0.3125, 'in'],
    ['.5 in', 'in', 0.5, 'in'],
    ['8 mm', 'in', 8, 'mm'],
    ['3,5 mm', 'in', 3.5, 'mm'],
    ['8mm', 'in', 8, 'mm'],
    ['-20 °C', 'degF', -20, 'degC'],
    ['−4 °F', 'degF', -4, 'degF'],
    ['5.25 in/min', 'in/min', 5.25, 'in/min'],
    ['10 ml/100g', 'ml/100g', 10, 'ml/100g'],
    ['50 %', 'percent', 50, 'percent'],
    ['1e-3 in', 'in', 0.001, 'in'],
    ['  7 in ', 'in', 7, 'in'],
    ['1:30', 'h', 1.5, 'h'],
    [' 0:06 h ', 'h', 0.1, 'h'],
    ['5.', 'in', 5, 'in'],
    ['+5 in', 'in', 5, 'in'],
    ['12,5', 'mm', 12.5, 'mm'],
    ['1234,5', 'mm', 1234.5, 'mm'],
    ['7\u00a0in', 'in', 7, 'in'],
    ['7 in.', 'mm', 7, 'in'],
    ['7 IN', 'mm', 7, 'in'],
    ['12 MM', 'in', 12, 'mm'],
    ['3/8″', 'mm', 0.375, 'in'],
    ['45 degrees', 'deg', 45, 'deg'],
    ['90 mm²', 'in2', 90, 'mm2'],
    ['90 mm^2', 'in2', 90, 'mm2'],
    ['2 in³', 'in3', 2, 'in3'],
    ['7850 kg/m³', 'lb/in3', 7850, 'kg/m3'],
    ['5 mL/100 g', 'ml/100g', 5, 'ml/100g'],
    ['20 ° C', 'degF', 20, 'degC'],
    ['125 a', 'A', 125, 'A'],
    ['22 v', 'V', 22, 'V'],
    ['1 minute', 's', 1, 'min'],
  ])('reads %j where %s is expected', (text, bare, value, unit) => {
    expect(readQuantity(text, bare)).toEqual({ value, unit });
  });

  it.each([
    ['', 'is empty'],
    ['   ', 'is empty'],
    ['abc', 'needs a number'],
    ['3/0', 'no fraction'],
    ['1-9/8', 'no fraction'],
    ['1/2/3', 'needs a number'],
    ['3,500', 'two things'],
    ['1.2.3', 'needs a number'],
    ['1e999', 'too large'],
    ['5 parsec', 'unknown unit'],
    ['5 V', 'does not fit'],
    ['NaN', 'needs a number'],
    ['Infinity', 'needs a number'],
    ['0x10', 'unknown unit'],
    ['<b>7</b>', 'needs a number'],
    ['7 in in', 'unknown unit'],
    ['1:30', 'unknown unit'],
    ['1,234,5', 'needs a number'],
    ['1,234,567', '1234567'],
    ['3,500', 'write 3500 or 3.500'],
    ['1,23,4', 'needs a number'],
    ['5e', 'unknown unit'],
    ['--5', 'needs a number'],
  ])('refuses %j, saying that it %s', (text, sentence) => {
    const read = readQuantity(text, 'in');
    expect('problem' in read && read.problem).toContain(sentence);
  });

  it.each(['-1:30', '1:60', '12345:00', '1:3', '1:300', 'at 1:30'])(
    'takes no hours from %s',
    (text) => {
      expect(readQuantity(text, 'h')).toHaveProperty('problem');
    },
  );

  it('reads every mixed number as exact arithmetic does', () => {
    fc.assert(
      fc.property(fc.nat(99), fc.integer({ min: 2, max: 64 }), fc.nat(), (whole, bottom, seed) => {
        const top = 1 + (seed % (bottom - 1));
        const exact = new Fraction(whole).add(new Fraction(top, bottom)).valueOf();
        for (const text of [`${whole}-${top}/${bottom}`, `${whole} ${top}/${bottom}`]) {
          const read = readQuantity(text, 'in');
          expect('value' in read ? read.value : Number.NaN).toBeCloseTo(exact, 12);
        }
      }),
    );
  });

  it('never throws and never gives a number that is not finite', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...(Object.keys(units) as Unit[])), (text, bare) => {
        const read = readQuantity(text, bare);
        if ('value' in read) expect(Number.isFinite(read.value)).toBe(true);
        else expect(read.problem).not.toBe('');
      }),
    );
  });
});

describe('printNumber', () => {
  it.each<[number, Unit, object, string]>([
    [34.377, 'kJ/in', { digits: 2 }, '34'],
    [0.3125, 'in', { fraction: 16 }, '5/16'],
    [1.375, 'in', { fraction: 8 }, '1-3/8'],
    [2, 'in', { fraction: 16 }, '2'],
    [1970.4, 'J/mm', {}, '1970'],
    [0.00012345, '1', {}, '0.000123'],
    [-5, 'degC', {}, '−5'],
    [0, 'mm', {}, '0'],
    [9.996, 'mm', {}, '10'],
    [999.6, 'mm', {}, '1000'],
    [0.004, 'in', { fraction: 16 }, '0.004'],
    [-0.004, 'in', { fraction: 16 }, '−0.004'],
    [0, 'in', { fraction: 16 }, '0'],
    [0.3125, 'mm', { fraction: 16 }, '0.313'],
    [1200, 'mm', {}, '1200'],
    [100.5, 'mm', { digits: 5 }, '100.5'],
    [1.23456e-11, '1', {}, '0.000000000012'],
  ])('prints %d %s with %o as %s', (value, unit, how, text) => {
    expect(printNumber(value, unit, how)).toBe(text);
  });

  it('can be read back to within half a unit of its last digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.integer({ min: 2, max: 6 }),
        (value, digits) => {
          const read = readQuantity(printNumber(value, 'mm', { digits }), 'mm');
          const back = 'value' in read ? read.value : Number.NaN;
          expect(Math.abs(back - value) / value).toBeLessThanOrEqual(0.5 * 10 ** (1 - digits));
        },
      ),
    );
  });

  it('prints a fraction that reads back as the same sixty-fourth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 * 40 }), (parts) => {
        expect(readQuantity(printStated(parts / 64, 'in'), 'in')).toEqual({
          value: parts / 64,
          unit: 'in',
        });
      }),
    );
  });
});

it('puts a space before a unit, and none before degrees of angle', () => {
  expect(printQuantity(45, 'deg')).toBe('45°');
  expect(printQuantity(50, 'degF')).toBe('50\u00a0°F');
  expect(printQuantity(0.8, '1')).toBe('0.8');
});

it.each<[number, Unit, string]>([
  [convert(3 / 8, 'in', 'mm'), 'mm', '9.5 mm'],
  [convert(1 / 8, 'in', 'mm'), 'mm', '3.2 mm'],
  [convert(-1 / 8, 'in', 'mm'), 'mm', '−3.2 mm'],
  [convert(1 / 32, 'in', 'mm'), 'mm', '0.8 mm'],
  [0.96, 'mm', '1 mm'],
  [1.04, 'mm', '1 mm'],
  [1.06, 'mm', '1.1 mm'],
  [10.44, 'mm', '10.4 mm'],
  [0.0254, 'mm', '0.0254 mm'],
  [convert(7, 'in', 'mm'), 'mm', '178 mm'],
  [9.44, 'degC', '9.44 °C'],
  [8 / 25.4, 'in', '0.315 in'],
  [2 / 25.4, 'in', '0.079 in'],
  [1 / 25.4, 'in', '0.039 in'],
  [-0.375, 'in', '−3/8 in'],
])('keeps a stated size as simple as it was meant: %d %s is %s', (value, unit, text) => {
  expect(printStated(value, unit).replaceAll('\u00a0', ' ')).toBe(text);
});

it('reads every quantity that it prints, in every unit, as a reader may copy it', () => {
  for (const unit of Object.keys(units) as Unit[]) {
    // A difference of temperatures is printed like a temperature; a form asks for none.
    if (unit === 'Cdeg') continue;
    for (const value of [0.125, 7, 1234])
      expect(readQuantity(printQuantity(value, unit, { digits: 4 }), unit)).toEqual({
        value,
        unit,
      });
  }
});

it.each<[string, Unit, Unit]>([
  ['"', 'in', 'in'],
  ['”', 'in', 'in'],
  [' inch', 'in', 'in'],
  [' inches', 'mm', 'in'],
  ["'", 'm', 'ft'],
  ['°C', 'degF', 'degC'],
  ['° C', 'degC', 'degC'],
  ['C', 'degC', 'degC'],
  ['°F', 'degC', 'degF'],
  ['° F', 'degF', 'degF'],
  ['F', 'degF', 'degF'],
  ['°', 'deg', 'deg'],
  ['%', 'percent', 'percent'],
  [' ml/100 g', 'ml/100g', 'ml/100g'],
  [' mL/100 g', 'ml/100g', 'ml/100g'],
  [' mL/100g', 'ml/100g', 'ml/100g'],
  [' lbs', 'kg', 'lb'],
  [' sec', 'min', 's'],
  [' hour', 'h', 'h'],
  [' hours', 'min', 'h'],
  [' minutes', 's', 'min'],
  [' seconds', 'h', 's'],
  [' amps', 'A', 'A'],
  [' volts', 'V', 'V'],
])('reads 12%s where %s is asked for as 12 %s', (sign, bare, unit) => {
  expect(readQuantity(`12${sign}`, bare)).toEqual({ value: 12, unit });
});

it('says what is wrong with a text, in words that go on after the field’s name', () => {
  const said = (text: string, unit: Unit = 'in') => {
    const read = readQuantity(text, unit);
    return 'problem' in read ? read.problem : read.value;
  };
  expect(said(' ')).toBe('is empty');
  expect(said('wide')).toBe('needs a number, not “wide”');
  expect(said('3 cubits')).toBe('has an unknown unit “cubits”');
  expect(said('3 V')).toBe('is a length, so V does not fit');
  expect(said('3/0')).toBe('cannot be read: “3/0” is no fraction');
  expect(said('3,500')).toBe('could mean two things: write 3500 or 3.500');
  expect(said('1..2')).toBe('needs a number, not “1..2”');
  expect(said('2e400')).toBe('is too large a number');
  // Words that every object of the language knows are no units.
  expect(said('3 toString')).toBe('has an unknown unit “toString”');
  expect(said('3 constructor')).toBe('has an unknown unit “constructor”');
  expect(said('3 __proto__')).toBe('has an unknown unit “__proto__”');
});
