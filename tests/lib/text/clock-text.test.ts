import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockFace, durationText, wallClock } from '../../../lib/text/clock-text.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';

describe('clockFace', () => {
  it.each([
    [0, '12:00'],
    [15, '12:30'],
    [30, '1:00'],
    [90, '3:00'],
    [180, '6:00'],
    [345, '11:30'],
    [359.9, '12:00'],
    [360, '12:00'],
    [390, '1:00'],
    [366, '12:12'],
  ])('names %s° of a joint %s', (angle, text) => expect(clockFace(angle)).toBe(text));
});

describe('wallClock', () => {
  it.each([
    [0, '0:00'],
    [18.25, '18:15'],
    [23.999, '0:00 the next day'],
    [25, '1:00 the next day'],
    [50.5, '2:30, 2 days later'],
  ])('shows %s h as %s', (hours, text) => expect(wallClock(hours)).toBe(text));

  it('is read back by readQuantity to the minute, before midnight', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), (minutes) => {
        const reading = readQuantity(wallClock(minutes / 60), 'h');
        expect('value' in reading && Math.round(reading.value * 60)).toBe(minutes);
      }),
    );
  });
});

describe('durationText', () => {
  it.each([
    [0, '0 min'],
    [2.75, '2 h 45 min'],
    [4, '4 h'],
    [0.5, '30 min'],
  ])('says %s h as %s', (hours, text) => expect(durationText(hours)).toBe(text));
});

describe('readQuantity on a clock time', () => {
  it('reads hours and minutes where hours are asked for', () => {
    expect(readQuantity('18:15', 'h')).toEqual({ value: 18.25, unit: 'h' });
    expect(readQuantity('25:00 h', 'h')).toEqual({ value: 25, unit: 'h' });
  });
  it.each([
    ['18:75', 'h'],
    ['18:5', 'h'],
    ['1:30', 'min'],
    ['1:30', 's'],
    ['1:30', 'in'],
  ] as const)('refuses %s in %s', (text, unit) => {
    expect(readQuantity(text, unit)).toHaveProperty('problem');
  });
});
