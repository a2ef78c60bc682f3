/** What an exercise asks the library for, the library answers; one drawing at most stands for it. */
import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';
import { answer } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

describe.each(readExercises().map((exercise) => [exercise.slug, exercise] as const))(
  '%s',
  (_, { numbers }) => {
    it('asks for outputs that there are, with inputs that can be answered', async () => {
      for (const { of, given, want } of numbers) {
        const calculation = await loadCalculation(of);
        expect(answer(calculation, given)).toMatchObject({ ok: true });
        for (const name of want) expect(calculation.outputs).toHaveProperty(name);
      }
    });
    it('has at most one drawing, and that one exists', () => {
      const drawn = numbers.filter(({ drawing }) => drawing);
      expect(drawn.length).toBeLessThanOrEqual(1);
      for (const { of } of drawn) expect(existsSync(`components/drawings/${of}.tsx`)).toBe(true);
    });
  },
);
