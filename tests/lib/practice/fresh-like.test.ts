/** The same problem with other numbers: near the example, on a shop's steps, and it can be solved. */
import { describe, expect, it } from 'vitest';
import type { Typed } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { freshLike } from '../../../lib/practice/fresh-like.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';
import type { System, Unit } from '../../../lib/units.ts';

async function many(id: string, given: Typed, wanted: string[], system: System = 'us') {
  const calculation = await loadCalculation(id);
  return Array.from({ length: 60 }, (_, seed) => {
    const fresh = freshLike(calculation, given, wanted, seed, system);
    if (!fresh) throw new Error(`none for ${id}`);
    return fresh;
  });
}
const number = (text: unknown, unit: Unit): number => {
  const reading = readQuantity(String(text), unit);
  return 'value' in reading && reading.unit === unit ? reading.value : Number.NaN;
};
const off = (value: number, step: number) => Math.abs(value / step - Math.round(value / step));

describe('freshLike', () => {
  const heat = { voltage: '22 V', current: '125 A', travelSpeed: '6 in/min' };

  it('keeps near the example and on the steps that a shop can set', async () => {
    for (const { typed } of await many('heat-input', heat, ['arcEnergy'])) {
      const [volts, amps, speed] = [
        number(typed.voltage, 'V'),
        number(typed.current, 'A'),
        number(typed.travelSpeed, 'in/min'),
      ];
      for (const [value, example, step] of [
        [volts, 22, 0.5],
        [amps, 125, 5],
        [speed, 6, 0.5],
      ] as const) {
        expect(value / example).toBeGreaterThan(0.73);
        expect(value / example).toBeLessThan(1.38);
        expect(off(value, step)).toBeLessThan(1e-9);
      }
    }
  });

  it('uses the whole of that range', async () => {
    const amps = (await many('heat-input', heat, ['arcEnergy'])).map(({ typed }) =>
      number(typed.current, 'A'),
    );
    expect(Math.min(...amps)).toBeLessThanOrEqual(100);
    expect(Math.max(...amps)).toBeGreaterThanOrEqual(160);
  });

  it('gives what is typed and what comes out of it', async () => {
    for (const { typed, found } of await many('heat-input', heat, ['arcEnergy'])) {
      const [volts, amps, speed] = [
        number(typed.voltage, 'V'),
        number(typed.current, 'A'),
        number(typed.travelSpeed, 'in/min'),
      ];
      expect(found.results.arcEnergy).toBeCloseTo((60 * volts * amps) / (1000 * speed), 9);
    }
  });

  it('is the same for the same seed, and never the example itself', async () => {
    const calculation = await loadCalculation('heat-input');
    const fresh = (seed: number) => freshLike(calculation, heat, ['arcEnergy'], seed, 'us')?.typed;
    expect(fresh(7)).toEqual(fresh(7));
    expect(
      new Set(Array.from({ length: 60 }, (_, seed) => JSON.stringify(fresh(seed)))).size,
    ).toBeGreaterThan(40);
    for (let seed = 0; seed < 60; seed++) expect(fresh(seed)).not.toEqual(heat);
  });

  it('shows a metric reader whole metric sizes', async () => {
    const fresh = await many(
      'travel-speed',
      { beadLength: '6 in', arcTime: '60 s' },
      ['travelSpeed'],
      'metric',
    );
    for (const { typed } of fresh) {
      // 6 in is 152 mm, where a shop's steps are of 5 mm.
      expect(off(number(typed.beadLength, 'mm'), 5)).toBeLessThan(1e-9);
      expect(off(number(typed.arcTime, 's'), 5)).toBeLessThan(1e-9);
    }
  });

  it.each([
    ['3/16 in', 1 / 32],
    ['3/8 in', 1 / 16],
  ])('keeps a leg near %s on the rule that fits its size', async (leg, step) => {
    for (const { typed } of await many('fillet-throat', { legA: leg, legB: leg }, ['throat']))
      expect(off(number(typed.legA, 'in'), step)).toBeLessThan(1e-9);
  });

  it('leaves choices, angles, core wires and what a source fixes as they are', async () => {
    const given = {
      diameter: '1/8 in',
      electrodeLength: '14 in',
      stub: '2 in',
      runOut: '8 in',
      recovery: '1',
    };
    for (const { typed } of await many('bead-from-electrode', given, ['area']))
      expect(typed.diameter).toBe('1/8 in');
    for (const { typed } of await many(
      'groove-area',
      { groove: 'V', thickness: '3/8 in', rootOpening: '1/8 in', includedAngle: '60 deg' },
      ['area'],
    ))
      expect(typed).toMatchObject({ groove: 'V', includedAngle: '60 deg' });
  });

  it('shows a core wire to a metric reader in millimeters', async () => {
    const given = { diameter: '1/8 in', electrodeLength: '14 in', stub: '2 in', runOut: '8 in' };
    for (const { typed } of await many('bead-from-electrode', given, ['area'], 'metric'))
      expect(typed.diameter).toBe('3.2 mm');
  });

  it('puts the clock on its half hours', async () => {
    const given = { pipeInclination: '45 deg', clockAngle: '90 deg' };
    const angles = (await many('pipe-position', given, ['position'])).map(({ typed }) =>
      number(typed.clockAngle, 'deg'),
    );
    for (const angle of angles) expect(angle % 15).toBe(0);
    expect(new Set(angles).size).toBeGreaterThan(12);
  });

  it('counts in whole numbers, one at least', async () => {
    const given = { jointLength: '36 in', runOut: '8 in', passes: '1' };
    for (const { typed } of await many('joint-restarts', given, ['electrodes'])) {
      expect(Number.isInteger(Number(typed.passes))).toBe(true);
      expect(Number(typed.passes)).toBeGreaterThanOrEqual(1);
    }
  });

  it('moves printed sizes and counts too, a count in whole ones', async () => {
    const room = {
      welders: '3',
      roomVolume: '54000 ft3',
      ceilingHeight: '15 ft',
      crossFlow: 'free',
    };
    for (const { typed } of await many('ventilation-check', room, ['generalFlow'])) {
      const welders = Number(typed.welders);
      expect(Number.isInteger(welders)).toBe(true);
      expect(welders).toBeGreaterThanOrEqual(1);
      expect(welders).toBeLessThanOrEqual(4);
      expect(number(typed.roomVolume, 'ft3')).toBeGreaterThan(54000 * 0.7);
    }
    // No step of a shop for a unit: one in its second figure.
    const slope = {
      shortArcVoltage: '22 V',
      shortArcCurrent: '127 A',
      longArcVoltage: '30 V',
      longArcCurrent: '108 A',
    };
    for (const { typed } of await many('source-slope', slope, ['slope']))
      expect(off(number(typed.longArcVoltage, 'V'), 0.5)).toBeLessThan(1e-9);
  });

  it('has nothing to offer where nothing can be moved or nothing is wanted that comes out', async () => {
    const position = await loadCalculation('groove-position');
    const flat = { axisInclination: '0 deg', faceRotation: '180 deg', weld: 'groove' };
    expect(freshLike(position, flat, ['position'], 1, 'us')).toBeUndefined();
    const calculation = await loadCalculation('heat-input');
    expect(freshLike(calculation, heat, ['nothing'], 1, 'us')).toBeUndefined();
    expect(freshLike(calculation, { voltage: '22 V' }, ['arcEnergy'], 1, 'us')).toBeUndefined();
    expect(
      freshLike(calculation, { ...heat, current: 'hot' }, ['arcEnergy'], 1, 'us'),
    ).toBeUndefined();
  });
});
