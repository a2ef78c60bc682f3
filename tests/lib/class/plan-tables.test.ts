/** The tables of a plan hold what the plan holds, in the reader's units, and can be opened again. */
import { describe, expect, it } from 'vitest';
import { classExercises } from '../../../content/class-exercises.ts';
import { demoPlans } from '../../../content/demo.ts';
import { classNeeds } from '../../../lib/class/class-needs.ts';
import { costsOf } from '../../../lib/class/costs.ts';
import { boughtMass } from '../../../lib/class/metal.ts';
import { cutCsv, purchaseCsv, weekCsv } from '../../../lib/class/plan-csv.ts';
import { readPlan } from '../../../lib/class/read-plan.ts';
import { readCsv } from '../../../lib/csv.ts';
import type { ClassPlan } from '../../../lib/files/class-plan.ts';

const exercises = await classExercises();
const first = demoPlans(exercises)[0]?.plan as ClassPlan;
const needsWith = (settings: Partial<ClassPlan['settings']> = {}) => {
  const read = readPlan({ ...first, settings: { ...first.settings, ...settings } }, exercises);
  return classNeeds(read.turns, read.choices);
};
const needs = needsWith();
const table = (text: string, ...columns: string[]) => {
  const read = readCsv(text, columns);
  if (!read.ok) throw new Error(read.problem);
  return read.rows;
};
const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

describe('what to buy', () => {
  const bars = needs.metal[0];
  const cans = needs.rods[0];
  const prices = new Map([
    [bars?.section ?? '', 42.5],
    [cans?.kind ?? '', 31],
    ['Flap disc', 4],
  ]);
  const columns = ['what', 'buy', 'of', 'pieces', 'price of one', 'cost'] as const;
  const rows = table(purchaseCsv(needs, prices, 'us'), ...columns, 'weight lb');

  it('has a row for every section, every electrode, both kinds of disc and every tool', () => {
    expect(rows.map(({ buy }) => Number(buy))).toEqual([
      ...needs.metal.map(({ plan }) => plan?.bars),
      ...needs.rods.map((it) => it.cans),
      needs.preparation.grindingDiscs,
      needs.preparation.flapDiscs,
      ...needs.store.tools.map((it) => it.count),
    ]);
    for (const row of rows) expect(row.what).toMatch(/^[^{}|]+$/);
  });

  it('costs a count times the price of one, and nothing where no price is known', () => {
    for (const row of rows)
      expect(row.cost).toBe(
        row['price of one'] === '' ? '' : String(Number(row.buy) * Number(row['price of one'])),
      );
    expect(rows.filter(({ cost }) => cost !== '')).toHaveLength(3);
    const { lines, total, priced } = costsOf(needs, prices);
    expect(priced).toBe(true);
    expect(total).toBeCloseTo(sum(rows.map(({ cost }) => Number(cost))), 9);
    for (const { count } of lines) expect(count).toBeGreaterThan(0);
    expect(costsOf(needs, new Map())).toMatchObject({ total: 0, priced: false });
  });

  it('is the same order for a metric reader, in millimeters and kilograms', () => {
    const metric = table(purchaseCsv(needs, prices, 'metric'), ...columns, 'weight kg');
    expect(metric.map(({ buy }) => buy)).toEqual(rows.map(({ buy }) => buy));
    for (const [at, row] of metric.entries()) {
      const weight = rows[at]?.['weight lb'] ?? '';
      if (weight === '') expect(row['weight kg']).toBe('');
      else expect(Number(row['weight kg']) / (Number(weight) * 0.45359237)).toBeCloseTo(1, 5);
    }
    expect(metric[0]?.of).toBe(`${Number(((bars?.stock.length ?? 0) * 25.4).toPrecision(6))} mm`);
    expect(rows[0]?.of).toBe(`${bars?.stock.length} in`);
    expect(Number(rows[0]?.['weight lb'])).toBeCloseTo(bars ? boughtMass(bars) : 0, 2);
  });

  it('counts the pieces that are cut from the bars', () => {
    for (const [at, { pieces }] of needs.metal.entries())
      expect(Number(rows[at]?.pieces)).toBe(sum(pieces.map(({ count }) => count)));
  });

  it('leaves the count of bars empty where a piece is longer than its bar', () => {
    const short = needsWith({ barLength: '7.75' });
    const long = short.metal.findIndex(({ plan }) => plan === undefined);
    const [row] = table(purchaseCsv(short, prices, 'us'), ...columns).slice(long);
    expect(row).toMatchObject({ buy: '', cost: '' });
    expect(costsOf(short, prices).lines.map(({ thing }) => thing)).not.toContain(
      short.metal[long]?.section,
    );
  });
});

describe('what to saw', () => {
  it('cuts every piece that is needed, bar by bar', () => {
    const rows = table(
      cutCsv(needs, 'us'),
      'section',
      'bar in',
      'bars cut alike',
      'pieces from each',
      'length in',
    );
    const cut = sum(
      rows.map((row) => Number(row['bars cut alike']) * Number(row['pieces from each'])),
    );
    expect(cut).toBe(sum(needs.metal.flatMap(({ pieces }) => pieces.map(({ count }) => count))));
    const lengths = new Set(
      needs.metal.flatMap(({ pieces }) => pieces.map(({ length }) => length)),
    );
    for (const row of rows) expect([...lengths]).toContain(Number(row['length in']));
  });

  it('gives a metric saw its lengths in millimeters', () => {
    const us = table(cutCsv(needs, 'us'), 'bar in', 'length in');
    const metric = table(cutCsv(needs, 'metric'), 'bar mm', 'length mm');
    for (const [at, row] of metric.entries()) {
      expect(Number(row['length mm'])).toBeCloseTo(Number(us[at]?.['length in']) * 25.4, 2);
      expect(Number(row['bar mm'])).toBeCloseTo(Number(us[at]?.['bar in']) * 25.4, 1);
    }
  });

  it('has no row for what does not fit on a bar', () => {
    const short = needsWith({ barLength: '7.75' });
    const sections = table(cutCsv(short, 'us'), 'section').length;
    expect(sections).toBeGreaterThan(0);
    expect(sections).toBeLessThan(table(cutCsv(needs, 'us'), 'section').length);
  });
});

it('the weeks hold every attempt, with the hours asked and there', () => {
  const full = needsWith({ evenings: '20' });
  const rows = table(
    weekCsv(full),
    'week',
    'exercise',
    'attempts',
    'booth hours asked',
    'booth hours there',
  );
  expect(sum(rows.map(({ attempts }) => Number(attempts)))).toBe(
    sum(full.weeks.flatMap((week) => week.attempts.map(({ count }) => count))),
  );
  // Twenty evenings at two a week, and week 0 for what finds no room.
  expect(new Set(rows.map(({ week }) => week))).toEqual(
    new Set([...Array.from({ length: 10 }, (_, at) => String(at + 1)), '0']),
  );
  const [one] = rows;
  // Two evenings of 2 h 45 min at 14 booths.
  expect(one?.['booth hours there']).toBe('77');
});
