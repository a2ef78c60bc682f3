import { describe, expect, it } from 'vitest';
import type { Output } from '../../../lib/calculation.ts';
import { nothing, practical, shown, shownCell, shownPrinted } from '../../../lib/text/shown.ts';

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

  it('prints four digits where no rule takes the figure', () => {
    expect(shownPrinted(output, 0.12345, 'in')).toBe('0.1235\u00a0in');
    expect(shownPrinted(output, 1 / 64, 'in')).toBe('0.01563\u00a0in');
  });

  it('leaves figures as decimals where no rule is named', () => {
    const { fraction: _, ...plain } = output;
    expect(shownPrinted(plain, 0.375, 'in')).toBe('0.375\u00a0in');
  });
});

const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

describe('shown', () => {
  const leg: Output = { label: 'Leg', unit: 'in', digits: 3 };
  it.each([
    [leg, 0.25, 'us', '0.25 in'],
    [leg, 0.25, 'metric', '6.35 mm'],
    [{ ...leg, fraction: 16 }, 0.3125, 'us', '5/16 in'],
    [{ label: 'Fits', yes: true }, true, 'us', 'yes'],
    [{ label: 'Fits', yes: true }, false, 'us', 'no'],
    [{ label: 'Up to', unit: 'in', words: ['unlimited'] }, 'unlimited', 'us', 'unlimited'],
    [{ label: 'Why', text: true }, 'over {1 in}', 'metric', 'over 25.4 mm'],
    [
      { label: 'Heat', printed: { us: 'degF', metric: 'degC' } },
      { us: 50, metric: 10 },
      'metric',
      '10 °C',
    ],
    [leg, undefined, 'us', nothing],
    [leg, null, 'us', nothing],
    [{ label: 'Rows', list: {} }, [], 'us', ''],
    [{ label: 'Up to', unit: 'in', words: ['a {1 in} gap'] }, 'a {1 in} gap', 'us', 'a {1 in} gap'],
    [{ label: 'Length', unit: 'in' }, 1 / 3, 'us', '0.333 in'],
    [{ label: 'Map', shape: true }, {}, 'us', ''],
  ] as [Output, unknown, 'us' | 'metric', string][])(
    '%o of %o in %s is "%s"',
    (output, result, system, text) => {
      expect(plain(shown(output, result, system))).toBe(text);
    },
  );
  it('shows a number in another unit when asked', () => {
    expect(plain(shown(leg, 12, 'us', 'ft'))).toBe('1 ft');
  });
});

describe('shownCell', () => {
  it('shows numbers with units, texts in the reader’s system, and nothing as a dash', () => {
    expect(plain(shownCell({ label: 'Length', unit: 'in' }, 8, 'metric'))).toBe('203 mm');
    expect(plain(shownCell({ label: 'Pieces', text: true }, '2 × {1 in}', 'metric'))).toBe(
      '2 × 25.4 mm',
    );
    expect(shownCell({ label: 'Length', unit: 'in' }, undefined, 'us')).toBe(nothing);
  });
});

describe('practical', () => {
  const sized = (way: 'up' | 'down' | 'nearest'): Output => ({
    label: 'Leg',
    unit: 'in',
    round: { to: '1/16 in|0.5 mm', way },
  });
  it.each([
    ['up', 0.26, 'us', '5/16 in'],
    ['down', 0.3, 'us', '1/4 in'],
    ['nearest', 0.3, 'us', '5/16 in'],
    ['up', 0.25, 'us', '1/4 in'],
    ['up', 0.25 + 1e-13, 'us', '1/4 in'],
    ['up', 0.26, 'metric', '7 mm'],
  ] as const)('rounds %s: %d in is, in %s, %s', (way, value, system, size) => {
    expect(plain(practical(sized(way), value, system))).toBe(size);
  });
  it('names a metric step by its own unit', () => {
    const speed: Output = {
      label: 'Speed',
      unit: 'in/min',
      round: { to: '1/2 in/min|10 mm/min', way: 'nearest' },
    };
    expect(plain(practical(speed, 6, 'metric'))).toBe('150 mm/min');
    expect(plain(practical(speed, 6.3, 'us'))).toBe('6.5 in/min');
    const small: Output = { label: 'Leg', unit: 'in', round: { to: '1/64 in', way: 'down' } };
    expect(plain(practical(small, 0.17, 'us'))).toBe('5/32 in');
  });
  it('has none where the step has no size for the system, or the answer is a word', () => {
    const inchOnly: Output = { label: 'Leg', unit: 'in', round: { to: '1/16 in', way: 'up' } };
    expect(practical(inchOnly, 0.26, 'metric')).toBeUndefined();
    expect(practical(sized('up'), 'unlimited', 'us')).toBeUndefined();
    expect(practical({ label: 'Leg', unit: 'in' }, 0.26, 'us')).toBeUndefined();
  });
});
