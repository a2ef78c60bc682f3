/** What no source needs to print: a multiple of a size is that in both systems, and a plate has no diameter. */
import { describe, expect, it } from 'vitest';
import { timesSize } from '../../../lib/tables/qualified-sizes.ts';
import { sizesD11 } from '../../../lib/tables/qualified-sizes-d1.1.ts';
import { sizesIX } from '../../../lib/tables/qualified-sizes-ix.ts';

const us = (value: number) => ({ value, system: 'us' as const });
const edition = '2010 or later';

describe('the sizes that a test qualifies', () => {
  it('are multiples in inches and in millimeters alike', () => {
    expect(timesSize(us(2), 3)).toEqual({ us: 6, metric: expect.closeTo(152.4, 9) });
    expect(timesSize({ value: 50.8, system: 'metric' }, 0.5)).toEqual({
      us: expect.closeTo(1, 12),
      metric: 25.4,
    });
  });

  it('do not go by a diameter that was typed for a plate', () => {
    for (const isGroove of [true, false]) {
      const plate = { form: 'plate' as const, isGroove, thickness: us(0.5), edition };
      const deposits = [{ thickness: us(0.5), layers: 3 }];
      for (const sizes of [sizesD11, sizesIX])
        expect(sizes({ ...plate, deposits, outsideDiameter: us(2) } as never)).toEqual(
          sizes({ ...plate, deposits, outsideDiameter: undefined } as never),
        );
    }
  });

  it('go by named test pipes in the older editions of AWS D1.1 only', () => {
    const pipe = { form: 'pipe', isGroove: true, thickness: us(0.562), outsideDiameter: us(6.625) };
    const from = (of: string) => sizesD11({ ...pipe, edition: of } as never).thicknessFrom;
    expect(from('2010 or later')).toEqual({ us: 3 / 16, metric: 5 });
    expect(from('older, with named test pipes')).toEqual({ us: 0.187, metric: 4.7 });
  });
});
