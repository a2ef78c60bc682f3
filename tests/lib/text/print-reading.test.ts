import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printReading } from '../../../lib/text/print-reading.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';

/** Arithmetic: 0.8 mm ÷ 25.4 = 0.031496 in, and 1/32 in = 0.03125 in. */
it.each([
  [0.8 / 25.4, 1 / 32, '0.0315\u00a0in'],
  [0.8 / 25.4, 1 / 16, '0.031\u00a0in'],
  [0.0313, 1 / 32, '0.0313\u00a0in'],
  [1 / 32, 1 / 32, '1/32\u00a0in'],
  [2 / 25.4, 1 / 16, '0.079\u00a0in'],
  [25.5 / 25.4, 1, '1.004\u00a0in'],
])('%d in beside a limit of %d in reads %s', (value, limit, text) => {
  expect(printReading(value, 'in', limit)).toBe(text);
});

it('says no more than millimeters were typed with', () => {
  expect(printReading(0.8, 'mm', 0.79375)).toBe('0.8\u00a0mm');
  expect(printReading(3.2, 'mm', 3)).toBe('3.2\u00a0mm');
});

describe('a printed reading', () => {
  it('lies on the same side of the limit as the reading', () => {
    const sixtyFourths = fc.integer({ min: 1, max: 128 }).map((parts) => parts / 64);
    const hundredths = fc.integer({ min: 1, max: 5000 }).map((count) => count / 100 / 25.4);
    fc.assert(
      fc.property(hundredths, sixtyFourths, (value, limit) => {
        const read = readQuantity(printReading(value, 'in', limit), 'in');
        if ('problem' in read) throw new Error(read.problem);
        if (Math.abs(value - limit) > 1e-6)
          expect(Math.sign(read.value - limit)).toBe(Math.sign(value - limit));
      }),
      { numRuns: 300 },
    );
  });
});
