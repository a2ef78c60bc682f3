/**
 * Units of measure: what each spelling means and how to go from one to another of the same kind.
 *
 * A unit is a straight line to its kind's base unit: base = value * factor + offset. Only
 * temperatures have an offset. The factors are exact by definition (international yard and pound,
 * 1959; NIST SP 811, appendix B), apart from the pound-force chain, which is exact as well:
 * 1 lbf = 0.45359237 kg * 9.80665 m/s2.
 */
export type System = 'us' | 'metric';

interface UnitOfMeasure {
  kind: string;
  factor: number;
  offset?: number;
  /** The system that the unit belongs to; volts and seconds belong to both. */
  system?: System;
  /** What a reader sees after the number, where it is not the spelling itself. */
  shown?: string;
}

const inch = 25.4;
const pound = 0.45359237;
const poundForce = pound * 9.80665;

export const units = {
  mm: {
    kind: 'length',
    factor: 1,
    system: 'metric',
  },
  m: {
    kind: 'length',
    factor: 1000,
    system: 'metric',
  },
  in: {
    kind: 'length',
    factor: inch,
    system: 'us',
  },
  ft: {
    kind: 'length',
    factor: 12 * inch,
    system: 'us',
  },
  mm2: {
    kind: 'area',
    factor: 1,
    system: 'metric',
    shown: 'mm²',
  },
  in2: {
    kind: 'area',
    factor: inch ** 2,
    system: 'us',
    shown: 'in²',
  },
  mm3: {
    kind: 'volume',
    factor: 1,
    system: 'metric',
    shown: 'mm³',
  },
  cm3: {
    kind: 'volume',
    factor: 1e3,
    system: 'metric',
    shown: 'cm³',
  },
  m3: {
    kind: 'volume',
    factor: 1e9,
    system: 'metric',
    shown: 'm³',
  },
  in3: {
    kind: 'volume',
    factor: inch ** 3,
    system: 'us',
    shown: 'in³',
  },
  ft3: {
    kind: 'volume',
    factor: (12 * inch) ** 3,
    system: 'us',
    shown: 'ft³',
  },
  kg: {
    kind: 'mass',
    factor: 1,
    system: 'metric',
  },
  g: {
    kind: 'mass',
    factor: 0.001,
    system: 'metric',
  },
  lb: {
    kind: 'mass',
    factor: pound,
    system: 'us',
  },
  'kg/m': {
    kind: 'mass per length',
    factor: 1,
    system: 'metric',
  },
  'lb/ft': {
    kind: 'mass per length',
    factor: pound / (12 * inch * 1e-3),
    system: 'us',
  },
  'kg/m3': {
    kind: 'density',
    factor: 1,
    system: 'metric',
    shown: 'kg/m³',
  },
  'g/cm3': {
    kind: 'density',
    factor: 1000,
    system: 'metric',
    shown: 'g/cm³',
  },
  'lb/in3': {
    kind: 'density',
    factor: pound / (inch * 1e-3) ** 3,
    system: 'us',
    shown: 'lb/in³',
  },
  s: { kind: 'time', factor: 1 },
  min: { kind: 'time', factor: 60 },
  h: { kind: 'time', factor: 3600 },
  'mm/min': {
    kind: 'speed',
    factor: 1,
    system: 'metric',
  },
  'mm/s': {
    kind: 'speed',
    factor: 60,
    system: 'metric',
  },
  'm/min': {
    kind: 'speed',
    factor: 1000,
    system: 'metric',
  },
  'in/min': {
    kind: 'speed',
    factor: inch,
    system: 'us',
  },
  'ft/min': {
    kind: 'speed',
    factor: 12 * inch,
    system: 'us',
  },
  'm3/min': {
    kind: 'air flow',
    factor: 1,
    system: 'metric',
    shown: 'm³/min',
  },
  'ft3/min': {
    kind: 'air flow',
    factor: (12 * inch * 1e-3) ** 3,
    system: 'us',
    shown: 'ft³/min',
  },
  V: { kind: 'voltage', factor: 1 },
  'V/mm': {
    kind: 'voltage per length',
    factor: 1,
  },
  'V/A': {
    kind: 'resistance',
    factor: 1,
  },
  A: { kind: 'current', factor: 1 },
  W: { kind: 'power', factor: 1 },
  kW: { kind: 'power', factor: 1000 },
  'J/in': {
    kind: 'energy per length',
    factor: 1 / (1000 * inch),
    system: 'us',
  },
  'kJ/in': {
    kind: 'energy per length',
    factor: 1 / inch,
    system: 'us',
  },
  'J/mm': {
    kind: 'energy per length',
    factor: 0.001,
    system: 'metric',
  },
  'kJ/mm': {
    kind: 'energy per length',
    factor: 1,
    system: 'metric',
  },
  'kJ/mm3': {
    kind: 'energy per volume',
    factor: 1,
    shown: 'kJ/mm³',
  },
  degC: {
    kind: 'temperature',
    factor: 1,
    system: 'metric',
    shown: '°C',
  },
  degF: {
    kind: 'temperature',
    factor: 5 / 9,
    offset: -160 / 9,
    system: 'us',
    shown: '°F',
  },
  /** A difference of temperatures, which has no zero of a scale in it; shown alike to everybody. */
  Cdeg: { kind: 'temperature difference', factor: 1, shown: '°C' },
  deg: { kind: 'angle', factor: 1, shown: '°' },
  percent: { kind: 'share', factor: 1, shown: '%' },
  'ml/100g': {
    kind: 'diffusible hydrogen',
    factor: 1,
    shown: 'ml/100 g',
  },
  MPa: {
    kind: 'stress',
    factor: 1,
    system: 'metric',
  },
  ksi: {
    kind: 'stress',
    factor: (1000 * poundForce) / inch ** 2,
    system: 'us',
  },
  kN: {
    kind: 'force',
    factor: 1,
    system: 'metric',
  },
  kip: {
    kind: 'force',
    factor: poundForce,
    system: 'us',
  },
  'kN/mm': {
    kind: 'force per length',
    factor: 1,
    system: 'metric',
  },
  'kip/in': {
    kind: 'force per length',
    factor: poundForce / inch,
    system: 'us',
  },
  'kg/h': {
    kind: 'deposition rate',
    factor: 1,
    system: 'metric',
  },
  'lb/h': {
    kind: 'deposition rate',
    factor: pound,
    system: 'us',
  },
  '1/kg': {
    kind: 'count per mass',
    factor: 1,
    system: 'metric',
    shown: '/kg',
  },
  '1/lb': {
    kind: 'count per mass',
    factor: 1 / pound,
    system: 'us',
    shown: '/lb',
  },
  /** A plain number: a ratio, a fraction, a count. */
  '1': { kind: 'number', factor: 1, shown: '' },
} as const satisfies Record<string, UnitOfMeasure>;

export type Unit = keyof typeof units;

export const unitOf = (unit: Unit): UnitOfMeasure => units[unit];

/** What a reader sees after the number; nothing for a plain number. */
export const unitSign = (unit: Unit): string => unitOf(unit).shown ?? unit;

export const isUnit = (text: string): text is Unit => Object.hasOwn(units, text);

export const sameKind = (a: Unit, b: Unit): boolean => units[a].kind === units[b].kind;

/** The same quantity in another unit of its kind. Throws a TypeError for a unit of another kind. */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value;
  const source = unitOf(from);
  const target = unitOf(to);
  if (source.kind !== target.kind)
    throw new TypeError(`${from} is a ${source.kind}, ${to} a ${target.kind}`);
  if (source.kind === 'temperature')
    return to === 'degC' ? ((value - 32) * 5) / 9 : (value * 9) / 5 + 32;
  return (value * source.factor) / target.factor;
}

/** Partner units: what a reader of the other system is shown. */
const partners: ReadonlyArray<readonly [us: Unit, metric: Unit]> = [
  ['in', 'mm'],
  ['ft', 'm'],
  ['in2', 'mm2'],
  ['in3', 'mm3'],
  ['in3', 'cm3'],
  ['ft3', 'm3'],
  ['lb', 'kg'],
  ['lb', 'g'],
  ['lb/ft', 'kg/m'],
  ['lb/in3', 'kg/m3'],
  ['lb/in3', 'g/cm3'],
  ['in/min', 'mm/min'],
  ['in/min', 'mm/s'],
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
];

/** The unit in which a reader of that system is shown a quantity declared in `unit`. */
export function unitFor(unit: Unit, system: System): Unit {
  const own = unitOf(unit).system;
  if (own === undefined || own === system) return unit;
  const pair = partners.find(([us, metric]) => unit === (own === 'us' ? us : metric));
  if (!pair) throw new TypeError(`${unit} has no partner in the other system`);
  return system === 'us' ? pair[0] : pair[1];
}
