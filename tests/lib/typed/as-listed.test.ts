/** Requests as a program or a letter writes them, against the same in the words of the form. */
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { asListed } from '../../../lib/typed/as-listed.ts';

async function said(id: string, typed: Record<string, unknown>) {
  const calculation = await loadCalculation(id);
  return answer(calculation, asListed(calculation.inputs, typed));
}
async function results(id: string, typed: Record<string, unknown>) {
  const found = await said(id, typed);
  if (!found.ok) throw new Error(found.problems[0]?.text);
  return found.results;
}

describe('a request', () => {
  it('in the words of the form is left as it is', async () => {
    const { inputs } = await loadCalculation('test-range');
    const typed = {
      code: 'ASME IX',
      thickness: '1/2 in',
      deposits: [{ classification: 'E6010', thickness: '1/8 in', backing: 'without backing' }],
    };
    expect(asListed(inputs, typed)).toEqual(typed);
  });

  it('may name steels, kinds and codes otherwise', async () => {
    const listed = { steel: 'A572 Grade 50', electrodeKind: 'low-hydrogen', thickness: '1 in' };
    const other = { steel: 'A572 Gr. 50', electrodeKind: 'E7018', thickness: '1 in' };
    expect(await results('preheat-minimum', other)).toEqual(
      await results('preheat-minimum', listed),
    );
  });

  it('may hold yes and no as truth values, and null for nothing', async () => {
    const typed = { openings: [], weldInBend: true, broke: false };
    expect(await results('bent-specimen', typed)).toMatchObject({ verdictD11: 'passes' });
    const broke = { openings: 'none', broke: true, weldInBend: null };
    expect(await results('bent-specimen', broke)).toMatchObject({ verdictD11: 'fails' });
  });

  it('may hold other words and truth values in its rows', async () => {
    const typed = {
      code: 'Section IX',
      test: '6g',
      form: 'tube',
      thickness: '0.432 in',
      outsideDiameter: '6.625 in',
      deposits: [
        { classification: '6010', thickness: '1/8 in', backing: false },
        { classification: 'E7018 H4R', thickness: '0.307 in', backing: true, layers: null },
      ],
    };
    const { fillers } = await results('test-range', typed);
    expect(fillers).toMatchObject([
      { classification: 'E6010', backing: 'without backing', own: 0.25 },
      { classification: 'E7018', backing: 'with backing', own: 0.614 },
    ]);
  });

  it('may hold what is printed on an electrode in one field', async () => {
    const of = (typed: object) => results('electrode-classification', { ...typed });
    expect(await of({ classification: 'E7018-1 H4R' })).toEqual(
      await of({ classification: 'E7018-1', designator: 'H4R' }),
    );
    expect(await of({ classification: 'E7018 H4R', designator: '' })).toMatchObject({
      hydrogenLimit: 4,
    });
    expect(await of({ classification: 'E7018 H4R', designator: 'H8' })).toMatchObject({
      hydrogenLimit: 8,
    });
    const { inputs } = await loadCalculation('starting-current');
    expect(asListed(inputs, { classification: 'E7018 H4R' })).toEqual({ classification: 'E7018' });
  });

  it('may date its moments, in fields and in rows', async () => {
    const events = [
      { event: 'sealed opened', at: '2026-03-02 22:00' },
      { event: 'in the oven', at: '2026-03-03T01:00', temperature: '250 degF' },
      { event: 'issued', at: '2026-03-03 05:00' },
    ];
    const now = '2026-03-03 07:00';
    expect(
      await results('electrode-exposure', { classification: 'E7018', events, now }),
    ).toMatchObject({ state: 'out, within its time', hoursOut: 2, backBy: '9:00 the next day' });
    const evening = { classification: 'E7018', events: 'opened, 6:15 pm', now: '8:15 pm' };
    expect(await results('electrode-exposure', evening)).toMatchObject({ hoursOut: 2 });
  });

  it('may name a place on a pipe by the hour', async () => {
    const at = (clockAngle: unknown) =>
      results('pipe-position', { pipeInclination: 45, clockAngle });
    expect(await at('4:00')).toEqual(await at('120'));
    expect(await at("4 o'clock")).toEqual(await at(120));
    expect(await at('4')).not.toEqual(await at('4:00'));
  });

  it('may write its days out', async () => {
    const typed = {
      code: 'D1.1',
      process: 'stick',
      qualified: 'March 2, 2026',
      uses: [['SMAW', '15 June 2026']],
      on: '2026/8/15',
    };
    expect(await results('continuity', typed)).toMatchObject({ currentUntil: '2026-12-15' });
  });

  it('is refused by the field as ever, with the words that were typed', async () => {
    const refused = async (id: string, typed: Record<string, unknown>) => {
      const found = await said(id, typed);
      return found.ok ? undefined : found.problems[0];
    };
    const plate = { electrodeKind: 'low-hydrogen', thickness: '1 in' };
    expect(await refused('preheat-minimum', { ...plate, steel: 'A572' })).toMatchObject({
      field: 'steel',
      text: expect.stringContaining('“A572” is not known here'),
    });
    expect(await refused('preheat-minimum', { ...plate, stel: 'A36' })).toMatchObject({
      field: 'stel',
    });
    expect(await refused('preheat-minimum', { ...plate, steel: { a: 1 } })).toMatchObject({
      field: 'steel',
      text: expect.stringContaining('needs one value'),
    });
    expect(await refused('bent-specimen', { openings: 7 })).toMatchObject({ field: 'openings' });
    expect(await refused('bent-specimen', { openings: [null] })).toMatchObject({
      field: 'openings',
    });
    expect(await refused('bent-specimen', { openings: null })).toMatchObject({ field: 'openings' });
    expect(await refused('bent-specimen', { openings: [{ sise: 1 }] })).toMatchObject({
      field: 'openings.1.sise',
    });
    expect(await refused('bent-specimen', { toString: 1 })).toMatchObject({ field: 'toString' });
  });
});
