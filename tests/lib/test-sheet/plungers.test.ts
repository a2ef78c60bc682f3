/**
 * Plunger and strap: ASME IX QW-466.1, 2010 edition, "all others with 20 % elongation and more": a
 * strap of 3/8 in round 1-1/2 in, thinner ones round four times their thickness. AWS D1.1 from memory.
 */
import { describe, expect, it } from 'vitest';
import { plungerFit } from '../../../lib/tables/plungers.ts';

const us = (value: number) => ({ system: 'us' as const, value });
const metric = (value: number) => ({ system: 'metric' as const, value });

describe('plungerFit', () => {
  it.each([
    ['ASME IX', us(3 / 8), 1.5, 'as the table'],
    ['ASME IX', us(3 / 8), 2, 'too large'],
    ['ASME IX', us(3 / 8), 1.25, 'too small'],
    ['ASME IX', us(1 / 4), 1, 'as the table'],
    ['ASME IX', us(1 / 4), 1.5, 'too large'],
    ['ASME IX', us(1 / 2), 2, 'strap too thick'],
    ['ASME IX', metric(10), 38.1, 'as the table'],
    ['ASME IX', metric(10), 40, 'as the table'],
    ['ASME IX', metric(10), 50, 'too large'],
    ['ASME IX', metric(10), 32, 'too small'],
    ['ASME IX', metric(6), 24, 'as the table'],
    ['ASME IX', metric(6), 38.1, 'too large'],
    ['AWS D1.1', us(3 / 8), 1.5, 'as the table'],
    ['AWS D1.1', us(1 / 4), 1.5, 'as the table'],
    ['AWS D1.1', us(3 / 8), 2, 'too large'],
  ] as const)('%s, %o round %f: %s', (code, strap, diameter, fit) => {
    expect(plungerFit(code, strap, diameter).fit).toBe(fit);
  });

  it('takes what a shop rounds off, and no more', () => {
    expect(plungerFit('ASME IX', us(3 / 8), 1.5 * 1.0199).fit).toBe('as the table');
    expect(plungerFit('ASME IX', us(3 / 8), 1.5 * 1.0201).fit).toBe('too large');
    expect(plungerFit('ASME IX', us(3 / 8), 1.5 * 0.9799).fit).toBe('too small');
  });
});
