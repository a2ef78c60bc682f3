import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import filletMinimum from '../../../lib/calculations/fillet-minimum.ts';
import { filletCodes } from '../../../lib/tables/fillet-minimum.ts';

function found(given: Record<string, string>) {
  const answered = answer(filletMinimum, given);
  if (!answered.ok) throw new Error(answered.problems.map(({ text }) => text).join('; '));
  return answered as typeof answered & {
    results: Record<'minimumLeg' | 'maximumLegAtEdge', { us: number; metric: number }>;
  };
}
const legOf = (given: Record<string, string>) => found(given).results.minimumLeg;

describe('fillet-minimum', () => {
  it('takes AISC and low-hydrogen where nothing is said', () => {
    const spoken = found({ thinner: '3/8', thicker: '1' }).given;
    expect(spoken.code).toMatchObject({ text: 'AISC 360' });
    expect(spoken.electrodeKind).toMatchObject({ text: 'low-hydrogen' });
  });

  it('prints both figures of one row and converts neither', () => {
    expect(legOf({ thinner: '3/8', thicker: '1' })).toEqual({ us: 3 / 16, metric: 5 });
    expect(legOf({ thinner: '10 mm', thicker: '25 mm' })).toEqual({ us: 3 / 16, metric: 5 });
  });

  it.each([
    ['1/8 in', { us: 1 / 8, metric: 3 }],
    ['3/8 in', { us: 3 / 16, metric: 5 }],
    ['5/8 in', { us: 1 / 4, metric: 6 }],
    ['2 in', { us: 5 / 16, metric: 8 }],
  ])('holds the printed pair for %s, to the last digit', (thinner, pair) => {
    for (const code of filletCodes) expect(legOf({ code, thinner, thicker: '3 in' })).toEqual(pair);
  });

  // AISC 360 Table J2.4 (read) and AWS D1.1 Table 7.7 (from memory): up to 1/4, 1/2, 3/4 in and over;
  // in millimeters 6, 13, 19 by AISC and 6, 12, 20 by AWS. Legs 1/8, 3/16, 1/4, 5/16 in; 3, 5, 6, 8 mm.
  it.each([
    ['AISC 360', 'in', [0.25, 0.5, 0.75]],
    ['AISC 360', 'mm', [6, 13, 19]],
    ['AWS D1.1', 'in', [0.25, 0.5, 0.75]],
    ['AWS D1.1', 'mm', [6, 12, 20]],
  ] as const)(
    '%s, in %s: each row reaches up to and including its thickness',
    (code, unit, ends) => {
      const legs = [
        { us: 1 / 8, metric: 3 },
        { us: 3 / 16, metric: 5 },
        { us: 1 / 4, metric: 6 },
        { us: 5 / 16, metric: 8 },
      ];
      for (const [row, end] of ends.entries()) {
        const thinner = (size: number) => ({ code, thinner: `${size} ${unit}`, thicker: '3 in' });
        expect(legOf(thinner(end))).toEqual(legs[row]);
        expect(legOf(thinner(end + 0.001))).toEqual(legs[row + 1]);
        // Where the thicker part rules, the thinner one only caps the leg.
        const ruled = { code: 'AWS D1.1', electrodeKind: 'not low-hydrogen', thinner: `1/2 in` };
        if (code === 'AWS D1.1' && row > 1) {
          expect(legOf({ ...ruled, thicker: `${end} ${unit}` })).toEqual(legs[row]);
          expect(legOf({ ...ruled, thicker: `${end + 0.001} ${unit}` })).toEqual(legs[row + 1]);
        }
      }
    },
  );

  it('names the row used and its neighbors by both printed thicknesses', () => {
    const said = (code: string, thinner: string) =>
      found({ code, thinner, thicker: '2 in' })
        .because.filter(({ kind }) => kind === 'row' || kind === 'passed')
        .map(({ text }) => text.replace(/; each row.*/, ''));
    expect(said('AISC 360', '3/8')).toEqual([
      'Used: over {1/4 in|6 mm} up to {1/2 in|13 mm}, leg {3/16 in|5 mm}.',
      'Not used: up to {1/4 in|6 mm}',
      'Not used: over {1/2 in|13 mm} up to {3/4 in|19 mm}',
    ]);
    expect(said('AWS D1.1', '1')).toEqual([
      'Used: over {3/4 in|20 mm}, leg {5/16 in|8 mm}.',
      'Not used: over {1/2 in|12 mm} up to {3/4 in|20 mm}',
    ]);
  });

  // AISC 360 J2.2b (read): under 1/4 in (6 mm) up to the edge, else 1/16 in (2 mm) back from it.
  it.each([
    ['0.249 in', { us: 0.249, metric: 0.249 * 25.4 }],
    ['1/4 in', { us: 3 / 16, metric: 6.35 - 2 }],
    ['5.9 mm', { us: 5.9 / 25.4, metric: 5.9 }],
    ['6 mm', { us: 6 / 25.4 - 1 / 16, metric: 4 }],
  ])('allows along an edge of %s in a lap what the code says in both systems', (thinner, leg) => {
    const { us, metric } = found({ thinner, thicker: '1 in' }).results.maximumLegAtEdge;
    expect(us).toBeCloseTo(leg.us, 9);
    expect(metric).toBeCloseTo(leg.metric, 9);
  });

  it('steps back from an edge by exactly what is printed', () => {
    expect(found({ thinner: '10 mm', thicker: '10 mm' }).results.maximumLegAtEdge.metric).toBe(8);
    expect(found({ thinner: '1/2', thicker: '1/2' }).results.maximumLegAtEdge.us).toBe(7 / 16);
  });

  it('looks a part up in the rows of the unit it was typed in', () => {
    expect(legOf({ thinner: '1/4 in', thicker: '1 in' }).us).toBe(1 / 8);
    expect(legOf({ thinner: '6.35 mm', thicker: '1 in' }).us).toBe(3 / 16);
  });

  it('compares parts typed in two systems', () => {
    expect(answer(filletMinimum, { thinner: '10 mm', thicker: '3/8 in' }).ok).toBe(false);
    expect(answer(filletMinimum, { thinner: '9.525 mm', thicker: '3/8 in' }).ok).toBe(true);
    expect(answer(filletMinimum, { thinner: '3/8 in', thicker: '9.525 mm' }).ok).toBe(true);
  });

  it('clips to the thinner part in both units, and says so', () => {
    const clipped = found({
      code: 'AWS D1.1',
      electrodeKind: 'not low-hydrogen',
      thinner: '3/16 in',
      thicker: '2 in',
    });
    expect(clipped.results.minimumLeg.us).toBe(3 / 16);
    expect(clipped.results.minimumLeg.metric).toBeCloseTo(4.7625, 10);
    const texts = (given: Record<string, string>) => found(given).because.map(({ text }) => text);
    expect(clipped.because.map(({ text }) => text).join()).toContain('need not be larger');
    expect(texts({ thinner: '1/4', thicker: '2' }).join()).not.toContain('need not be larger');
  });

  it('never asks for more than the thinner part, nor for less on thicker metal', () => {
    const thickness = fc.double({ min: 0.04, max: 4, noNaN: true });
    const kinds = fc.constantFrom('low-hydrogen', 'not low-hydrogen');
    fc.assert(
      fc.property(
        fc.constantFrom(...filletCodes),
        kinds,
        thickness,
        thickness,
        (code, electrodeKind, one, other) => {
          const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
          const sized = (thinner: number, thicker: number) =>
            legOf({ code, electrodeKind, thinner: `${thinner}`, thicker: `${thicker}` }).us;
          expect(sized(thin, thick)).toBeLessThanOrEqual(thin);
          expect(sized(thick, thick)).toBeGreaterThanOrEqual(sized(thin, thick));
        },
      ),
    );
  });

  it('shows the row used and both neighbors, or the one there is', () => {
    const kinds = (thinner: string) =>
      found({ thinner, thicker: '4' }).because.flatMap(({ kind }) =>
        kind === 'row' || kind === 'passed' ? [kind] : [],
      );
    expect(kinds('3/16')).toEqual(['row', 'passed']);
    expect(kinds('3/8')).toEqual(['row', 'passed', 'passed']);
    expect(kinds('1')).toEqual(['row', 'passed']);
  });

  it('names the rule of the edge by its thickness', () => {
    const said = (thinner: string) =>
      found({ thinner, thicker: '4' })
        .because.map(({ text }) => text)
        .join();
    expect(said('0.249')).toContain('may reach the edge');
    expect(said('1/4')).toContain('stops');
    expect(said('5.9 mm')).toContain('may reach the edge');
    expect(said('6 mm')).toContain('stops');
  });

  it('asks for a single pass by AWS only where the electrode is not low-hydrogen', () => {
    const said = (electrodeKind: string) =>
      found({ code: 'AWS D1.1', electrodeKind, thinner: '3/8', thicker: '1' })
        .because.map(({ text }) => text)
        .join();
    expect(said('not low-hydrogen')).toContain('single pass');
    expect(said('low-hydrogen')).not.toContain('single pass');
  });
});
