/** One electrode, followed by mass through every calculation that uses it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import beadFromElectrode from '../../../lib/calculations/bead-from-electrode.ts';
import electrodeUse from '../../../lib/calculations/electrode-use.ts';
import legFromRod from '../../../lib/calculations/leg-from-rod.ts';
import runOutForLeg from '../../../lib/calculations/run-out-for-leg.ts';

const electrode = fc.record({
  diameter: fc.double({ min: 0.08, max: 0.25, noNaN: true }),
  electrodeLength: fc.double({ min: 9, max: 18, noNaN: true }),
  stub: fc.double({ min: 0, max: 6, noNaN: true }),
  coatingFraction: fc.double({ min: 0, max: 0.5, noNaN: true }),
  recovery: fc.double({ min: 0.3, max: 1, noNaN: true }),
});
const density = 0.2836;
const runOut = fc.double({ min: 2, max: 20, noNaN: true });
const fillet = {
  passes: fc.integer({ min: 1, max: 9 }),
  bulgeShare: fc.double({ min: 0, max: 50, noNaN: true }),
};

describe('weld metal from electrodes', () => {
  it('is what the mass balance leaves: whole electrode, less stub, less what does not stay', () => {
    fc.assert(
      fc.property(electrode, runOut, (one, length) => {
        const core = density * Math.PI * (one.diameter / 2) ** 2 * one.electrodeLength;
        const whole = core + (core * one.coatingFraction) / (1 - one.coatingFraction);
        const melted = whole - whole * (one.stub / one.electrodeLength);
        const stays = melted * one.recovery;
        const bead = beadFromElectrode.compute({ ...one, density, runOut: length });
        expect(bead.depositPerElectrode).toBeCloseTo(stays, 10);
        expect(bead.area * length * density).toBeCloseTo(stays, 10);
        expect((bead.filletLeg * bead.filletLeg) / 2).toBeCloseTo(bead.area, 10);
        const used = electrodeUse.compute({ ...one, density, mass: 1 });
        expect(used.electrodeMass).toBeCloseTo(whole, 10);
        expect(used.depositPerElectrode).toBeCloseTo(stays, 10);
        expect(used.efficiency).toBeCloseTo(stays / whole, 10);
      }),
    );
  });

  it('does not change its section with its density', () => {
    fc.assert(
      fc.property(electrode, runOut, (one, length) => {
        const light = beadFromElectrode.compute({ ...one, density: 0.1, runOut: length });
        const heavy = beadFromElectrode.compute({ ...one, density: 0.3, runOut: length });
        expect(light.area).toBeCloseTo(heavy.area, 10);
      }),
    );
  });

  it('makes the leg that its run-out was chosen for', () => {
    fc.assert(
      fc.property(
        electrode,
        runOut,
        fillet.passes,
        fillet.bulgeShare,
        (one, length, passes, bulgeShare) => {
          const { leg, passArea } = legFromRod.compute({
            ...one,
            runOut: length,
            passes,
            bulgeShare,
          });
          const back = runOutForLeg.compute({ ...one, leg, passes, bulgeShare });
          expect(back.runOut).toBeCloseTo(length, 8);
          expect(back.area).toBeCloseTo(passes * passArea, 10);
        },
      ),
    );
  });

  it('brings enough whole electrodes, and not one more', () => {
    fc.assert(
      fc.property(electrode, fc.double({ min: 0.01, max: 50, noNaN: true }), (one, mass) => {
        const used = electrodeUse.compute({ ...one, density, mass });
        expect(used.electrodes * used.depositPerElectrode).toBeGreaterThanOrEqual(
          mass * (1 - 1e-9),
        );
        expect((used.electrodes - 1) * used.depositPerElectrode).toBeLessThan(mass);
        expect(used.purchaseMass * used.efficiency).toBeCloseTo(mass, 9);
        expect(used.purchaseMass).toBeLessThanOrEqual(
          used.electrodes * used.electrodeMass * (1 + 1e-9),
        );
        expect(used.electrodesPerKilogram * used.electrodeMass * 0.45359237).toBeCloseTo(1, 10);
      }),
    );
  });

  it('is refused where the stub is the whole electrode', () => {
    const burned = {
      diameter: 0.125,
      electrodeLength: 14,
      stub: 14,
      coatingFraction: 0.3,
      recovery: 0.7,
    };
    const build = { passes: 1, bulgeShare: 10 };
    expect(() => legFromRod.compute({ ...burned, ...build, runOut: 7 })).toThrow('stub');
    expect(() => runOutForLeg.compute({ ...burned, ...build, leg: 0.25 })).toThrow('stub');
    expect(() => electrodeUse.compute({ ...burned, density, mass: 1 })).toThrow('stub');
    expect(() => beadFromElectrode.compute({ ...burned, density, runOut: 7 })).toThrow('stub');
  });

  it('warns of a run-out that no hand keeps', () => {
    const said = (runOutFound: number) =>
      runOutForLeg
        .notes?.({} as never, { area: 1, runOut: runOutFound })
        .map(({ text }) => text)
        .join();
    expect(said(2.9)).toContain('larger electrode');
    expect(said(3)).toBe('');
    expect(said(16)).toBe('');
    expect(said(16.1)).toContain('smaller electrode');
  });
});
