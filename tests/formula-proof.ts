/**
 * Proves that the formula a reader sees is the formula that runs. mathjs evaluates the text; the
 * calculation's own code computes; the two are compared on points within the limits and on both
 * sides of every place where a shown condition flips.
 */
import { all, create, type EvalFunction, type MathNode } from 'mathjs';
import type { ChoiceInput, Formula, QuantityInput } from '../lib/calculation.ts';
import { NoAnswer } from '../lib/no-answer.ts';
import type { Unit } from '../lib/units.ts';

const math = create(all as NonNullable<typeof all>, {
  relTol: Number.MIN_VALUE,
  absTol: Number.MIN_VALUE,
});
math.createUnit({ ksi: '6.894757293168361 MPa', hundredgram: '100 g' });

type Point = Record<string, number | string>;

const degrees = (x: number) => (x * Math.PI) / 180;
/**
 * Functions of formula texts beside those of mathjs; angles are in degrees. Its own ceil and floor
 * look for an integer nearby, which tolerances of nothing do not allow.
 */
const numberFunctions = {
  ceil: Math.ceil,
  floor: Math.floor,
  sinDegrees: (x: number) => math.sin(math.unit(x, 'deg')),
  cosDegrees: (x: number) => math.cos(math.unit(x, 'deg')),
  tanDegrees: (x: number) => math.tan(math.unit(x, 'deg')),
  asinDegrees: (x: number) => Number(math.asin(x)) / degrees(1),
};
const functionNames = new Set([
  ...Object.keys(numberFunctions),
  ...[
    'sqrt',
    'min',
    'max',
    'abs',
    'exp',
    'atan',
    'tanh',
    'log10',
    'ceil',
    'floor',
    'round',
    'equalText',
    'pi',
  ],
]);

interface Part {
  name: string;
  tree: MathNode;
  code: EvalFunction;
  conditions: EvalFunction[];
}

const read = new WeakMap<Formula, Part[]>();

/** Each output's text, parsed and compiled once. */
function parsed(formula: Formula): Part[] {
  const known = read.get(formula);
  if (known) return known;
  const parts = Object.entries(formula.outputs).map(([name, { formula: text }]) => {
    const tree = math.parse(text);
    // A condition on a choice flips along no number, so there is nothing to walk to.
    const conditions = tree
      .filter((node) => 'isConditionalNode' in node)
      .map((node) => (node as unknown as { condition: MathNode }).condition)
      .filter((condition) => !condition.toString().startsWith('equalText('))
      .map((condition) => condition.compile());
    return { name, tree, code: tree.compile(), conditions };
  });
  read.set(formula, parts);
  return parts;
}

/** Names in the texts that are no input, constant, earlier output or known function. */
export function undeclared(formula: Formula): string[] {
  const known = new Set([
    ...Object.keys(formula.inputs),
    ...Object.keys(formula.constants ?? {}),
    ...functionNames,
  ]);
  const strays: string[] = [];
  for (const { name, tree } of parsed(formula)) {
    tree.traverse((node: MathNode) => {
      if ('isSymbolNode' in node && !known.has((node as unknown as { name: string }).name))
        strays.push((node as unknown as { name: string }).name);
    });
    known.add(name);
  }
  return strays;
}

/** The text's own answers at a point. */
function evaluate(formula: Formula, point: Point): Record<string, number> {
  const constants = Object.fromEntries(
    Object.entries(formula.constants ?? {}).map(([name, { value }]) => [name, value]),
  );
  const scope: Record<string, unknown> = {
    ...numberFunctions,
    ...constants,
    ...point,
  };
  const results: Record<string, number> = {};
  for (const { name, code } of parsed(formula)) {
    results[name] = code.evaluate(scope);
    scope[name] = results[name];
  }
  return results;
}

function compute(formula: Formula, point: Point): Record<string, number> | undefined {
  try {
    return formula.compute(point as never);
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return undefined;
    throw thrown;
  }
}

const alike = (a: number, b: number) =>
  Object.is(a, b) ||
  Math.abs(a - b) <= 1e-10 * Math.max(Math.abs(a), Math.abs(b)) ||
  Math.abs(a - b) < 1e-13;

function compared(formula: Formula, point: Point): string[] {
  const computed = compute(formula, point);
  if (!computed) return [];
  const shown = evaluate(formula, point);
  return Object.keys(formula.outputs)
    .filter((name) => !alike(shown[name] as number, computed[name] as number))
    .map(
      (name) =>
        `${name}: shown ${shown[name]}, computed ${computed[name]} at ${JSON.stringify(point)}`,
    );
}

export function disagreements(formula: Formula, count = 1000): string[] {
  const found: string[] = [];
  let answered = 0;
  for (const point of points(formula, count)) {
    if (compute(formula, point)) answered++;
    found.push(...compared(formula, point));
    if (found.length > 5) return found;
  }
  if (answered < count / 10) found.push(`only ${answered} of ${count} points have an answer`);
  return [...found, ...thresholdPoints(formula).flatMap((point) => compared(formula, point))];
}

/** Evenly spread points: the additive recurrence with roots of the generalized golden ratio. */
function* points(formula: Formula, count: number): Generator<Point> {
  const entries = Object.entries(formula.inputs);
  const numbers = entries.filter(([, input]) => 'unit' in input) as [string, QuantityInput][];
  const choices = entries.filter(([, input]) => 'choices' in input) as [string, ChoiceInput][];
  let ratio = 2;
  for (let i = 0; i < 40; i++) ratio = (1 + ratio) ** (1 / (numbers.length + 1));
  for (let n = 0; n < count; n++) {
    const point: Point = {};
    for (const [index, [name, input]] of numbers.entries())
      point[name] = within(input, (0.5 + (n + 1) * ratio ** -(index + 1)) % 1);
    for (const [index, [name, input]] of choices.entries())
      point[name] = input.choices[Math.floor(n / 3 ** index) % input.choices.length] as string;
    yield point;
  }
}

/** A value at a share of the way through the limits: by ratio where they span decades. */
function within(
  { limits: { min = -1000, max = 1000 }, whole }: QuantityInput,
  share: number,
): number {
  const value = min > 0 && max / min > 50 ? min * (max / min) ** share : min + (max - min) * share;
  return whole ? Math.round(value) : value;
}

/** Both sides of every flip of a shown condition, along each number input from a few points. */
function thresholdPoints(formula: Formula): Point[] {
  const conditions = parsed(formula).flatMap((part) => part.conditions);
  if (conditions.length === 0) return [];
  const numbers = Object.entries(formula.inputs).filter(([, input]) => 'unit' in input) as [
    string,
    QuantityInput,
  ][];
  const found: Point[] = [];
  for (const start of points(formula, 24))
    for (const condition of conditions)
      for (const [name, input] of numbers) {
        const holds = (value: number) => {
          const at = { ...start, [name]: value };
          return Boolean(
            condition.evaluate({
              ...numberFunctions,
              ...constantsOf(formula),
              ...at,
              ...evaluate(formula, at),
            }),
          );
        };
        found.push(...flips(holds, input).map((value) => ({ ...start, [name]: value })));
      }
  return found;
}

const constantsOf = (formula: Formula) =>
  Object.fromEntries(
    Object.entries(formula.constants ?? {}).map(([name, { value }]) => [name, value]),
  );

function flips(holds: (value: number) => boolean, input: QuantityInput): number[] {
  const steps = 40;
  const sides: number[] = [];
  for (let i = 0; i < steps; i++) {
    let low = within(input, i / steps);
    let high = within(input, (i + 1) / steps);
    const before = holds(low);
    if (before === holds(high)) continue;
    for (;;) {
      const middle = (low + high) / 2;
      if (middle === low || middle === high) break;
      if (holds(middle) === before) low = middle;
      else high = middle;
    }
    sides.push(low, high);
  }
  return sides;
}

/** Units as mathjs spells them; plain numbers and percent stay numbers. */
const spelled: Partial<Record<Unit, string>> = {
  'ml/100g': 'mL/hundredgram',
  mm2: 'mm^2',
  in2: 'in^2',
  mm3: 'mm^3',
  cm3: 'cm^3',
  in3: 'in^3',
  ft3: 'ft^3',
  m3: 'm^3',
  'kg/m3': 'kg/m^3',
  'g/cm3': 'g/cm^3',
  'lb/in3': 'lb/in^3',
  'kJ/mm3': 'kJ/mm^3',
  'in/min': 'in/minute',
  'mm/min': 'mm/minute',
  'm/min': 'm/minute',
  'ft/min': 'ft/minute',
  'ft3/min': 'ft^3/minute',
  'm3/min': 'm^3/minute',
  min: 'minute',
  s: 's',
  h: 'hour',
  'kg/h': 'kg/hour',
  'lb/h': 'lb/hour',
  '1/kg': '1/kg',
  '1/lb': '1/lb',
};
const withUnit = (value: number, unit: Unit) =>
  unit === '1' || unit === 'percent' ? value : math.unit(value, spelled[unit] ?? unit);

/** Outputs whose dimension is not that of their declared unit. Factors are held by the checks. */
export function unbalanced(formula: Formula): string[] {
  const [point] = points(formula, 1);
  const scope: Record<string, unknown> = {
    sinDegrees: math.sin,
    cosDegrees: math.cos,
    tanDegrees: math.tan,
    ceil: Math.ceil,
    floor: Math.floor,
  };
  for (const [name, input] of Object.entries(formula.inputs))
    scope[name] = 'unit' in input ? withUnit(point?.[name] as number, input.unit) : point?.[name];
  for (const [name, { value, unit }] of Object.entries(formula.constants ?? {}))
    scope[name] = withUnit(value, unit);
  const wrong: string[] = [];
  for (const [name, output] of Object.entries(formula.outputs)) {
    try {
      const result = math.evaluate(output.formula, scope);
      const declared = withUnit(1, output.unit);
      scope[name] = result;
      if (
        typeof declared === 'number' ? typeof result !== 'number' : !result?.equalBase?.(declared)
      )
        wrong.push(`${name}: ${math.format(result, 4)} is no ${output.unit}`);
    } catch (thrown) {
      wrong.push(`${name}: ${(thrown as Error).message}`);
    }
  }
  return wrong;
}
