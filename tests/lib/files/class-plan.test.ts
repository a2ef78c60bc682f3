import fc from 'fast-check';
import { expect, test } from 'vitest';
import { classExercises } from '../../../content/class-exercises.ts';
import { demoPlans } from '../../../content/demo.ts';
import { classPlan } from '../../../lib/files/class-plan.ts';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';

const demos = demoPlans(await classExercises()).map(({ plan }) => plan);

test('a plan comes back from its file as it was', () => {
  for (const plan of demos) {
    const read = readFile(classPlan, writeFile(classPlan, plan, '2026-03-02'));
    expect(read.ok && read.data).toEqual(plan);
  }
});

test('a file that was cut short, or has a slip in it, is refused with a sentence', () => {
  const text = writeFile(classPlan, demos[0] as never, '2026-03-02');
  fc.assert(
    fc.property(fc.integer({ min: 0, max: text.length - 3 }), (at) => {
      const read = readFile(classPlan, text.slice(0, at));
      expect(read.ok).toBe(false);
      if (!read.ok) expect(read.problem).toMatch(/^This file/);
    }),
  );
  expect(readFile(classPlan, text.replace('"us"', '"cubits"')).ok).toBe(false);
  expect(readFile(classPlan, text.replace('class-plan', 'class-board')).ok).toBe(false);
});
