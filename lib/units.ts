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
  /** What a reader sees after the number. */
  shown: string;
  /** What a label says in words. */
  words: string;
}

const inch = 25.4;
const pound = 0.45359237;
const poundForce = pound * 9.80665;

export const units = {
  mm: {
    kind: 'length',
    factor: 1,
    system: 'metric',
    shown: 'mm',
    words: 'millimeters',
  },
  m: {
    kind: 'length',
    factor: 1000,
    system: 'metric',
    shown: 'm',
    words: 'meters',
  },
  in: {
    kind: 'length',
    factor: inch,
    system: 'us',
    shown: 'in',
    words: 'inches',
  },
  ft: {
    kind: 'length',
    factor: 12 * inch,
    system: 'us',
    shown: 'ft',
    words: 'feet',
  },
  mm2: {
    kind: 'area',
    factor: 1,
    system: 'metric',
    shown: 'mm²',
    words: 'square millimeters',
  },
  in2: {
    kind: 'area',
    factor: inch ** 2,
    system: 'us',
    shown: 'in²',
    words: 'square inches',
  },
  mm3: {
    kind: 'volume',
    factor: 1,
    system: 'metric',
    shown: 'mm³',
    words: 'cubic millimeters',
  },
  cm3: {
    kind: 'volume',
    factor: 1e3,
    system: 'metric',
    shown: 'cm³',
    words: 'cubic centimeters',
  },
  m3: {
    kind: 'volume',
    factor: 1e9,
    system: 'metric',
    shown: 'm³',
    words: 'cubic meters',
  },
  in3: {
    kind: 'volume',
    factor: inch ** 3,
    system: 'us',
    shown: 'in³',
    words: 'cubic inches',
  },
  ft3: {
    kind: 'volume',
    factor: (12 * inch) ** 3,
    system: 'us',
    shown: 'ft³',
    words: 'cubic feet',
  },
  kg: {
    kind: 'mass',
    factor: 1,
    system: 'metric',
    shown: 'kg',
    words: 'kilograms',
  },
  g: {
    kind: 'mass',
    factor: 0.001,
    system: 'metric',
    shown: 'g',
    words: 'grams',
  },
  lb: {
    kind: 'mass',
    factor: pound,
    system: 'us',
    shown: 'lb',
    words: 'pounds',
  },
  'kg/m': {
    kind: 'mass per length',
    factor: 1,
    system: 'metric',
    shown: 'kg/m',
    words: 'kilograms per meter',
  },
  'lb/ft': {
    kind: 'mass per length',
    factor: pound / (12 * inch * 1e-3),
    system: 'us',
    shown: 'lb/ft',
    words: 'pounds per foot',
  },
  'kg/m3': {
    kind: 'density',
    factor: 1,
    system: 'metric',
    shown: 'kg/m³',
    words: 'kilograms per cubic meter',
  },
  'g/cm3': {
    kind: 'density',
    factor: 1000,
    system: 'metric',
    shown: 'g/cm³',
    words: 'grams per cubic centimeter',
  },
  'lb/in3': {
    kind: 'density',
    factor: pound / (inch * 1e-3) ** 3,
    system: 'us',
    shown: 'lb/in³',
    words: 'pounds per cubic inch',
  },
  s: { kind: 'time', factor: 1, shown: 's', words: 'seconds' },
  min: { kind: 'time', factor: 60, shown: 'min', words: 'minutes' },
  h: { kind: 'time', factor: 3600, shown: 'h', words: 'hours' },
  'mm/min': {
    kind: 'speed',
    factor: 1,
    system: 'metric',
    shown: 'mm/min',
    words: 'millimeters a minute',
  },
  'mm/s': {
    kind: 'speed',
    factor: 60,
    system: 'metric',
    shown: 'mm/s',
    words: 'millimeters a second',
  },
  'm/min': {
    kind: 'speed',
    factor: 1000,
    system: 'metric',
    shown: 'm/min',
    words: 'meters a minute',
  },
  'in/min': {
    kind: 'speed',
    factor: inch,
    system: 'us',
    shown: 'in/min',
    words: 'inches a minute',
  },
  'ft/min': {
    kind: 'speed',
    factor: 12 * inch,
    system: 'us',
    shown: 'ft/min',
    words: 'feet a minute',
  },
  'm3/min': {
    kind: 'air flow',
    factor: 1,
    system: 'metric',
    shown: 'm³/min',
    words: 'cubic meters a minute',
  },
  'ft3/min': {
    kind: 'air flow',
    factor: (12 * inch * 1e-3) ** 3,
    system: 'us',
    shown: 'ft³/min',
    words: 'cubic feet a minute',
  },
  V: { kind: 'voltage', factor: 1, shown: 'V', words: 'volts' },
  'V/mm': {
    kind: 'voltage per length',
    factor: 1,
    shown: 'V/mm',
    words: 'volts per millimeter',
  },
  'V/A': {
    kind: 'resistance',
    factor: 1,
    shown: 'V/A',
    words: 'volts per ampere',
  },
  A: { kind: 'current', factor: 1, shown: 'A', words: 'amperes' },
  W: { kind: 'power', factor: 1, shown: 'W', words: 'watts' },
  kW: { kind: 'power', factor: 1000, shown: 'kW', words: 'kilowatts' },
  'J/in': {
    kind: 'energy per length',
    factor: 1 / (1000 * inch),
    system: 'us',
    shown: 'J/in',
    words: 'joules per inch',
  },
  'kJ/in': {
    kind: 'energy per length',
    factor: 1 / inch,
    system: 'us',
    shown: 'kJ/in',
    words: 'kilojoules per inch',
  },
  'J/mm': {
    kind: 'energy per length',
    factor: 0.001,
    system: 'metric',
    shown: 'J/mm',
    words: 'joules per millimeter',
  },
  'kJ/mm': {
    kind: 'energy per length',
    factor: 1,
    system: 'metric',
    shown: 'kJ/mm',
    words: 'kilojoules per millimeter',
  },
  'kJ/mm3': {
    kind: 'energy per volume',
    factor: 1,
    shown: 'kJ/mm³',
    words: 'kilojoules per cubic millimeter',
  },
  degC: {
    kind: 'temperature',
    factor: 1,
    system: 'metric',
    shown: '°C',
    words: 'degrees Celsius',
  },
  degF: {
    kind: 'temperature',
    factor: 5 / 9,
    offset: -160 / 9,
    system: 'us',
    shown: '°F',
    words: 'degrees Fahrenheit',
  },
  /** A difference of temperatures: no zero of a scale in it. */
  Cdeg: {
    kind: 'temperature difference',
    factor: 1,
    system: 'metric',
    shown: '°C',
    words: 'Celsius degrees',
  },
  Fdeg: {
    kind: 'temperature difference',
    factor: 5 / 9,
    system: 'us',
    shown: '°F',
    words: 'Fahrenheit degrees',
  },
  deg: { kind: 'angle', factor: 1, shown: '°', words: 'degrees' },
  percent: { kind: 'share', factor: 1, shown: '%', words: 'percent' },
  'ml/100g': {
    kind: 'diffusible hydrogen',
    factor: 1,
    shown: 'ml/100 g',
    words: 'milliliters per 100 grams',
  },
  MPa: {
    kind: 'stress',
    factor: 1,
    system: 'metric',
    shown: 'MPa',
    words: 'megapascals',
  },
  ksi: {
    kind: 'stress',
    factor: (1000 * poundForce) / inch ** 2,
    system: 'us',
    shown: 'ksi',
    words: 'kips per square inch',
  },
  kN: {
    kind: 'force',
    factor: 1,
    system: 'metric',
    shown: 'kN',
    words: 'kilonewtons',
  },
  kip: {
    kind: 'force',
    factor: poundForce,
    system: 'us',
    shown: 'kip',
    words: 'kips',
  },
  'kN/mm': {
    kind: 'force per length',
    factor: 1,
    system: 'metric',
    shown: 'kN/mm',
    words: 'kilonewtons per millimeter',
  },
  'kip/in': {
    kind: 'force per length',
    factor: poundForce / inch,
    system: 'us',
    shown: 'kip/in',
    words: 'kips per inch',
  },
  'kg/h': {
    kind: 'deposition rate',
    factor: 1,
    system: 'metric',
    shown: 'kg/h',
    words: 'kilograms an hour',
  },
  'lb/h': {
    kind: 'deposition rate',
    factor: pound,
    system: 'us',
    shown: 'lb/h',
    words: 'pounds an hour',
  },
  '1/kg': {
    kind: 'count per mass',
    factor: 1,
    system: 'metric',
    shown: '/kg',
    words: 'per kilogram',
  },
  '1/lb': {
    kind: 'count per mass',
    factor: 1 / pound,
    system: 'us',
    shown: '/lb',
    words: 'per pound',
  },
  /** A plain number: a ratio, a fraction, a count. */
  '1': { kind: 'number', factor: 1, shown: '', words: '' },
} as const satisfies Record<string, UnitOfMeasure>;

export type Unit = keyof typeof units;

export const unitOf = (unit: Unit): UnitOfMeasure => units[unit];

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
  ['Fdeg', 'Cdeg'],
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
