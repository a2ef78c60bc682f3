import { expect, it } from 'vitest';
import { cutPlace } from '../../../lib/tables/cut-places.ts';

it.each([
  ['plate', '2F', /stop and restart/],
  ['pipe', '5F', /stop and restart/],
  ['plate', '3G', /clear of both ends/],
  ['pipe', '5G', /from each quarter/],
  ['pipe', '6G', /from each quarter/],
  ['pipe', '1G', /Apart from each other/],
  ['pipe', '2G', /Apart from each other/],
] as const)(
  'on %s in %s the place is told, from memory of the code’s own figure',
  (form, test, text) => {
    expect(cutPlace('AWS D1.1', form, test).text).toMatch(text);
    expect(cutPlace('AWS D1.1', form, test).cite).toMatchObject({
      source: 'aws-d1.1',
      known: 'memory',
    });
    expect(cutPlace('ASME IX', form, test).cite.source).toBe('asme-ix');
  },
);
