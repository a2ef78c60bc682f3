import { existsSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const root = fileURLToPath(new URL('../..', import.meta.url));
const state = process.env.MUTATION_STATE ?? '';
const order = (process.env.MUTATION_TESTS ?? '').split(',');

class AsGiven extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => order.indexOf(relative(root, moduleId));
    return [...files].sort((a, b) => place(a) - place(b));
  }
}

/** Every file of the library is loaded with all of its changes in it, behind their switches. */
export default defineConfig({
  root,
  plugins: [
    {
      name: 'changed-library',
      enforce: 'pre',
      load(id) {
        const path = `${state}/code/${relative(root, id.split('?')[0] ?? '')}`;
        return id.startsWith(root) && existsSync(path) ? readFileSync(path, 'utf8') : null;
      },
    },
  ],
  test: {
    root,
    include: order,
    // What is kept from a run before would carry that run's changes.
    fsModuleCache: false,
    runner: './tests/mutation/runner.ts',
    setupFiles: ['./tests/mutation/setup.ts'],
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 60_000,
    sequence: { sequencer: AsGiven },
    teardownTimeout: 1000,
  },
});
