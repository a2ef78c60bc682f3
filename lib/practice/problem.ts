/** A problem with fresh numbers, told by a scene of its calculation and answered by the calculation. */
import { type Answer, answer, type Typed, type TypedValue } from '../answer.ts';
import type { Calculation, Input, Output } from '../calculation.ts';
import type { System } from '../units.ts';
import { namedIn, type Scene, type Value } from './scene.ts';
import { seeded } from './seeded.ts';

export interface Problem {
  /** The name of the output that is asked for. */
  want: string;
  output: Output;
  typed: Typed;
  found: Answer;
  /** What is known and the question, as sentences with `{quantities}`. */
  text: string;
}

/** A calculation and the scenes in which its problems are told. */
export interface Practiced {
  id: string;
  calculation: Calculation;
  scenes: readonly Scene[];
}

/**
 * The problem with this number in this set, in whole values of the reader's system. Scene, question
 * and wording are the same for both systems.
 * @throws RangeError when no fitting values turn up, which the tests rule out
 */
export function makeProblem(
  { id, calculation, scenes }: Practiced,
  set: number,
  place: number,
  system: System,
): Problem {
  const next = seeded(id, set, place);
  const pick = <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)] as T;
  const scene = pick(scenes);
  const [want, questions] = pick(Object.entries(scene.asked));
  const told = `${pick(scene.told)} ${pick([questions].flat())}`;
  const names = [...new Set([...namedIn(told), ...Object.keys(scene.values ?? {})])];
  for (let attempt = 0; attempt < 240; attempt++) {
    const values = Object.fromEntries(
      names.map((name) => [
        name,
        chosen(scene, name, calculation.inputs[name] as Input, system, pick),
      ]),
    );
    const typed = Object.fromEntries(names.map((name) => [name, values[name]?.typed]));
    const found = answer(calculation, typed);
    const output = calculation.outputs[want] as Output;
    if (!found.ok || !isUsable(output, found.results[want])) continue;
    const text = told.replaceAll(/\{([a-z]\w*)\}/gi, (_, name) => values[name]?.said ?? '');
    return { want, output, typed, found, text };
  }
  throw new RangeError(`no problem can be made for ${id}, set ${set}, number ${place}`);
}

interface Chosen {
  typed: TypedValue;
  said: string;
}

/** From the scene's list, or from the words that the input itself has. */
function chosen(
  scene: Scene,
  name: string,
  input: Input,
  system: System,
  pick: <T>(all: readonly T[]) => T,
): Chosen {
  const listed = scene.values?.[name] ?? ('choices' in input ? input.choices : []);
  const value: Value = pick('us' in listed ? listed[system] : listed);
  if (typeof value !== 'string') return value;
  const plain = 'choices' in input || 'date' in input;
  return { typed: value, said: plain ? value : `{${value}}` };
}

/** A count may be none; a measure of nothing would be no question. */
const isUsable = (output: Output, value: unknown): boolean =>
  typeof value === 'number'
    ? value > 0 || (value === 0 && 'unit' in output && output.unit === '1')
    : value !== undefined && value !== null;
