/** Every unit against mathjs and against exact fractions where the definition is exact. */
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  convert,
  isUnit,
  sameKind,
  type Unit,
  unitFor,
  unitOf,
  unitSign,
  units,
} from '../../lib/units.ts';

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

describe('a count per mass', () => {
  it('is 2.2046 times as much to the kilogram: one pound is 0.45359237 kg by definition', () => {
    expect(convert(1, '1/lb', '1/kg')).toBeCloseTo(1 / 0.45359237, 12);
    expect(convert(1, '1/kg', '1/lb')).toBe(0.45359237);
  });
});

describe('unitFor', () => {
  it('pairs units that a shop reads beside each other, each way', () => {
    const pairs: [Unit, Unit][] = [
      ['in', 'mm'],
      ['ft', 'm'],
      ['in2', 'mm2'],
      ['ft3', 'm3'],
      ['lb', 'kg'],
      ['lb/ft', 'kg/m'],
      ['lb/in3', 'kg/m3'],
      ['in/min', 'mm/min'],
      ['ft/min', 'm/min'],
      ['ft3/min', 'm3/min'],
      ['kJ/in', 'kJ/mm'],
      ['J/in', 'J/mm'],
      ['degF', 'degC'],
      ['ksi', 'MPa'],
      ['kip', 'kN'],
      ['kip/in', 'kN/mm'],
      ['lb/h', 'kg/h'],
      ['1/lb', '1/kg'],
      ['in3', 'mm3'],
    ];
    for (const [us, metric] of pairs) {
      expect(unitFor(us, 'metric')).toBe(metric);
      expect(unitFor(metric, 'us')).toBe(us);
      expect([unitFor(us, 'us'), unitFor(metric, 'metric')]).toEqual([us, metric]);
    }
    // Every unit of one system is in a pair; the smaller metric ones go to the same US unit.
    const smaller: [Unit, Unit][] = [
      ['g', 'lb'],
      ['cm3', 'in3'],
      ['g/cm3', 'lb/in3'],
      ['mm/s', 'in/min'],
    ];
    for (const [metric, us] of smaller) expect(unitFor(metric, 'us')).toBe(us);
    expect([...pairs.flat(), ...smaller.map(([metric]) => metric)].sort()).toEqual(
      names.filter((name) => unitOf(name).system !== undefined).sort(),
    );
  });

  it('leaves what both systems measure alike as it is', () => {
    const both: Unit[] = ['s', 'min', 'h', 'V', 'A', 'W', 'kW', 'V/mm', 'V/A', 'deg', 'percent'];
    for (const unit of [...both, 'kJ/mm3', 'Cdeg', 'ml/100g', '1'] as const)
      expect([unitFor(unit, 'us'), unitFor(unit, 'metric')]).toEqual([unit, unit]);
  });

  it('tells a unit that somebody added without its partner', () => {
    const more = units as Record<string, (typeof units)['in']>;
    more.hand = { ...units.in, factor: 101.6 };
    try {
      expect(() => unitFor('hand' as Unit, 'metric')).toThrow('hand has no partner');
      expect(unitFor('hand' as Unit, 'us')).toBe('hand');
    } finally {
      delete more.hand;
    }
  });
});

it('shows exponents, degrees and percent as signs, nothing for a number, and other units as spelled', () => {
  const signs: Partial<Record<Unit, string>> = {
    mm2: 'mm²',
    in2: 'in²',
    mm3: 'mm³',
    cm3: 'cm³',
    m3: 'm³',
    in3: 'in³',
    ft3: 'ft³',
    'kg/m3': 'kg/m³',
    'g/cm3': 'g/cm³',
    'lb/in3': 'lb/in³',
    'm3/min': 'm³/min',
    'ft3/min': 'ft³/min',
    'kJ/mm3': 'kJ/mm³',
    degC: '°C',
    degF: '°F',
    Cdeg: '°C',
    deg: '°',
    percent: '%',
    'ml/100g': 'ml/100 g',
    '1/kg': '/kg',
    '1/lb': '/lb',
    '1': '',
  };
  for (const name of names) expect(unitSign(name), name).toBe(signs[name] ?? name);
});

it('knows a unit by its first spelling alone', () => {
  expect(['in', 'degF', '1'].every(isUnit)).toBe(true);
  expect(['inch', 'IN', '', 'toString', 'constructor'].some(isUnit)).toBe(false);
});
