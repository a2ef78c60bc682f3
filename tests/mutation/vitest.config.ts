import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const all = [
  'tests/lib/**/*.test.ts',
  'tests/every-calculation.test.ts',
  'tests/published-checks.test.ts',
];

/**
 * The tests that a change in `lib` should turn red; timing and text rules are left out. `TESTS` names
 * fewer, parted by commas: a run over one file is then a matter of a minute, and its score too low
 * where tests elsewhere would have noticed.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    // Mutated code is slow: it counts every step.
    testTimeout: 300_000,
    include: process.env.TESTS?.split(',') ?? all,
  },
});
