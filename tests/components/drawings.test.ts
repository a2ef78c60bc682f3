/**
 * Every drawing that belongs to a calculation, at its example and all over its limits: finite
 * coordinates inside the sheet, no style attribute, no id. And what is drawn has the computed area.
 */
import { readdirSync } from 'node:fs';
import { Polygon } from '@flatten-js/core';
import fc from 'fast-check';
import { type ComponentType, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { DrawingProps } from '../../components/Drawing/DrawnBoth.tsx';
import ElectrodeAngles from '../../components/drawings/electrode-angles.tsx';
import { leans } from '../../components/Sketch/electrode-angles.ts';
import { calculationIds } from '../../content/commands/calculation-ids.ts';
import { answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';

const ids = calculationIds();
const drawn = await Promise.all(
  readdirSync('components/drawings')
    .map((name) => name.replace('.tsx', ''))
    .filter((name) => ids.includes(name))
    .map(async (id) => ({
      id,
      calculation: await loadCalculation(id),
      Drawing: (await import(`../../components/drawings/${id}.tsx`))
        .default as ComponentType<DrawingProps>,
    })),
);

function typedAt(calculation: Calculation, share: (name: string) => number): Typed {
  const entries = Object.entries<Input>(calculation.inputs).flatMap(([name, input]) => {
    if (input.optional || 'list' in input || ('default' in input && input.default !== undefined))
      return [];
    if ('choices' in input || 'date' in input) return [[name, input.example]];
    const { min = 0, max = 1 } = ('usual' in input && input.usual) || input.limits;
    return [[name, min + (max - min) * share(name)]];
  });
  return Object.fromEntries(entries);
}

function faults(svg: string): string[] {
  const found: string[] = [];
  if (/NaN|Infinity|undefined/.test(svg)) found.push('a number that is none');
  if (/ style=| id=/.test(svg)) found.push('a style or an id');
  const [, height = '0'] = /viewBox="0 0 320 ([\d.]+)"/.exec(svg) ?? [];
  for (const [, x = '', y = ''] of svg.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)) {
    const inside =
      Number(x) >= -60 && Number(x) <= 380 && Number(y) >= -60 && Number(y) <= Number(height) + 60;
    if (!inside) found.push(`a point at ${x} ${y} of 320 ${height}`);
  }
  return found;
}

describe.each(drawn)('the drawing of $id', ({ calculation, Drawing }) => {
  it('stays on its sheet all over the usual range', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 }),
        (shares) => {
          let at = 0;
          const answered = answer(
            calculation,
            typedAt(calculation, () => shares[at++ % 12] as number),
          );
          if (!answered.ok) return;
          const { values, results } = answered;
          expect(faults(renderToString(h(Drawing, { given: values, results })))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});

it('draws a fillet whose triangle has the computed area', async () => {
  const calculation = await loadCalculation('fillet-throat');
  const { default: Drawing } = await import('../../components/drawings/fillet-throat.tsx');
  for (const angle of [60, 75, 90, 110, 135]) {
    const answered = answer(calculation, { legA: '1/2 in', legB: '3/8 in', angle });
    if (!answered.ok) expect.fail('no answer');
    const svg = renderToString(h(Drawing, { given: answered.values, results: answered.results }));
    const [, path = ''] = /<path d="M([^"]+)Z" class="weld-metal"/.exec(svg) ?? [];
    const points = path.split('L').map((pair) => pair.split(' ').map(Number) as [number, number]);
    const [a, b] = points.slice(0, 2) as [[number, number], [number, number]];
    const factor = Math.hypot(a[0] - b[0], a[1] - b[1]) / 0.5;
    const area = Math.abs(new Polygon(points).area()) / factor ** 2;
    expect(area).toBeCloseTo(answered.results.area as number, 2);
  }
});

it.each(
  Object.entries(leans).flatMap(([joint, all]) =>
    Object.keys(all).map((position) => ({ joint, position })),
  ),
)('draws the electrode at a $joint, $position', (props) => {
  const svg = renderToString(h(ElectrodeAngles, props as never));
  expect(svg).toContain('°');
  expect(svg).not.toMatch(/NaN|undefined| style=/);
});

it('draws a groove whose metal has the computed area, cap and all', async () => {
  const calculation = await loadCalculation('groove-area');
  const { default: Drawing } = await import('../../components/drawings/groove-area.tsx');
  for (const groove of ['V', 'single bevel'])
    for (const rootFace of ['0 in', '1/8 in']) {
      const answered = answer(calculation, {
        groove,
        thickness: '3/4 in',
        rootOpening: '1/4 in',
        includedAngle: 45,
        rootFace,
        capHeight: '1/8 in',
      });
      if (!answered.ok) expect.fail('no answer');
      const { values, results } = answered;
      const points = weldMetal(renderToString(h(Drawing, { given: values, results })));
      // The root opening, 1/4 in, is the side from the second corner to the third.
      const factor = distance(points, 1, 2) / 0.25;
      const area = Math.abs(new Polygon(points).area()) / factor ** 2;
      const whole = (results.area as number) + (results.capArea as number);
      expect(Math.abs(area / whole - 1)).toBeLessThan(0.01);
    }
});

it('draws the leg that has the throat: the triangle has the computed area', async () => {
  const calculation = await loadCalculation('fillet-leg');
  const { default: Drawing } = await import('../../components/drawings/fillet-leg.tsx');
  for (const angle of [60, 90, 135]) {
    const answered = answer(calculation, { throat: '0.3 in', angle });
    if (!answered.ok) expect.fail('no answer');
    const { values, results } = answered;
    const points = weldMetal(renderToString(h(Drawing, { given: values, results })));
    const factor = distance(points, 0, 1) / (results.leg as number);
    const area = Math.abs(new Polygon(points).area()) / factor ** 2;
    expect(Math.abs(area / (results.area as number) - 1)).toBeLessThan(0.01);
  }
});

it('marks every change of electrode on the plate', async () => {
  const calculation = await loadCalculation('padding-plan');
  const { default: Drawing } = await import('../../components/drawings/padding-plan.tsx');
  const typed = { width: '3/8 in', height: '3/32 in', overlap: 45, plateWidth: '4 in' };
  const answered = answer(calculation, { ...typed, plateLength: '8 in', runOut: '7 in' });
  if (!answered.ok) expect.fail('no answer');
  const { values, results } = answered;
  const svg = renderToString(h(Drawing, { given: values, results }));
  const [, marks = ''] =
    /<path d="([^"]+)" stroke="currentColor" stroke-width="2.6"/.exec(svg) ?? [];
  expect(marks.split('M').length - 1).toBe((results.electrodes as number) - 1);
});

it('says of a level pipe what its clock shows, and of an upright one that it is horizontal', async () => {
  const calculation = await loadCalculation('pipe-position');
  const { default: Drawing } = await import('../../components/drawings/pipe-position.tsx');
  const words = (pipeInclination: number) => {
    const answered = answer(calculation, { pipeInclination, clockAngle: 0 });
    if (!answered.ok) expect.fail('no answer');
    return renderToString(h(Drawing, { given: answered.values, results: answered.results }));
  };
  // D1.1's flat reaches 15° from level: half past twelve. Overhead starts 10° below three o'clock.
  expect(words(0)).toContain('flat (F) to 12:30');
  expect(words(90)).toContain('horizontal (H) to 6:00');
});

type Corner = [number, number];

function weldMetal(svg: string): Corner[] {
  const [, path = ''] = /<path d="M([^"]+)Z" class="weld-metal"/.exec(svg) ?? [];
  return path.split('L').map((pair) => pair.split(' ').map(Number) as Corner);
}

function distance(points: Corner[], from: number, to: number): number {
  const [[ax, ay], [bx, by]] = [points[from] as Corner, points[to] as Corner];
  return Math.hypot(ax - bx, ay - by);
}
