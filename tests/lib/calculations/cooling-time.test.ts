import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import coolingTime from '../../../lib/calculations/cooling-time.ts';

const heatInput = fc.double({ min: 0.1, max: 10, noNaN: true });
const startTemperature = fc.double({ min: -50, max: 450, noNaN: true });
const factor = fc.double({ min: 0.3, max: 1, noNaN: true });
const plain = { shapeFactor3d: 1, shapeFactor2d: 1 };

describe('cooling-time', () => {
  it('meets at the transition thickness from both sides', () => {
    fc.assert(
      fc.property(
        heatInput,
        startTemperature,
        factor,
        factor,
        (heatInput, startTemperature, shapeFactor3d, shapeFactor2d) => {
          const given = { heatInput, startTemperature, shapeFactor3d, shapeFactor2d };
          const { transitionThickness } = coolingTime.compute({ ...given, thickness: 10 });
          const below = coolingTime.compute({
            ...given,
            thickness: transitionThickness * (1 - 1e-9),
          });
          const above = coolingTime.compute({
            ...given,
            thickness: transitionThickness * (1 + 1e-9),
          });
          expect(below.regime).toBe('thin plate');
          expect(above.regime).toBe('thick plate');
          expect(below.time / above.time).toBeCloseTo(1, 7);
        },
      ),
    );
  });

  // Plate handbook, formulas 3.1 and 3.2 (the same in EN 1011-2 annex D), worked by hand in full.
  it.each([
    // 6600·(1/480 − 1/780) = 5.28846; 4214·10⁵·(1/480² − 1/780²) = 1136.357; √(1136.357/5.28846) = 14.659
    [1, 20, 5.28846, 1136.357, 14.659],
    // 5950·2·(1/350 − 1/650) = 15.6923; 3655·10⁵·4·(1/350² − 1/650²) = 8474.34; root of the ratio 23.239
    [2, 150, 15.6923, 8474.34, 23.239],
  ])(
    'cools %d kJ/mm from %d °C as worked by hand',
    (heatInput, startTemperature, thick, thin, turns) => {
      const at = (thickness: number) =>
        coolingTime.compute({ heatInput, startTemperature, thickness, ...plain });
      expect(at(turns + 0.01)).toMatchObject({
        regime: 'thick plate',
        time: expect.closeTo(thick, 3),
      });
      for (const thickness of [2, 10, turns - 0.01]) {
        expect(at(thickness).regime).toBe('thin plate');
        expect((at(thickness).time * thickness ** 2) / thin).toBeCloseTo(1, 5);
      }
      expect(at(10).transitionThickness).toBeCloseTo(turns, 3);
      expect(at(400).because[0]?.text).toMatch(/^Thick plate: .*6700 − 5·T₀/);
      expect(at(2).because[0]?.text).toMatch(/^Thin plate: .*4300 − 4\.3·T₀/);
    },
  );

  // EN 1011-2, annex D (from memory): F2 and F3 are factors of the time; a fillet in a tee has both
  // below 1.
  it('takes as much longer as the shape factor of its regime says, whatever the other', () => {
    const time = (thickness: number, shapeFactor3d: number, shapeFactor2d: number) =>
      coolingTime.compute({
        heatInput: 1,
        startTemperature: 20,
        thickness,
        shapeFactor3d,
        shapeFactor2d,
      }).time;
    expect(time(3, 1, 0.9) / time(3, 1, 1)).toBeCloseTo(0.9, 12);
    expect(time(60, 0.67, 1) / time(60, 1, 1)).toBeCloseTo(0.67, 12);
    expect(time(60, 1, 0.9)).toBe(time(60, 1, 1));
  });

  it('is the longer of the two times: a thin plate cannot cool faster than a thick one', () => {
    fc.assert(
      fc.property(
        heatInput,
        startTemperature,
        fc.double({ min: 2, max: 400, noNaN: true }),
        (heatInput, startTemperature, thickness) => {
          const given = { heatInput, startTemperature, ...plain };
          const thick = coolingTime.compute({ ...given, thickness: 1e6 }).time;
          const thin =
            coolingTime.compute({ ...given, thickness: 1e-3 }).time * (1e-3 / thickness) ** 2;
          const { time } = coolingTime.compute({ ...given, thickness });
          expect(time / Math.max(thick, thin)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('never falls with more heat or a warmer start', () => {
    fc.assert(
      fc.property(
        heatInput,
        startTemperature,
        fc.double({ min: 2, max: 400, noNaN: true }),
        (heatInput, startTemperature, thickness) => {
          const at = (Q: number, T: number) =>
            coolingTime.compute({ heatInput: Q, startTemperature: T, thickness, ...plain }).time;
          const time = at(heatInput, startTemperature);
          expect(at(heatInput * 1.1, startTemperature)).toBeGreaterThan(time);
          expect(at(heatInput, startTemperature + 5)).toBeGreaterThan(time);
        },
      ),
    );
  });
});
