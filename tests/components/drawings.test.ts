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
import { clipped } from '../../components/Sketch/clipped.ts';
import { leans } from '../../components/Sketch/electrode-angles.ts';
import { calculationIds } from '../../content/commands/calculation-ids.ts';
import { answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { signedArea } from '../../lib/geometry/outline.ts';
import { sheetFaults } from './sheet-faults.ts';

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

/** What somebody may type: every number at its share of the usual range, every choice by chance. */
function typedAt(calculation: Calculation, share: () => number): Typed {
  const entries = Object.entries<Input>(calculation.inputs).flatMap(
    ([name, input]): [string, Typed[string]][] => {
      if ('list' in input || 'date' in input) return [[name, input.example]];
      if ('choices' in input)
        return [[name, input.choices[Math.floor(share() * 0.999 * input.choices.length)]]];
      if (input.optional) return [];
      const { min = 0, max = 1 } = ('usual' in input && input.usual) || input.limits;
      const number = min + (max - min) * share();
      return [[name, 'whole' in input && input.whole ? Math.round(number) : number]];
    },
  );
  return Object.fromEntries(entries);
}

describe.each(drawn)('the drawing of $id', ({ calculation, Drawing }) => {
  it('stays on its sheet all over the usual range', () => {
    let drawings = 0;
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 }),
        (shares) => {
          let at = 0;
          const typed = typedAt(calculation, () => shares[at++ % 12] as number);
          const answered = answer(calculation, typed);
          if (!answered.ok) return;
          drawings++;
          const { values, results } = answered;
          const svg = renderToString(h(Drawing, { given: values, results }));
          expect(sheetFaults(svg), JSON.stringify(typed)).toEqual([]);
        },
      ),
      { numRuns: 100 },
    );
    expect(drawings, 'answers that could be drawn').toBeGreaterThan(0);
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
  const [, path = ''] = /<path d="(M[^"]+)Z" class="weld-metal"/.exec(svg) ?? [];
  return cornersOf(path);
}

const cornersOf = (path: string): Corner[] =>
  path
    .slice(1)
    .split('L')
    .map((pair) => pair.split(' ').map(Number) as Corner);

function distance(points: Corner[], from: number, to: number): number {
  const [[ax, ay], [bx, by]] = [points[from] as Corner, points[to] as Corner];
  return Math.hypot(ax - bx, ay - by);
}

it('draws the groove of a pipe with its computed area, cap and all', async () => {
  const calculation = await loadCalculation('pipe-groove');
  const { default: Drawing } = await import('../../components/drawings/pipe-groove.tsx');
  for (const nps of ['2', '6', '12']) {
    const typed = { nps, schedule: '80', rootOpening: '1/8 in', rootFace: '1/16 in' };
    const answered = answer(calculation, { ...typed, capHeight: '1/16 in' });
    if (!answered.ok) expect.fail('no answer');
    const { values, results } = answered;
    const points = weldMetal(renderToString(h(Drawing, { given: values, results })));
    const factor = distance(points, 1, 2) / 0.125;
    const area = Math.abs(new Polygon(points).area()) / factor ** 2;
    const whole = (results.area as number) + (results.capArea as number);
    expect(Math.abs(area / whole - 1), `NPS ${nps}`).toBeLessThan(0.02);
  }
});

it('draws every piece as long as it is, apart by the kerf, and none past the end of its bar', async () => {
  const calculation = await loadCalculation('cut-plan');
  const { default: Drawing } = await import('../../components/drawings/cut-plan.tsx');
  const pieces = [
    { length: '48 in', count: '7' },
    { length: '31 in', count: '9' },
    { length: '7 in', count: '11' },
  ];
  const answered = answer(calculation, {
    pieces,
    stockLength: '240 in',
    kerf: '1 in',
    trim: '3 in',
  });
  if (!answered.ok) expect.fail('no answer');
  const { values, results } = answered;
  const svg = renderToString(h(Drawing, { given: values, results }));
  const perInch = 304 / 240;
  const boxes = [...svg.matchAll(/<path d="([^"]+)" class="weld-metal"/g)].map(([, path = '']) =>
    [...path.matchAll(/M([\d.]+) [\d.]+H([\d.]+)/g)].map(([, from, to]) => [
      Number(from),
      Number(to),
    ]),
  ) as Corner[][];
  const lengths = boxes.flat().map(([from, to]) => Math.round((to - from) / perInch));
  // No two of these bars are alike, so each piece is drawn once.
  const ordered = [...Array(7).fill(48), ...Array(9).fill(31), ...Array(11).fill(7)];
  expect(lengths.sort((a, b) => b - a)).toEqual(ordered);
  for (const bar of boxes) {
    expect(bar.at(-1)?.[1]).toBeLessThanOrEqual(8 + 304);
    for (const [index, [from]] of bar.entries()) {
      const before = bar[index - 1]?.[1] ?? 8 + 2 * perInch;
      expect((from - before) / perInch).toBeCloseTo(1, 0);
    }
  }
});

it('draws lanes of two and of three core wires', async () => {
  const calculation = await loadCalculation('weave-width');
  const { default: Drawing } = await import('../../components/drawings/weave-width.tsx');
  const answered = answer(calculation, { diameter: '5/32 in' });
  if (!answered.ok) expect.fail('no answer');
  const svg = renderToString(h(Drawing, { given: answered.values, results: answered.results }));
  const core = 2 * Number(/<circle[^>]* r="([\d.]+)" fill="none"/.exec(svg)?.[1]);
  const lanes = [...svg.matchAll(/d="M[\d.]+ ([\d.]+)H[\d.]+M[\d.]+ ([\d.]+)H[\d.]+"/g)];
  expect(lanes.map(([, up, down]) => (Number(down) - Number(up)) / core)).toEqual([2, 3]);
});

it('draws a bulging and a hollow face whose section has the computed area', async () => {
  const calculation = await loadCalculation('fillet-profile');
  const { default: Drawing } = await import('../../components/drawings/fillet-profile.tsx');
  for (const bulge of ['1/8 in', '0 in', '-1/16 in', '0.26 in']) {
    const answered = answer(calculation, { leg: '3/8 in', bulge });
    if (!answered.ok) expect.fail('no answer');
    const { values, results } = answered;
    const points = weldMetal(renderToString(h(Drawing, { given: values, results })));
    const factor = distance(points, 0, 1) / 0.375;
    const area = Math.abs(new Polygon(points).area()) / factor ** 2;
    expect(Math.abs(area / (results.area as number) - 1), bulge).toBeLessThan(0.01);
  }
});

it('divides the ring by the computed shares', async () => {
  const calculation = await loadCalculation('pipe-position-shares');
  const { default: Drawing } = await import('../../components/drawings/pipe-position-shares.tsx');
  for (const pipeInclination of [0, 10, 45, 90]) {
    const answered = answer(calculation, { pipeInclination });
    if (!answered.ok) expect.fail('no answer');
    const { values, results } = answered;
    const svg = renderToString(h(Drawing, { given: values, results }));
    const areas: Record<string, number> = {};
    const names: Record<string, string> = {
      0: 'flat',
      0.3: 'horizontal',
      0.6: 'vertical',
      1: 'overhead',
    };
    const bands = svg.matchAll(/d="([^"]+)" class="weld-metal" fill-opacity="([\d.]+)"/g);
    for (const [, path = '', tone = ''] of bands) {
      const name = names[tone] as string;
      for (const piece of path.split('Z').filter(Boolean))
        areas[name] = (areas[name] ?? 0) + Math.abs(new Polygon(cornersOf(piece)).area());
    }
    const whole = Object.values(areas).reduce((sum, area) => sum + area, 0);
    for (const name of ['flat', 'horizontal', 'vertical', 'overhead'])
      expect((100 * (areas[name] ?? 0)) / whole, name).toBeCloseTo(results[name] as number, 0);
  }
});

it('shows the part of a plate that lies in its window, and no more', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 })), {
        minLength: 3,
        maxLength: 3,
      }),
      (triangle) => {
        const window = { left: -20, right: 31, bottom: -17, top: 23 };
        // Row by row: how much of the triangle's width lies between the window's sides.
        const rows = 4000;
        let expected = 0;
        for (let row = 0; row < rows; row++) {
          const y = window.bottom + ((row + 0.5) * (window.top - window.bottom)) / rows;
          const xs = triangle.flatMap(([ax, ay], index) => {
            const [bx, by] = triangle[(index + 1) % 3] as Corner;
            return ay < y === by < y ? [] : [ax + ((bx - ax) * (y - ay)) / (by - ay)];
          });
          const [from, to] = [
            Math.max(window.left, Math.min(...xs)),
            Math.min(window.right, Math.max(...xs)),
          ];
          expected += (Math.max(0, to - from) * (window.top - window.bottom)) / rows;
        }
        expect(Math.abs(signedArea(clipped(triangle, window)))).toBeCloseTo(expected, 0);
      },
    ),
  );
});
