/**
 * What is given to a calculation, in one line: the values in the order of its inputs with `|`
 * between them, nothing where nothing is given, a list of rows as JSON. Short, so that a page that
 * is read on a slow line carries little more than its text.
 */
import type { Typed, TypedValue } from '../answer.ts';
import type { Inputs } from '../calculation.ts';

/** @throws TypeError for a value that holds `|` itself */
export function writeGiven(inputs: Inputs, given: Typed): string {
  return Object.keys(inputs)
    .map((name) => {
      const value = given[name];
      const text = Array.isArray(value) ? JSON.stringify(value) : String(value ?? '');
      if (text.includes('|')) throw new TypeError(`${name} holds a |: ${text}`);
      return text;
    })
    .join('|')
    .replace(/\|+$/, '');
}

/** What `writeGiven` wrote for the same inputs. */
export function readGiven(inputs: Inputs, line: string): Typed {
  const texts = line.split('|');
  return Object.fromEntries(
    Object.entries(inputs).flatMap(([name, input], place): [string, TypedValue][] => {
      const text = texts[place];
      return text ? [[name, 'list' in input ? JSON.parse(text) : text]] : [];
    }),
  );
}
