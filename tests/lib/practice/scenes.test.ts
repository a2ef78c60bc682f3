/** What a problem tells is enough to solve it, in whole sizes of either system, in several forms. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { answer } from '../../../lib/answer.ts';
import type { Input } from '../../../lib/calculation.ts';
import { loadPracticed } from '../../../lib/practice/load-practiced.ts';
import { makeProblem } from '../../../lib/practice/problem.ts';
import { namedIn, type Values } from '../../../lib/practice/scene.ts';
import { canBePracticed, practiced } from '../../../lib/practice/scenes.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';

const lessons = readdirSync('content/lessons').map((name) => {
  const [, front = ''] = readFileSync(`content/lessons/${name}`, 'utf8').split(/^---$/m);
  return { name, calculations: parse(front).calculations as string[] };
});
const loaded = await Promise.all(practiced.map(loadPracticed));
const all = loaded.flatMap((one) => one.scenes.map((scene) => ({ ...one, one, scene })));
const sorted = (text: string) => namedIn(text).toSorted();
/** The standard value times a factor: a number and its unit, or a number alone. */
function scaled(input: Input, factor: number): string {
  const text = String('default' in input ? input.default : '');
  const reading = readQuantity(text, 'unit' in input ? input.unit : '1');
  if ('problem' in reading) throw new Error(`${input.label}: ${text} cannot be read`);
  return `${(reading.value || 0.05) * factor} ${reading.unit === '1' ? '' : reading.unit}`.trim();
}
const listsOf = (values: Values) => ('us' in values ? [values.us, values.metric] : [values]);

it.each(lessons)('problems can be made of every calculation of $name', ({ calculations }) => {
  expect(calculations.filter((id) => !canBePracticed(id))).toEqual([]);
});

describe.each(all)('a scene of $id', ({ one, scene, calculation }) => {
  const values = scene.values ?? {};

  it('is told in two forms or more, which name the same inputs once', () => {
    expect(scene.told.length).toBeGreaterThan(1);
    for (const told of scene.told) {
      expect(sorted(told)).toEqual(sorted(scene.told[0] as string));
      expect(new Set(sorted(told)).size).toBe(sorted(told).length);
    }
  });

  it('names only what the calculation has, and names what it draws from several values', () => {
    const named = [...scene.told, ...Object.values(scene.asked).flat()].flatMap(namedIn);
    for (const name of [...named, ...Object.keys(scene.values ?? {})])
      expect(calculation.inputs).toHaveProperty([name]);
    for (const want of Object.keys(scene.asked)) expect(calculation.outputs).toHaveProperty([want]);
    const several = Object.entries(scene.values ?? {}).filter(([, list]) =>
      listsOf(list).some((one) => one.length > 1),
    );
    for (const [name] of several) expect(named).toContain(name);
  });

  it('has as many values in one system as in the other', () => {
    const inputs = new Set(scene.told.flatMap(namedIn));
    for (const name of [...inputs, ...Object.keys(scene.values ?? {})]) {
      const [us, metric] = listsOf(values[name] ?? []);
      if (metric) expect(us).toHaveLength(metric.length);
    }
  });

  it('tells everything on which its answers depend', () => {
    for (let set = 1; set <= 12; set++) {
      const { want, typed, found, text } = makeProblem({ ...one, scenes: [scene] }, set, 0, 'us');
      const told = new Set(Object.keys(typed));
      for (const [name, input] of Object.entries<Input>(calculation.inputs)) {
        if (told.has(name) || 'list' in input || !('default' in input)) continue;
        const others =
          'choices' in input
            ? input.choices
            : [0.3, 0.7, 1.2].map((factor) => scaled(input, factor));
        for (const other of others) {
          const again = answer(calculation, { ...typed, [name]: other });
          if (again.ok)
            expect([text, name, again.results[want]]).toEqual([text, name, found.results[want]]);
        }
      }
    }
  });
});
