/** How a plate is set up for a point of a pipe: angles worked by hand from the two closed forms. */
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import clockForPlate from '../../../lib/calculations/clock-for-plate.ts';
import pipePosition from '../../../lib/calculations/pipe-position.ts';
import plateForClock from '../../../lib/calculations/plate-for-clock.ts';

const setUp = (pipeInclination: number, clockAngle: number) =>
  plateForClock.compute({ pipeInclination, clockAngle }).setUp;

describe('plate-for-clock', () => {
  it.each([
    [0, 0, 'Roll: leave the face up. Keep the joint level.'],
    [0, 180, 'Roll: turn it over, face down. Keep the joint level.'],
    [90, 0, 'Roll it 90° about the joint (90° stands it on edge). Keep the joint level.'],
    [0, 90, 'Roll: leave the face up. Then raise one end of the joint by 90°.'],
    [
      45,
      90,
      'Roll it 90° about the joint (90° stands it on edge). Then raise one end of the joint by 45°.',
    ],
    // atan(sin 30/(cos 45·cos 30)) = 39.2°, asin(sin 45·cos 30) = 37.8°
    [
      30,
      45,
      'Roll it 39° about the joint (90° stands it on edge). Then raise one end of the joint by 38°.',
    ],
    // atan(sin 33/(cos 45·cos 33)) = 42.6°, asin(sin 45·cos 33) = 36.4°
    [
      33,
      45,
      'Roll it 43° about the joint (90° stands it on edge). Then raise one end of the joint by 36°.',
    ],
  ])('sets a plate up for a pipe at %s° and %s° of clock', (pipe, clock, text) => {
    expect(setUp(pipe, clock)).toBe(`Lay the plate flat, groove up and joint level. ${text}`);
  });

  it('names a test in the position that the point is in', () => {
    const test = (pipeInclination: number, clockAngle: number) =>
      plateForClock.compute({ pipeInclination, clockAngle }).nearestTest;
    expect(
      [test(0, 0), test(90, 0), test(0, 90), test(0, 180)].map((one) => one.slice(0, 2)),
    ).toEqual(['1G', '2G', '3G', '4G']);
  });
});

describe('clock-for-plate', () => {
  it('finds the top of a level pipe for a flat plate, and its foot for an overhead one', () => {
    const clock = (axisInclination: number, faceRotation: number) =>
      clockForPlate.compute({ axisInclination, faceRotation }).clock;
    expect(clock(0, 180)).toBe('12:00, or 12:00 as in a mirror');
    expect(clock(0, 0)).toBe('6:00, or 6:00 as in a mirror');
    expect(clock(30, 180)).toBe('1:00, or 11:00 as in a mirror');
    expect(clock(90, 180)).toBe('3:00, or 9:00 as in a mirror');
  });

  it('leaves the clock open on an upright pipe, whose joint looks alike all round', () => {
    const clock = (faceRotation: number) =>
      clockForPlate.compute({ axisInclination: 0, faceRotation }).clock;
    expect(clock(90)).toBe('anywhere round an upright pipe');
    expect(clock(270)).toBe('anywhere round an upright pipe');
    expect(clock(90.01)).not.toBe('anywhere round an upright pipe');
  });
});

describe('pipe-position', () => {
  it('gives no turn of the face where the weld stands plumb', () => {
    const at = (clockAngle: string) => answer(pipePosition, { pipeInclination: '0', clockAngle });
    expect(at('90')).toMatchObject({ results: { faceRotation: undefined, clock: '3:00' } });
    expect(at('89.99')).toMatchObject({ results: { faceRotation: expect.closeTo(180, 9) } });
  });
});
