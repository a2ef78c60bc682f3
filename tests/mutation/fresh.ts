/**
 * Tries changes that act only while a file is loaded: each in processes of its own, switched on from the start.
 * Takes the path of a list; ends with 7 when a change made a loop without an end, to be started again behind it.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createVitest } from 'vitest/node';

const stuckAfter = 25_000;
const state = process.env.MUTATION_STATE ?? '';
const list: { id: string; tests: string[] }[] = JSON.parse(
  readFileSync(process.argv[2] ?? '', 'utf8'),
);
const quiet = {
  watch: false,
  fsModuleCache: false,
  reporters: [{}],
  silent: true,
  maxWorkers: 1,
  bail: 1,
  testTimeout: 10_000,
};
const vitest = await createVitest('test', { config: 'tests/mutation/vitest.config.ts', ...quiet });
await vitest.standalone();

for (const { id, tests } of list) {
  if (existsSync(`${state}/noticed/${id}`) || existsSync(`${state}/fresh/${id}`)) continue;
  vitest.provide('change', id);
  for (const test of tests) {
    if (await isGreen(id, test)) continue;
    writeFileSync(`${state}/noticed/${id}`, `${test}, loaded anew`);
    break;
  }
  writeFileSync(`${state}/fresh/${id}`, '');
}
await vitest.close();
process.exit(0);

async function isGreen(id: string, test: string): Promise<boolean> {
  const guard = setTimeout(() => {
    writeFileSync(`${state}/noticed/${id}`, `${test} never ended`);
    process.exit(7);
  }, stuckAfter);
  const [project] = vitest.projects;
  if (!project) throw new Error('no test project');
  const path = `${process.cwd()}/${test}`;
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications([
    project.createSpecification(path),
  ]);
  clearTimeout(guard);
  // The files of earlier changes are listed again, with what became of them then.
  const own = testModules.filter(({ moduleId }) => moduleId === path);
  return unhandledErrors.length === 0 && own.length === 1 && own.every((module) => module.ok());
}
