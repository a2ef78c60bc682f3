/**
 * The closed forms of a fixed pipe against a model in vectors that knows nothing of them: points
 * on a circle, tangents by difference, rotation about the weld's axis by Rodrigues' formula. The
 * angles are measured as the notes to the position figure say (AWS D3.6 Fig. 5.1).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import clockForPlate from '../../../lib/calculations/clock-for-plate.ts';
import pipePosition from '../../../lib/calculations/pipe-position.ts';
import pipePositionShares from '../../../lib/calculations/pipe-position-shares.ts';
import plateForClock from '../../../lib/calculations/plate-for-clock.ts';
import { clockOfWeld, weldAtClock } from '../../../lib/geometry/fixed-pipe.ts';

type Vector = readonly [number, number, number];
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const times = (k: number, [x, y, z]: Vector): Vector => [k * x, k * y, k * z];
const plus = (...all: Vector[]): Vector =>
  all.reduce(([a, b, c], [x, y, z]) => [a + x, b + y, c + z], [0, 0, 0]);
const dot = ([a, b, c]: Vector, [x, y, z]: Vector) => a * x + b * y + c * z;
const cross = ([a, b, c]: Vector, [x, y, z]: Vector): Vector => [
  b * z - c * y,
  c * x - a * z,
  a * y - b * x,
];
const unit = (v: Vector): Vector => times(1 / Math.hypot(...v), v);
const rotated = (v: Vector, axis: Vector, angle: number): Vector =>
  plus(
    times(Math.cos(angle), v),
    times(Math.sin(angle), cross(axis, v)),
    times(dot(axis, v) * (1 - Math.cos(angle)), axis),
  );
const up: Vector = [0, 0, 1];

/** The joint's circle at a clock angle: from the top, clockwise seen along the rising axis. */
function pointOnJoint(pipeInclination: number, clockAngle: number): Vector {
  const axis: Vector = [Math.cos(radians(pipeInclination)), 0, Math.sin(radians(pipeInclination))];
  // Twelve o'clock: square to the axis, in the plane that is plumb.
  const top: Vector = rotated(axis, [0, -1, 0], Math.PI / 2);
  return rotated(top, axis, radians(clockAngle));
}

function measured(pipeInclination: number, clockAngle: number) {
  const step = 1e-4;
  const face = pointOnJoint(pipeInclination, clockAngle);
  const along = unit(
    plus(
      pointOnJoint(pipeInclination, clockAngle + step),
      times(-1, pointOnJoint(pipeInclination, clockAngle - step)),
    ),
  );
  const uphill = along[2] < 0 ? times(-1, along) : along;
  const inclination = (Math.asin(Math.min(1, uphill[2])) * 180) / Math.PI;
  return { face, uphill, inclination };
}

describe('weldAtClock', () => {
  it('agrees with vectors on every degree of pipe and clock', () => {
    let worstInclination = 0;
    let worstFace = 0;
    for (let pipe = 0; pipe <= 90; pipe++)
      for (let clock = 0; clock < 360; clock++) {
        const { axisInclination, faceTilt, faceRotation } = weldAtClock(pipe, clock);
        const { face, uphill, inclination } = measured(pipe, clock);
        worstInclination = Math.max(worstInclination, Math.abs(inclination - axisInclination));
        if (inclination > 89.9) continue;
        // 0° points against the direction in which the axis angle would grow.
        const zero = unit(plus(times(dot(up, uphill), uphill), times(-1, up)));
        const miss = (angle: number) =>
          Math.hypot(...plus(rotated(zero, uphill, radians(angle)), times(-1, face)));
        worstFace = Math.max(worstFace, Math.min(miss(faceRotation), miss(360 - faceRotation)));
        expect(faceTilt).toBeCloseTo(Math.abs(faceRotation - 180), 9);
      }
    // Near plumb an arcsine loses half its digits.
    expect(worstInclination).toBeLessThan(2e-6);
    expect(worstFace).toBeLessThan(1e-7);
  });

  it('holds cos²θ·cos²α + sin²α = cos²I', () => {
    for (let pipe = 0; pipe <= 90; pipe += 7.5)
      for (let clock = 0; clock < 360; clock += 11) {
        const { axisInclination } = weldAtClock(pipe, clock);
        const left =
          (Math.cos(radians(clock)) * Math.cos(radians(pipe))) ** 2 + Math.sin(radians(pipe)) ** 2;
        expect(left).toBeCloseTo(Math.cos(radians(axisInclination)) ** 2, 12);
      }
  });

  it('finds the same position on both halves', () => {
    for (let pipe = 0; pipe <= 90; pipe += 5)
      for (let clock = 0; clock <= 180; clock += 2) {
        const at = (clockAngle: number) =>
          pipePosition.compute({ pipeInclination: pipe, clockAngle }).position;
        expect(at(360 - clock), `${pipe} ${clock}`).toBe(at(clock));
      }
  });
});

describe('pipe-position', () => {
  // Tilt of the face: tan α over cos θ, by hand. On a level pipe it is none in the upper half; at
  // 1:30 it is 44.7° on a pipe of 35° and 45.8° on one of 36°.
  it.each([
    [0, 14.9, false],
    [0, 15.1, true],
    [0, 89.9, true],
    [0, 90, false],
    [0, 100, false],
    [35, 45, true],
    [36, 45, false],
    [90, 30, false],
  ])(
    'on a pipe of %s° at %s° warns of a slope with its face still up: %s',
    (pipe, clock, warned) => {
      const { because } = pipePosition.compute({ pipeInclination: pipe, clockAngle: clock });
      expect(because.some(({ text }) => text.includes('still looks upward'))).toBe(warned);
    },
  );

  it('asks nothing of the face where the weld runs plumb, and only there', () => {
    const at = (clockAngle: number) => pipePosition.compute({ pipeInclination: 0, clockAngle });
    expect(at(90).faceRotation).toBeUndefined();
    expect(at(270).faceRotation).toBeUndefined();
    expect(at(89.9).faceRotation).toBe(180);
  });
});

describe('pipe-position-shares', () => {
  it.each([0, 1, 5, 9, 10, 11, 29.9, 30, 40, 45, 50, 60, 74, 75, 76, 79, 80, 85, 90])(
    'agrees with counting along the joint at %s°',
    (pipeInclination) => {
      const shares = pipePositionShares.compute({ pipeInclination });
      const steps = 7200;
      const count = { flat: 0, horizontal: 0, vertical: 0, overhead: 0 };
      for (let step = 0; step < steps; step++)
        count[
          pipePosition.compute({ pipeInclination, clockAngle: (360 * (step + 0.5)) / steps })
            .position
        ]++;
      for (const name of ['flat', 'horizontal', 'vertical', 'overhead'] as const)
        expect(Math.abs(shares[name] - (100 * count[name]) / steps), name).toBeLessThan(0.06);
    },
  );

  it.each([
    [0, 'horizontal'],
    [90, 'flat, vertical, overhead'],
  ])('names at %s° what lies nowhere: %s', (pipeInclination, absent) => {
    const { because } = pipePositionShares.compute({ pipeInclination });
    expect(because.filter(({ kind }) => kind === 'passed').map(({ text }) => text)).toEqual([
      `Nowhere on this joint: ${absent}.`,
    ]);
  });

  it('names nothing where every position lies on the joint', () => {
    // At 29.5° some of the top is still flat and some of the side already vertical.
    const { because, ...shares } = pipePositionShares.compute({ pipeInclination: 29.5 });
    for (const name of ['flat', 'horizontal', 'vertical', 'overhead'] as const)
      expect(because.some(({ text }) => text.includes(name) && text.startsWith('Nowhere'))).toBe(
        shares[name] === 0,
      );
  });

  it('adds up to the whole joint, its regions joined end to end', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 90, noNaN: true }), (pipeInclination) => {
        const { flat, horizontal, vertical, overhead, regions } = pipePositionShares.compute({
          pipeInclination,
        });
        expect(flat + horizontal + vertical + overhead).toBeCloseTo(100, 9);
        expect(regions[0]?.from).toBe(0);
        expect(regions.at(-1)?.to).toBe(180);
        for (const [index, region] of regions.slice(1).entries()) {
          expect(region.from).toBe(regions[index]?.to);
          expect(region.position).not.toBe(regions[index]?.position);
        }
      }),
    );
  });

  it('changes at θ₁ = asin(sin 15°/cos α) and θ₂ = acos(tan α/tan 100°) between 10° and 72°', () => {
    for (let pipe = 10.5; pipe < 72; pipe += 1.7) {
      const { regions } = pipePositionShares.compute({ pipeInclination: pipe });
      const first = Math.asin(Math.sin(radians(15)) / Math.cos(radians(pipe)));
      const second = Math.acos(Math.tan(radians(pipe)) / Math.tan(radians(100)));
      const vertical = regions.find(({ position }) => position === 'vertical');
      expect(radians(Number(vertical?.from))).toBeCloseTo(first, 9);
      expect(radians(Number(vertical?.to))).toBeCloseTo(second, 9);
    }
  });

  it('is level enough to be horizontal twice between 72° and 75°', () => {
    // Both limits meet where sin α = sin 100°·cos 15°, which is 72.03°.
    const order = (pipeInclination: number) =>
      pipePositionShares.compute({ pipeInclination }).regions.map(({ position }) => position);
    expect(order(72)).toEqual(['horizontal', 'vertical', 'overhead']);
    expect(order(72.1)).toEqual(['horizontal', 'vertical', 'horizontal', 'overhead']);
    expect(order(75.1)).toEqual(['horizontal', 'overhead']);
  });
});

describe('plate-for-clock and clock-for-plate', () => {
  const pipe = fc.double({ min: 0, max: 89, noNaN: true });
  const clock = fc.double({ min: 0, max: 360, noNaN: true });

  it('undo each other', () => {
    fc.assert(
      fc.property(pipe, clock, (pipeInclination, clockAngle) => {
        const plate = plateForClock.compute({ pipeInclination, clockAngle });
        fc.pre(plate.axisInclination < 89);
        const back = clockForPlate.compute(plate);
        expect(back.pipeInclination).toBeCloseTo(pipeInclination, 5);
        expect(back.clockAngle).toBeCloseTo(Math.min(clockAngle, 360 - clockAngle), 5);
        expect(back.position).toBe(plate.position);
      }),
    );
  });

  it('finds a pipe and a point for every plate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 89, noNaN: true }),
        fc.double({ min: 0, max: 180, noNaN: true }),
        (axisInclination, faceTilt) => {
          const { pipeInclination, clockAngle } = clockOfWeld(axisInclination, faceTilt);
          fc.pre(pipeInclination < 89);
          const weld = weldAtClock(pipeInclination, clockAngle);
          expect(weld.axisInclination).toBeCloseTo(axisInclination, 5);
          expect(weld.faceTilt).toBeCloseTo(faceTilt, 4);
        },
      ),
    );
  });

  it('clamps the plate so that its groove and its face lie as on the pipe', () => {
    for (let alpha = 0; alpha <= 90; alpha += 15)
      for (let theta = 0; theta < 360; theta += 10) {
        const { axisInclination, faceTilt } = plateForClock.compute({
          pipeInclination: alpha,
          clockAngle: theta,
        });
        // The plate flat, its joint along x: rolled about the joint, then one end raised.
        const raise = (v: Vector) => rotated(v, [0, -1, 0], radians(axisInclination));
        const joint = raise([1, 0, 0]);
        const face = raise(rotated(up, [1, 0, 0], radians(faceTilt)));
        const onPipe = measured(alpha, theta);
        expect(joint[2]).toBeCloseTo(onPipe.uphill[2], 6);
        expect(face[2]).toBeCloseTo(onPipe.face[2], 6);
      }
  });
});
