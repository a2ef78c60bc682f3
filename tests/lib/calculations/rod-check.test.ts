/** Length laid against length burned: the shares are common practice, no source; the rest is arithmetic. */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import rodCheck from '../../../lib/calculations/rod-check.ts';

function check(typed: Typed) {
  const found = answer(rodCheck, { coreDiameter: '1/8 in', consumedLength: '10 in', ...typed });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.results as Record<string, number | string | undefined>;
}

describe('rod-check', () => {
  it.each([
    ['stringer bead', '4.49 in', 'too slow'],
    ['stringer bead', '4.5 in', 'about right'],
    ['stringer bead', '8 in', 'about right'],
    ['stringer bead', '8.01 in', 'too fast'],
    ['weave or one-pass fillet', '1.99 in', 'too slow'],
    ['weave or one-pass fillet', '2 in', 'about right'],
    ['weave or one-pass fillet', '5 in', 'about right'],
    ['weave or one-pass fillet', '5.01 in', 'too fast'],
  ])('calls a %s of %s from ten inches burned %s', (bead, beadLength, verdict) => {
    expect(check({ bead, beadLength }).verdict).toBe(`${verdict} for this size`);
  });

  it('says how short and how long the bead may be, in the length burned', () => {
    const { shortest, longest, runOutRatio } = check({ beadLength: '5 in' });
    expect(Number(shortest) / 25.4).toBeCloseTo(4.5, 9);
    expect(Number(longest) / 25.4).toBeCloseTo(8, 9);
    expect(runOutRatio).toBeCloseTo(0.5, 12);
  });

  it('gives speeds for a minute, and none when the arc was not timed', () => {
    // 6 in of bead and 10 in of core in half a minute.
    const timed = check({ beadLength: '6 in', arcTime: '30 s' });
    expect(Number(timed.travelSpeed) / 25.4).toBeCloseTo(12, 9);
    expect(Number(timed.meltRate) / 25.4).toBeCloseTo(20, 9);
    expect(check({ beadLength: '6 in' })).toMatchObject({
      travelSpeed: undefined,
      meltRate: undefined,
    });
  });

  it('gives the arc’s energy as heat over the arc efficiency of 0.8 (ISO/TR 17671-1)', () => {
    const { heatInput, arcEnergy } = check({ beadLength: '6 in' });
    expect(Number(arcEnergy) * 0.8).toBeCloseTo(Number(heatInput), 12);
    // factor · d² · burned ÷ bead: 0.0472 × 3.175² × 10 ÷ 6 = 0.793 kJ/mm
    expect(heatInput).toBeCloseTo(0.793, 3);
  });
});
