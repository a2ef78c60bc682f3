import { describe, expect, it } from 'vitest';
import { printMeasured } from '../../../lib/section/measured-text.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('printMeasured', () => {
  it.each([
    [8.134, 0.21, 'mm', 'metric', '8.1 ± 0.2 mm'],
    [8.134, 0.149, 'mm', 'metric', '8.13 ± 0.15 mm'],
    [8.134, 0.096, 'mm', 'metric', '8.13 ± 0.10 mm'],
    [8.134, 0.21, 'mm', 'us', '0.320 ± 0.008 in'],
    [36.378, 1.2, 'mm2', 'metric', '36.4 ± 1.2 mm²'],
    [89.6, 3.5, 'deg', 'us', '90° ± 4°'],
    [28.83, 1.8, 'percent', 'us', '28.8 ± 1.8 %'],
    [-0.41, 0.16, 'mm', 'metric', '−0.41 ± 0.16 mm'],
    [-0.001, 0.16, 'mm', 'metric', '0.00 ± 0.16 mm'],
    [8.134, 0, 'mm', 'metric', '8.13 mm'],
    [90, 0, 'deg', 'metric', '90.0°'],
    [1234.5, 130, 'mm2', 'metric', '1235 ± 130 mm²'],
  ] as const)(
    'prints %f give or take %f %s in %s as %s',
    (value, uncertainty, unit, system, text) => {
      expect(plain(printMeasured({ value, uncertainty }, unit, system))).toBe(text);
    },
  );
});
