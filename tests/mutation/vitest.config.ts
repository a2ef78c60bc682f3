import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The tests that a change in `lib` should turn red; timing and text rules are left out. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    // Mutated code is slow: it counts every step.
    testTimeout: 300_000,
    include: [
      'tests/lib/**/*.test.ts',
      'tests/every-calculation.test.ts',
      'tests/published-checks.test.ts',
    ],
  },
});
