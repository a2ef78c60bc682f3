import { describe, expect, it } from 'vitest';
import { sourceName } from '../../../lib/text/source-name.ts';

describe('sourceName', () => {
  it.each([
    ['aws-d1.1', 'AWS D1.1'],
    ['osha-1910-133', '29 CFR 1910.133'],
    ['iso-tr-17671-1', 'ISO/TR 17671-1'],
    ['en-1011-2', 'EN 1011-2'],
    ['nec', 'NEC'],
    ['asme-ix', 'ASME IX'],
    ['14-cfr-65', '14 CFR 65'],
    ['onet-51-4121', 'O*NET 51-4121'],
    ['asme-b31.3', 'ASME B31.3'],
    ['plate-handbook', 'Plate handbook'],
    ['common-practice', 'Common practice'],
  ])('calls %s %s, as it is cited', (id, name) => {
    expect(sourceName(id)).toBe(name);
  });
});
