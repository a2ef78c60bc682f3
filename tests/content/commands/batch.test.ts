/** The command line's `--batch`: what comes in as JSON, what goes out, and at which place. */
import { describe, expect, it } from 'vitest';
import { batchReply } from '../../../content/commands/batch.ts';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';

const ids = calculationIds();
interface Reply {
  outputs?: { voltage: { value: number } };
  error?: { field: string };
}
async function replies(requests: unknown) {
  const { text, failed } = await batchReply(JSON.stringify(requests), ids);
  return { failed, replies: JSON.parse(text) };
}
const one = async (request: unknown) => (await replies([request])).replies[0];

const heat = {
  id: 'heat-input',
  inputs: { voltage: '20 V', current: '300 A', travelSpeed: '150 mm/min' },
};
const guess = {
  id: 'voltage-estimate',
  inputs: { classification: 'E7018', coreDiameter: '3.2 mm' },
};
/** A pad of a single bead has no spacing. */
const oneBead = {
  id: 'padding-plan',
  inputs: { width: 1, height: 0.1, overlap: 50, plateWidth: 1, plateLength: 8, runOut: 7 },
};
const volts = (current: unknown) => ({ id: 'load-voltage', inputs: { current } });

describe('a batch', () => {
  it('answers in the units asked for, at full precision', async () => {
    const { outputs } = await one({ ...heat, in: { arcEnergy: 'kJ/mm' } });
    expect(outputs.arcEnergy.unit).toBe('kJ/mm');
    expect(outputs.arcEnergy.value).toBeCloseTo(2.4, 12);
    expect(outputs.heatInput.unit).toBe('kJ/in');
    expect(outputs.heatInput.value).toBeCloseTo(1.92 * 25.4, 10);
  });

  it('takes an empty wish for units as none', async () => {
    expect(await one({ ...heat, in: null })).toEqual(await one(heat));
  });

  it('takes JSON numbers as it takes text', async () => {
    expect(await one(volts(250))).toEqual(await one(volts('250 A')));
  });

  it('keeps the place of a request that fails, and computes the rest', async () => {
    const { failed, replies: all } = await replies([volts(100), { id: 'nope' }, volts(200)]);
    expect(failed).toBe(true);
    expect(all.map((reply: Reply) => reply.outputs?.voltage.value ?? reply.error?.field)).toEqual([
      24,
      'id',
      28,
    ]);
  });

  it('answers an empty array with one, and without failing', async () => {
    expect(await replies([])).toEqual({ failed: false, replies: [] });
  });

  it.each(['', '{}', 'null', '[', '"text"'])('says of %j that an array is needed', async (json) => {
    const { text, failed } = await batchReply(json, ids);
    expect(failed).toBe(true);
    expect(JSON.parse(text)).toEqual([
      { id: null, error: { field: '', text: 'Standard input needs a JSON array of requests' } },
    ]);
  });

  it('reads a file that begins with a byte order mark', async () => {
    const { failed } = await batchReply(`\ufeff${JSON.stringify([heat])}`, ids);
    expect(failed).toBe(false);
  });

  it.each<[unknown, string, RegExp]>([
    [null, 'id', /^a request needs an object with an id$/],
    [[], 'id', /^a request needs an object with an id$/],
    [{ inputs: {} }, 'id', /^a request needs an object with an id$/],
    [{ id: 7 }, 'id', /no calculation “7”/],
    [{ id: '__proto__' }, 'id', /no calculation “__proto__”/],
    [{ id: 'load-voltage', inputs: [] }, 'inputs', /needs an object/],
    [{ id: 'load-voltage', inputs: null }, 'inputs', /needs an object/],
    [{ ...volts(100), in: [] }, 'in', /needs an object/],
    [{ id: 'load-voltage' }, 'current', /is missing$/],
    [volts(null), 'current', /is missing$/],
    [volts(''), 'current', /is missing$/],
    [volts(['100']), 'current', /needs one value$/],
    [volts('1/0'), 'current', /is no fraction$/],
    [volts('∞'), 'current', /needs a number/],
    [volts('5 V'), 'current', /does not fit$/],
    [volts(-5), 'current', /must be at least/],
    [volts(1e300), 'current', /must be at most/],
    [{ id: 'load-voltage', inputs: { current: 1, curent: 2 } }, 'curent', /is not an input here/],
    [{ ...volts(100), in: { volts: 'V' } }, 'in.volts', /is not an output; there are voltage$/],
    [
      { ...volts(100), in: { voltage: 'mm' } },
      'in.voltage',
      /in units of voltage, which mm is not$/,
    ],
    [{ ...volts(100), in: { __proto__: 'V', toString: 'V' } }, 'in.toString', /is not an output/],
    [{ ...guess, in: { way: 'V' } }, 'in.way', /^way is no quantity, so it has no unit$/],
    [
      { ...oneBead, in: { pitch: 'V' } },
      'in.pitch',
      /^pitch is in units of length, which V is not$/,
    ],
    [{ ...volts(100), in: { voltage: 'toString' } }, 'in.voltage', /has no unit “toString”$/],
    [{ ...volts(100), in: { voltage: 5 } }, 'in.voltage', /has no unit “5”$/],
  ])('refuses %j by %s', async (request, field, text) => {
    const { error } = await one(request);
    expect(error.field).toBe(field);
    expect(error.text).toMatch(text);
  });

  it('refuses in the units that were typed, or that the size is declared in', async () => {
    const refused = async (id: string, inputs: object) => (await one({ id, inputs })).error.text;
    expect(await refused('deposit', { area: '90 mm2', length: '0 mm' })).toContain('0.3\u00a0mm');
    expect(await refused('deposit', { area: '0.2', length: '0' })).toContain('0.01\u00a0in');
    const rod = { coreDiameter: '0.1', consumedLength: '300', heatInput: '1' };
    expect(await refused('run-out-length', rod)).toContain('1\u00a0mm');
  });

  it('prints a table’s figure in the system of the size it was looked up by', async () => {
    const limit = async (leg: string, diameter: string) =>
      (await one({ id: 'fillet-passes', inputs: { leg, diameter } })).outputs.singlePassLimit;
    expect(await limit('5/16 in', '3.2 mm')).toEqual({ value: 0.3125, unit: 'in' });
    expect(await limit('8 mm', '1/8 in')).toEqual({ value: 8, unit: 'mm' });
  });
});
