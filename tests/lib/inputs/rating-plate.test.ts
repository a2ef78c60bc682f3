import { describe, expect, it } from 'vitest';
import { refuseAbovePlate } from '../../../lib/inputs/rating-plate.ts';

const refusal = (current: number, ratedCurrent: number, maximumCurrent?: number) => {
  try {
    refuseAbovePlate(current, { ratedCurrent, maximumCurrent }, 'dutyCycle');
    return undefined;
  } catch (thrown) {
    const { field, message } = thrown as { field: string; message: string };
    return { field, message };
  }
};

describe('a rating plate', () => {
  it('holds up to its rated current, or to its highest where that stands there', () => {
    expect(refusal(300, 300)).toBeUndefined();
    expect(refusal(400, 300, 400)).toBeUndefined();
    expect(refusal(300, 300, 300)).toBeUndefined();
    expect(refusal(300.1, 300)).toMatchObject({ field: 'dutyCycle' });
    expect(refusal(400.1, 300, 400)).toMatchObject({ field: 'dutyCycle' });
  });

  it('says both currents in four figures', () => {
    expect(refusal(412.34, 300, 400)?.message).toMatch(
      /^That is \{412\.3 A\}, above the plate’s highest current of \{400 A\}: .* at any duty cycle$/,
    );
  });

  it('has no highest current below the rated one', () => {
    expect(refusal(250, 300, 299)).toEqual({
      field: 'maximumCurrent',
      message: 'The highest current on the plate cannot lie below the rated one',
    });
  });
});
