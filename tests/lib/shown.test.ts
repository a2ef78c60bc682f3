import { describe, expect, it } from 'vitest';
import { shownPrinted } from '../../lib/shown.ts';

const output = { label: 'Leg', printed: { us: 'in', metric: 'mm' }, fraction: 16 } as const;

describe('shownPrinted', () => {
  it.each([
    [3 / 16, 'in', '3/16 in'],
    [1 / 2, 'in', '1/2 in'],
    [0.1, 'in', '0.1 in'],
    [5 / 32, 'in', '0.1563 in'],
    [4.8, 'mm', '4.8 mm'],
    [12, 'mm', '12 mm'],
  ] as const)(
    'shows %d %s as %s: a fraction only where it lies on the rule',
    (value, unit, text) => {
      expect(shownPrinted(output, value, unit).replaceAll('\u00a0', ' ')).toBe(text);
    },
  );

  it('leaves figures as decimals where no rule is named', () => {
    const { fraction: _, ...plain } = output;
    expect(shownPrinted(plain, 0.375, 'in')).toBe('0.375\u00a0in');
  });
});
