/** A formula as one line of print: its symbols, what they stand for, and the reader's numbers. */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import type { Formula } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { legend, numbersText, ruleText } from '../../../lib/practice/rule-text.ts';
import type { System } from '../../../lib/units.ts';

const formula = async (id: string) => (await loadCalculation(id)) as Formula;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
async function numbers(id: string, typed: Typed, want: string, system: System = 'us') {
  const it = await formula(id);
  const found = answer(it, typed);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return plain(numbersText(it, found, want, system));
}

describe('ruleText', () => {
  it.each([
    ['heat-input', 'arcEnergy', 'E = 60 · U · I / (1000 · v)'],
    ['heat-input', 'heatInput', 'Q = η · E'],
    ['duty-current', 'current', 'I = Ir · √(Xr / X)'],
    ['fillet-leg', 'leg', 'b = t / cos(ψ / 2)'],
    ['fillet-leg', 'area', 'A = t² · tan(ψ / 2)'],
    ['bead-from-electrode', 'depositPerElectrode', 'md = r · ρ · π / 4 · d² · (Le − s) / (1 − c)'],
    ['bead-overlap', 'pitch', 'd = w · (1 − p / 100)'],
    [
      'fillet-throat',
      'throat',
      't = a  (if a < b · cos(ψ)),  else b  (if b < a · cos(ψ)),  else a · b · sin(ψ) / W',
    ],
    [
      'fillet-strength',
      'effectiveLength',
      'le = l  (if l ≤ 100 · w),  else (1.2 − 0.002 · l / w) · l  (if l ≤ 300 · w),  else 180 · w',
    ],
    [
      'groove-area',
      'area',
      'A = g · T + (T − f)² · tan(α / 2)  (if groove is “V”),  else g · T + (T − f)² · tan(α) / 2',
    ],
  ])('writes %s, %s, as in print', async (id, want, text) => {
    expect(ruleText(await formula(id), want)).toBe(text);
  });

  it('leaves no name of a program in any rule, and explains every sign', async () => {
    for (const id of [
      'heat-input',
      'fillet-throat',
      'bead-overlap',
      'preheat-cet',
      'run-out-heat',
    ]) {
      const it = await formula(id);
      for (const want of Object.keys(it.outputs)) {
        expect(ruleText(it, want)).not.toMatch(/[a-z]{2}[A-Z]/);
        for (const line of legend(it, want)) expect(line).toMatch(/^\S{1,6}: \S/);
      }
    }
  });
});

describe('legend', () => {
  it('names the signs of this rule and no other', async () => {
    expect(legend(await formula('heat-input'), 'arcEnergy')).toEqual([
      expect.stringMatching(/^U: .*voltage/i),
      expect.stringMatching(/^I: .*current/i),
      expect.stringMatching(/^v: .*speed/i),
    ]);
    // The second rule uses the first one's answer.
    expect(legend(await formula('heat-input'), 'heatInput').map((line) => line.charAt(0))).toEqual([
      'η',
      'E',
    ]);
  });

  it('calls a constant by its name', async () => {
    const it = await formula('fillet-weight');
    const named = Object.values(it.constants ?? {}).map(({ name }) => name);
    const all = Object.keys(it.outputs).flatMap((want) => legend(it, want));
    for (const name of named) expect(all.some((line) => line.endsWith(`: ${name}`))).toBe(true);
  });
});

describe('numbersText', () => {
  const typed = { voltage: '22 V', current: '125 A', travelSpeed: '6 in/min' };

  it('puts the reader’s numbers in, with units, and leaves the answer out', async () => {
    expect(await numbers('heat-input', typed, 'arcEnergy')).toBe(
      '60 · 22 V · 125 A / (1000 · 6 in/min)',
    );
  });

  it('takes metric units where the formula holds in them', async () => {
    expect(await numbers('heat-input', typed, 'arcEnergy', 'metric')).toBe(
      '60 · 22 V · 125 A / (1000 · 152.4 mm/min)',
    );
  });

  it('brackets a value that is raised to a power', async () => {
    expect(
      await numbers(
        'duty-cycle',
        {
          ratedCurrent: '200 A',
          ratedDutyCycle: '60 %',
          current: '250 A',
          maximumCurrent: '300 A',
        },
        'dutyCycle',
      ),
    ).toMatch(/\(200 A \/ 250 A\)²/);
    const bead = { width: '1/2 in', height: '1/8 in', overlap: '50 %' };
    expect(await numbers('bead-overlap', bead, 'valleyDepth')).toMatch(/\(0\.25 in \/ 0\.5 in\)²/);
    const rod = { coreDiameter: '1/8 in', consumedLength: '12 in', runOut: '8 in' };
    expect(await numbers('run-out-heat', rod, 'heatInput')).toMatch(/\(\S+ (in|mm)\)²/);
  });
});
