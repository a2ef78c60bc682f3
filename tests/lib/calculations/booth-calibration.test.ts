import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import boothCalibration from '../../../lib/calculations/booth-calibration.ts';

const amperes = fc.integer({ min: 40, max: 300 });

describe('booth-calibration', () => {
  it('finds the offset that a dial was given, and undoes it', () => {
    fc.assert(
      fc.property(
        fc.array(amperes, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: -20, max: 20 }),
        amperes,
        (dials, offset, wanted) => {
          const readings = dials.map((dial) => ({ dial, meter: dial + offset }));
          const found = boothCalibration.compute({ readings, wanted });
          expect(found.offset).toBeCloseTo(offset, 9);
          expect(found.spread).toBeCloseTo(0, 9);
          expect(found.setDial).toBeCloseTo(wanted - offset, 9);
        },
      ),
    );
  });

  it('goes by the reading nearest to the wanted current when offsets differ', () => {
    const readings = [
      { dial: 90, meter: 88 },
      { dial: 160, meter: 148 },
    ];
    expect(boothCalibration.compute({ readings, wanted: 90 }).setDial).toBe(92);
    expect(boothCalibration.compute({ readings, wanted: 140 }).setDial).toBe(152);
  });

  it('takes the reading listed first where two lie equally near (our choice)', () => {
    const [low, high] = [
      { dial: 100, meter: 96 },
      { dial: 120, meter: 104 },
    ];
    const setDial = (...readings: { dial: number; meter: number }[]) =>
      boothCalibration.compute({ readings, wanted: 100 }).setDial;
    expect(setDial(low, high)).toBe(104);
    expect(setDial(high, low)).toBe(116);
  });

  it('tells the mean offset and how far the offsets lie apart', () => {
    // −4, −16 and −10: −10 in the mean, 12 from end to end.
    const found = boothCalibration.compute({
      readings: [
        { dial: 100, meter: 96 },
        { dial: 200, meter: 184 },
        { dial: 150, meter: 140 },
      ],
      wanted: undefined,
    });
    expect(found).toMatchObject({ offset: -10, spread: 12, setDial: undefined });
  });

  it('says when the dial is off unevenly, and when it is far off', () => {
    const cautions = (readings: { dial: number; meter: number }[]) =>
      boothCalibration
        .compute({ readings, wanted: undefined })
        .because.filter(({ kind }) => kind === 'caution').length;
    expect(cautions([{ dial: 100, meter: 96 }])).toBe(0);
    expect(
      cautions([
        { dial: 100, meter: 99 },
        { dial: 200, meter: 185 },
      ]),
    ).toBe(1);
    expect(cautions([{ dial: 100, meter: 80 }])).toBe(1);
  });

  it('refuses an empty list and an offset larger than the wanted current', () => {
    expect(answer(boothCalibration, { readings: [] }).ok).toBe(false);
    expect(
      answer(boothCalibration, { readings: [{ dial: '50', meter: '150' }], wanted: '60' }).ok,
    ).toBe(false);
  });
});
