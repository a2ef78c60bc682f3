import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insideRange } from '../../../lib/inspection/inside-range.ts';

const maybe = fc.option(fc.integer({ min: -50, max: 50 }), { nil: undefined });

describe('insideRange', () => {
  it('finds what comparing with each end that is there finds, ends included', () => {
    fc.assert(
      fc.property(maybe, maybe, maybe, (reading, from, to) => {
        fc.pre(from === undefined || to === undefined || from <= to);
        const low = reading !== undefined && from !== undefined && reading < from;
        const high = reading !== undefined && to !== undefined && reading > to;
        const checked = reading !== undefined && (from ?? to) !== undefined;
        expect(insideRange(reading, from, to, 'to')).toBe(
          low ? 'no, too low' : high ? 'no, too high' : checked ? 'yes' : 'not checked',
        );
      }),
      { numRuns: 500 },
    );
  });

  it('forgives the last bits of a conversion, below zero as above it, and nothing that can be read', () => {
    for (const end of [-40, 0.1, 250]) {
      const hair = Math.abs(end) * 5e-10;
      expect(insideRange(end - hair, end, undefined, 'to')).toBe('yes');
      expect(insideRange(end + hair, undefined, end, 'to')).toBe('yes');
      const more = Math.abs(end) * 2e-9;
      expect(insideRange(end - more, end, undefined, 'to')).toBe('no, too low');
      expect(insideRange(end + more, undefined, end, 'to')).toBe('no, too high');
    }
  });

  it('refuses a range that ends below its start by the field of its end, and no range of one figure', () => {
    expect(() => insideRange(5, 6, 5, 'currentTo')).toThrow(
      expect.objectContaining({ field: 'currentTo', message: 'The range ends below its start' }),
    );
    expect(insideRange(5, 5, 5, 'currentTo')).toBe('yes');
  });
});
