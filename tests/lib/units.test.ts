/** Every unit against mathjs and against exact fractions where the definition is exact. */
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert, sameKind, type Unit, unitFor, unitOf, units } from '../../lib/units.ts';

const math = create(all as NonNullable<typeof all>);
math.createUnit({ ksi: '6.894757293168361 MPa' });

const spelled: Partial<Record<Unit, string>> = {
  in2: 'in^2',
  mm2: 'mm^2',
  in3: 'in^3',
  mm3: 'mm^3',
  cm3: 'cm^3',
  m3: 'm^3',
  ft3: 'ft^3',
  'lb/in3': 'lb/in^3',
  'kg/m3': 'kg/m^3',
  'g/cm3': 'g/cm^3',
  'in/min': 'in/minute',
  'mm/min': 'mm/minute',
  'ft/min': 'ft/minute',
  'm/min': 'm/minute',
  'ft3/min': 'ft^3/minute',
  'm3/min': 'm^3/minute',
  'lb/h': 'lb/hour',
  'kg/h': 'kg/hour',
  min: 'minute',
  h: 'hour',
};
const names = Object.keys(units) as Unit[];
const apart: Unit[] = ['percent', '1', 'ml/100g', 'Cdeg', 'Fdeg', 'deg', '1/kg', '1/lb'].filter(
  (name) => names.includes(name as Unit),
) as Unit[];

describe('convert', () => {
  const pairs = names
    .flatMap((a) => names.filter((b) => a !== b && sameKind(a, b)).map((b) => [a, b] as const))
    .filter(([a]) => !apart.includes(a));
  it.each(pairs)('goes from %s to %s as mathjs does', (a, b) => {
    const theirs = math.unit(3.7, spelled[a] ?? a).toNumber(spelled[b] ?? b);
    // mathjs rounds the pound-force to 4.4482216 N; its definition gives 4.4482216152605 N.
    const within = /kip|ksi/.test(a + b) ? 1e-8 : 1e-12;
    expect(Math.abs(convert(3.7, a, b) / theirs - 1)).toBeLessThan(within);
    expect(convert(convert(3.7, a, b), b, a)).toBeCloseTo(3.7, 12);
  });

  it('is exact where the definition is', () => {
    expect(convert(1, 'in', 'mm')).toBe(25.4);
    expect(convert(25.4, 'mm', 'in')).toBe(1);
    expect(convert(1, 'lb', 'kg')).toBe(0.45359237);
    expect(convert(212, 'degF', 'degC')).toBe(100);
    expect(convert(150, 'degC', 'degF')).toBe(302);
    expect(convert(-40, 'degC', 'degF')).toBe(-40);
  });

  it('leaves a quantity in its own unit as it is', () => {
    for (const name of names) expect(convert(50.3, name, name), name).toBe(50.3);
  });

  it('refuses to go from one kind to another', () => {
    expect(() => convert(1, 'in', 'V')).toThrow('in is a length, V a voltage');
  });
});

it.each(names)('shows %s in each system by a unit of that system or of both', (name) => {
  for (const system of ['us', 'metric'] as const) {
    const other = unitFor(name, system);
    expect(sameKind(name, other)).toBe(true);
    expect([system, undefined]).toContain(unitOf(other).system);
  }
});

it('pairs units that a shop reads beside each other', () => {
  const pairs: [Unit, Unit][] = [
    ['in', 'mm'],
    ['ft', 'm'],
    ['in/min', 'mm/min'],
    ['lb', 'kg'],
    ['degF', 'degC'],
    ['kJ/in', 'kJ/mm'],
    ['ksi', 'MPa'],
  ];
  for (const [us, metric] of pairs) {
    expect(unitFor(us, 'metric')).toBe(metric);
    expect(unitFor(metric, 'us')).toBe(us);
  }
  // A gram or a cubic centimeter goes to its own partner, not through the larger unit's.
  expect([unitFor('g', 'us'), unitFor('cm3', 'us'), unitFor('lb', 'metric')]).toEqual([
    'lb',
    'in3',
    'kg',
  ]);
});
