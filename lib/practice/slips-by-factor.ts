/** Slips that leave their factor behind, each only where the problem has what it mixes up. */
import type { Input, Output } from '../calculation.ts';
import { type Unit, unitFor, unitOf } from '../units.ts';
import type { Asked } from './asked.ts';
import type { Slip } from './slips.ts';

interface Facts {
  /** Of the answer. */
  unit: Unit;
  kind: string;
  /** Names and labels of everything in the problem. */
  words: string;
  /** Units of inputs and outputs. */
  units: ReadonlySet<string>;
}

const inches = ({ unit }: Facts) =>
  unitFor(unit, 'us') !== unitFor(unit, 'metric') && /in|mm|ft|m\b/.test(unit);
const squares = ({ kind }: Facts) => kind === 'area';
const kilo = ({ unit }: Facts) => /^k[A-Z]/.test(unit);
const times = ({ units }: Facts) =>
  [...units].some((unit) => /^(s|min|h)$|\/(s|min|h)$/.test(unit)) || units.has('kJ/in');
const masses = ({ kind }: Facts) => kind === 'mass';
const fillets = ({ words }: Facts) => /throat/i.test(words) && /leg/i.test(words);
const round = ({ words }: Facts) => /diameter|radius/i.test(words);
const shares = ({ units }: Facts) => units.has('percent');
const always = () => true;

const factors: readonly [fits: (facts: Facts) => boolean, factor: number, text: string][] = [
  [inches, 25.4, '25.4 times too much: inches and millimeters were mixed'],
  [inches, 1 / 25.4, '25.4 times too little: inches and millimeters were mixed'],
  [squares, 25.4 ** 2, '645 times too much: square inches and square millimeters were mixed'],
  [squares, 25.4 ** -2, '645 times too little: square inches and square millimeters were mixed'],
  [always, 10, 'ten times too much: look at the decimal point'],
  [always, 1 / 10, 'ten times too little: look at the decimal point'],
  [kilo, 1000, 'a thousand times too much: kilo got lost'],
  [kilo, 1 / 1000, 'a thousand times too little: kilo got lost'],
  [times, 60, 'sixty times too much: seconds and minutes, or minutes and hours, were mixed'],
  [times, 1 / 60, 'sixty times too little: seconds and minutes, or minutes and hours, were mixed'],
  [masses, 1 / 2.20462, 'pounds and kilograms mixed: there are 2.2 pounds in a kilogram'],
  [masses, 2.20462, 'pounds and kilograms mixed: there are 2.2 pounds in a kilogram'],
  [fillets, Math.SQRT2, 'the leg where the throat is asked: they differ by the root of two'],
  [fillets, Math.SQRT1_2, 'the throat where the leg is asked: they differ by the root of two'],
  [round, 2, 'twice too much: a diameter for a radius'],
  [round, 1 / 2, 'half: a radius for a diameter'],
  [round, 4, 'four times too much: a diameter was squared where its radius belongs'],
  [round, 1 / 4, 'a quarter: a radius was squared where the diameter belongs'],
  [shares, 100, 'a hundred times too much: a share and a percentage were mixed'],
  [shares, 1 / 100, 'a hundred times too little: a share and a percentage were mixed'],
  [always, 2, 'twice too much: look for something counted on both sides'],
  [always, 1 / 2, 'half of it: look for something that stands on both sides'],
];

/** Wrong values in `unit`, the unit of the answer, each with the sentence that helps. */
export function slipsByFactor({ calculation, want }: Asked, computed: number, unit: Unit): Slip[] {
  const parts = [
    ...Object.entries<Input | Output>(calculation.inputs),
    ...Object.entries<Input | Output>(calculation.outputs).filter(([name]) => name === want),
  ];
  const facts: Facts = {
    unit,
    kind: unitOf(unit).kind,
    words: parts.map(([name, { label }]) => `${name} ${label}`).join(' '),
    units: new Set(parts.flatMap(([, part]) => ('unit' in part ? [part.unit] : []))),
  };
  return factors
    .filter(([fits]) => fits(facts))
    .map(([, factor, text]) => ({ value: computed * factor, text: `That is ${text}.` }));
}
