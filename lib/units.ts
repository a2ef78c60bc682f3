/**
 * Units of measure: what each spelling means and how to go from one to another of the same kind.
 *
 * A unit is its factor times its kind's base unit; only temperatures are shifted as well. The
 * factors are exact by definition (international yard and pound, 1959; NIST SP 811, appendix B),
 * the pound-force among them: 1 lbf = 0.45359237 kg * 9.80665 m/s2.
 */
export type System = 'us' | 'metric';

interface UnitOfMeasure {
  kind: string;
  factor: number;
  /** The system that the unit belongs to; volts and seconds belong to both. */
  system: System | undefined;
  /** What a reader sees after the number, where it is not the spelling itself. */
  shown: string | undefined;
}

const inch = 25.4;
const pound = 0.45359237;
const poundForce = pound * 9.80665;

const measure = (kind: string, factor: number, system?: System, shown?: string): UnitOfMeasure => ({
  kind,
  factor,
  system,
  shown,
});

export const units = {
  mm: measure('length', 1, 'metric'),
  m: measure('length', 1000, 'metric'),
  in: measure('length', inch, 'us'),
  ft: measure('length', 12 * inch, 'us'),
  mm2: measure('area', 1, 'metric', 'mm²'),
  in2: measure('area', inch ** 2, 'us', 'in²'),
  mm3: measure('volume', 1, 'metric', 'mm³'),
  cm3: measure('volume', 1e3, 'metric', 'cm³'),
  m3: measure('volume', 1e9, 'metric', 'm³'),
  in3: measure('volume', inch ** 3, 'us', 'in³'),
  ft3: measure('volume', (12 * inch) ** 3, 'us', 'ft³'),
  kg: measure('mass', 1, 'metric'),
  g: measure('mass', 0.001, 'metric'),
  lb: measure('mass', pound, 'us'),
  'kg/m': measure('mass per length', 1, 'metric'),
  'lb/ft': measure('mass per length', pound / (12 * inch * 1e-3), 'us'),
  'kg/m3': measure('density', 1, 'metric', 'kg/m³'),
  'g/cm3': measure('density', 1000, 'metric', 'g/cm³'),
  'lb/in3': measure('density', pound / (inch * 1e-3) ** 3, 'us', 'lb/in³'),
  s: measure('time', 1),
  min: measure('time', 60),
  h: measure('time', 3600),
  'mm/min': measure('speed', 1, 'metric'),
  'mm/s': measure('speed', 60, 'metric'),
  'm/min': measure('speed', 1000, 'metric'),
  'in/min': measure('speed', inch, 'us'),
  'ft/min': measure('speed', 12 * inch, 'us'),
  'm3/min': measure('air flow', 1, 'metric', 'm³/min'),
  'ft3/min': measure('air flow', (12 * inch * 1e-3) ** 3, 'us', 'ft³/min'),
  V: measure('voltage', 1),
  'V/mm': measure('voltage per length', 1),
  'V/A': measure('resistance', 1),
  A: measure('current', 1),
  W: measure('power', 1),
  kW: measure('power', 1000),
  'J/in': measure('energy per length', 1 / (1000 * inch), 'us'),
  'kJ/in': measure('energy per length', 1 / inch, 'us'),
  'J/mm': measure('energy per length', 0.001, 'metric'),
  'kJ/mm': measure('energy per length', 1, 'metric'),
  'kJ/mm3': measure('energy per volume', 1, undefined, 'kJ/mm³'),
  degC: measure('temperature', 1, 'metric', '°C'),
  degF: measure('temperature', 5 / 9, 'us', '°F'),
  /** A difference of temperatures, which has no zero of a scale in it; shown alike to everybody. */
  Cdeg: measure('temperature difference', 1, undefined, '°C'),
  deg: measure('angle', 1, undefined, '°'),
  percent: measure('share', 1, undefined, '%'),
  'ml/100g': measure('diffusible hydrogen', 1, undefined, 'ml/100 g'),
  MPa: measure('stress', 1, 'metric'),
  ksi: measure('stress', (1000 * poundForce) / inch ** 2, 'us'),
  kN: measure('force', 1, 'metric'),
  kip: measure('force', poundForce, 'us'),
  'kN/mm': measure('force per length', 1, 'metric'),
  'kip/in': measure('force per length', poundForce / inch, 'us'),
  'kg/h': measure('deposition rate', 1, 'metric'),
  'lb/h': measure('deposition rate', pound, 'us'),
  '1/kg': measure('count per mass', 1, 'metric', '/kg'),
  '1/lb': measure('count per mass', 1 / pound, 'us', '/lb'),
  /** A plain number: a ratio, a fraction, a count. */
  '1': measure('number', 1, undefined, ''),
} satisfies Record<string, UnitOfMeasure>;

export type Unit = keyof typeof units;

/** Kind, factor and system of a unit. */
export const unitOf = (unit: Unit): UnitOfMeasure => units[unit];

/** What a reader sees after the number; nothing for a plain number. */
export const unitSign = (unit: Unit): string => unitOf(unit).shown ?? unit;

/** Whether a text is a unit in its first spelling; `text/quantity-text.ts` reads the others. */
export const isUnit = (text: string): text is Unit => Object.hasOwn(units, text);

/** Whether two units measure the same kind of quantity, so that one converts into the other. */
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
