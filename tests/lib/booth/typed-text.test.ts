import { describe, expect, it } from 'vitest';
import { typedText } from '../../../lib/booth/typed-text.ts';
import { printStated } from '../../../lib/text/quantity-text.ts';

const nbsp = (text: string) => text.replace(' ', '\u00a0');
const typed = (us: string, metric: string) =>
  typedText({ us: nbsp(us), metric: nbsp(metric) }, 'in').replace('\u00a0', ' ');

describe('typedText', () => {
  it.each([
    // 5/16 in prints as 7.9 mm; 7.9 mm would print as 0.311 in.
    ['5/16 in', '7.9 mm', '5/16 in'],
    // 8 mm prints as 0.315 in; 0.315 in prints as 8 mm too, and 8 is the rounder.
    ['0.315 in', '8 mm', '8 mm'],
    ['3/8 in', '9.5 mm', '3/8 in'],
    ['0.394 in', '10 mm', '10 mm'],
    // Both give the other: an inch is one digit, 25.4 mm three.
    ['1 in', '25.4 mm', '1 in'],
    ['1/2 in', '12.7 mm', '1/2 in'],
    ['20 in', '508 mm', '20 in'],
  ])('of %s and %s finds %s', (us, metric, text) => {
    expect(typed(us, metric)).toBe(text);
  });

  it('takes what both readers are shown alike as it stands', () => {
    expect(typedText({ us: '125\u00a0A', metric: '125\u00a0A' }, 'A')).toBe('125\u00a0A');
  });

  it('takes the rounder where one is no quantity, so that neither gives the other', () => {
    expect(typed('thick, 123', '8 mm')).toBe('8 mm');
    expect(typed('thick, 1', '80.5 mm')).toBe('thick, 1');
    expect(typed('1/4 in', 'thick, 123')).toBe('1/4 in');
  });

  it('finds, where both give the other, the rounder: fewer figures, a point being one more', () => {
    // 0.2 in prints as 5.1 mm, 5 mm as 0.197 in: only one way round.
    expect(typed('0.2 in', '5.1 mm')).toBe('0.2 in');
    // 100 in is 2540 mm and 2540 mm is 100 in; one figure against three.
    expect(typed('100 in', '2540 mm')).toBe('100 in');
    expect(typed('118 in', '3000 mm')).toBe('3000 mm');
    expect(typed('1-1/2 in', '38.1 mm')).toBe('1-1/2 in');
    // As round as each other: the first.
    expect(typed('3 in', '76.2 mm')).toBe('3 in');
  });

  it('finds the sizes that plates and drawings have, in either system', () => {
    for (const mm of [3, 4, 5, 6, 8, 10, 12, 16, 19, 20, 25, 30, 40, 50, 75, 150, 200, 300])
      expect(typed(printStated(mm / 25.4, 'in'), `${mm} mm`)).toBe(`${mm} mm`);
    for (let parts = 2; parts <= 64; parts++) {
      const us = printStated(parts / 16, 'in');
      expect(typed(us, printStated((parts / 16) * 25.4, 'mm'))).toBe(us.replace('\u00a0', ' '));
    }
  });
});
