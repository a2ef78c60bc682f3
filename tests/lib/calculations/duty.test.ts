/** The square law of a machine's duty cycle, there and back, and the plate as its ceiling. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import dutyCurrent from '../../../lib/calculations/duty-current.ts';
import dutyCycle from '../../../lib/calculations/duty-cycle.ts';

const plate = { ratedCurrent: 300, ratedDutyCycle: 60, maximumCurrent: 400 };

describe('duty cycle and current', () => {
  it('undo each other, and heat (current squared times time) is what the plate allows', () => {
    fc.assert(
      fc.property(fc.double({ min: 240, max: 400, noNaN: true }), (current) => {
        const {
          dutyCycle: share,
          weldMinutes,
          restMinutes,
        } = dutyCycle.compute({ ...plate, current });
        expect(current ** 2 * share).toBeCloseTo(300 ** 2 * 60, 3);
        expect(weldMinutes).toBeCloseTo(share / 10, 9);
        expect(weldMinutes + restMinutes).toBeCloseTo(10, 9);
        expect(dutyCurrent.compute({ ...plate, dutyCycle: share }).current).toBeCloseTo(current, 9);
      }),
    );
  });

  // 300 A at 60 %: 300·√(60/33.75) = 400 A, the end of the plate.
  it('is refused above the plate’s highest current, and answered at it', () => {
    const current = (share: string, maximumCurrent?: string) =>
      answer(dutyCurrent, {
        ratedCurrent: '300',
        ratedDutyCycle: '60',
        dutyCycle: share,
        maximumCurrent,
      });
    expect(current('33.75', '400')).toMatchObject({ results: { current: 400 } });
    expect(current('33.7', '400')).toMatchObject({
      problems: [
        { field: 'dutyCycle', text: expect.stringMatching(/\{400 A\}: the machine is not/) },
      ],
    });
    expect(current('60')).toMatchObject({ results: { current: 300 } });
    expect(current('59')).toMatchObject({ problems: [{ field: 'dutyCycle' }] });
  });

  it('are refused where the plate’s end lies below its rating, and answered where both are one', () => {
    const both = (maximumCurrent: string) => {
      const typed = { ratedCurrent: '300', ratedDutyCycle: '60', maximumCurrent };
      return [
        answer(dutyCurrent, { ...typed, dutyCycle: '100' }),
        answer(dutyCycle, { ...typed, current: '200' }),
      ];
    };
    for (const found of both('299'))
      expect(found).toMatchObject({ problems: [{ field: 'maximumCurrent' }] });
    for (const found of both('300')) expect(found).toMatchObject({ ok: true });
  });
});
