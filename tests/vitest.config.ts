import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const root = fileURLToPath(new URL('..', import.meta.url));
const browserTests = 'tests/browser/**/*.test.ts';
const siteTests = 'tests/site/**/*.test.ts';

/** The longest file first: begun last, it would run on while the other worker has nothing to do. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isLongest = ({ moduleId }: TestSpecification) => moduleId.includes('/every-page-on-');
    return (await super.sort(files)).sort((a, b) => Number(isLongest(b)) - Number(isLongest(a)));
  }
}

/**
 * Three projects, run one after the other so that they do not fight for the processor:
 * `unit` needs nothing built, `site` reads the built pages, `browser` opens them in Chromium.
 */
export default defineConfig({
  root,
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: [siteTests, browserTests],
          // Some start a process of their own, which takes its time on a busy machine.
          testTimeout: 20_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          include: [siteTests],
          // They only read: the files of one worker share the pages that one of them has parsed.
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 300_000,
          sequence: { groupOrder: 2 },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: [browserTests],
          globalSetup: ['tests/browser/global-setup.ts'],
          testTimeout: 120_000,
          // A slow machine may take its time to come to the same end.
          expect: { poll: { timeout: 30_000 } },
          hookTimeout: 60_000,
          maxWorkers: 2,
          sequence: { groupOrder: 3 },
        },
      },
    ],
  },
});
