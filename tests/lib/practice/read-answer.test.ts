/** What is typed for an answer, as a number in the unit that was asked for. */
import { expect, it } from 'vitest';
import type { Output } from '../../../lib/calculation.ts';
import { quotedLabel } from '../../../lib/practice/quoted-label.ts';
import { isCount, numberIn, readIn } from '../../../lib/practice/read-answer.ts';

it('takes the sign of a temperature for that of a difference where one is asked for, and only there', () => {
  for (const text of ['12 °C', '12°C', '12 C', '12\u00a0°C ', '12', '12  °C'])
    expect(readIn(text, 'Cdeg')).toEqual({ value: 12, unit: 'Cdeg' });
  expect(readIn('12 °C', 'degF')).toEqual({ value: 12, unit: 'degC' });
  expect(readIn('12 °Cx', 'Cdeg')).toHaveProperty('problem');
  expect(readIn('12 °F', 'Cdeg')).toHaveProperty('problem');
});

it('converts into the unit asked for, and has no number for what is none', () => {
  expect(numberIn('25.4 mm', 'in')).toBe(1);
  expect(numberIn('1/2', 'in')).toBe(0.5);
  expect(numberIn('wide', 'in')).toBeNaN();
  expect(numberIn('3 V', 'in')).toBeNaN();
});

it('knows a count: a whole number without a unit and without figures to show', () => {
  const count: Output = { label: 'Passes', unit: '1' };
  expect(isCount(count, 3)).toBe(true);
  expect(isCount(count, 0)).toBe(true);
  expect(isCount(count, 3.5)).toBe(false);
  expect(isCount({ ...count, digits: 2 }, 3)).toBe(false);
  expect(isCount({ ...count, unit: 'in' }, 3)).toBe(false);
  expect(isCount({ label: 'Fits', yes: true }, 3)).toBe(false);
});

it.each([
  ['Leg, along the first plate', '“leg”'],
  ['Current: as set', '“current”'],
  ['Width (of the bead)', '“width”'],
  ['CET', '“CET”'],
  ['pH of it', '“pH of it”'],
  ['A', '“A”'],
])('calls %s %s in running text', (label, said) => {
  expect(quotedLabel({ label })).toBe(said);
});
