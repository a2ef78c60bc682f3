/**
 * Runs a test file as it is, then again for each change that it passes through, all in one process:
 * only the tests that touch the change, quickest first, until one turns red.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import {
  type RunnerTask,
  type RunnerTestCase,
  type RunnerTestFile,
  type RunnerTestSuite,
  TestRunner,
} from 'vitest';
import type { Change } from './changes.ts';
import { type Counts, theSwitch } from './switch.ts';

const state = process.env.MUTATION_STATE ?? '';
/** How long one change is tried: by the tests of its own folder in one file, and by all others together, in milliseconds. */
const patience = { near: 4000, far: 1300 };
/** A test of another folder that takes longer is not tried. */
const tooLong = 250;

export default class ChangeRunner extends TestRunner {
  private readonly passedThrough = new Map<string, Counts>();
  private readonly atLoad: Counts = new Map();

  override onCollectStart(file: RunnerTestFile) {
    theSwitch.counts = this.atLoad;
    super.onCollectStart(file);
  }

  override onBeforeTryTask(test: RunnerTestCase, options: { retry: number; repeats: number }) {
    super.onBeforeTryTask(test, options);
    theSwitch.counts = new Map();
    this.passedThrough.set(test.id, theSwitch.counts);
  }

  override onAfterRunTask(test: RunnerTestCase) {
    super.onAfterRunTask(test);
    theSwitch.counts = this.atLoad;
  }

  override async onAfterRunFiles(files: RunnerTestFile[]) {
    super.onAfterRunFiles(files);
    theSwitch.counts = undefined;
    if (theSwitch.on) return;
    for (const file of files) await this.tryChanges(file);
  }

  private async tryChanges(file: RunnerTestFile) {
    const name = relative(process.cwd(), file.filepath);
    const tests = testsIn(file);
    const through = this.testsByChange(tests);
    const asleep = new Set([...this.atLoad.keys()].filter((id) => !through.has(id)));
    for (const [id, own] of through) {
      if (existsSync(`${state}/noticed/${id}`)) continue;
      writeFileSync(`${state}/now/${process.pid}`, JSON.stringify({ id, name }));
      if (!(await this.tryChange(id, name, own))) asleep.add(id);
    }
    writeFileSync(`${state}/now/${process.pid}`, '');
    writeFileSync(
      `${state}/done/${name.replaceAll('/', '+')}.json`,
      JSON.stringify({
        name,
        seen: [...through.keys(), ...this.atLoad.keys()],
        asleep: [...asleep],
        red: tests.filter(({ result }) => result?.state === 'fail').map((test) => test.name),
      }),
    );
  }

  /** For each change the green tests that pass through it, quickest first. */
  private testsByChange(tests: RunnerTestCase[]): Map<string, RunnerTestCase[]> {
    const through = new Map<string, RunnerTestCase[]>();
    const green = tests.filter(({ result }) => result?.state === 'pass');
    for (const test of green.sort((a, b) => timeOf(a) - timeOf(b)))
      for (const id of this.passedThrough.get(test.id)?.keys() ?? [])
        through.set(id, [...(through.get(id) ?? []), test]);
    return through;
  }

  /** False when the changed code did not run: what acts while a file is loaded does not run a second time. */
  private async tryChange(id: string, name: string, tests: RunnerTestCase[]): Promise<boolean> {
    const near = isNear(name, fileOf.get(id) ?? '');
    const spentAt = `${state}/spent/${id}`;
    let spent = !near && existsSync(spentAt) ? Number(readFileSync(spentAt, 'utf8')) : 0;
    let awake = false;
    let tried = false;
    for (const test of tests) {
      if (spent + timeOf(test) > (near ? patience.near : patience.far)) break;
      if (!near && timeOf(test) > tooLong) break;
      const began = performance.now();
      const red = await isRed(test, id, this.passedThrough.get(test.id)?.get(id));
      awake ||= theSwitch.times > 0;
      tried = true;
      spent += performance.now() - began;
      if (!red) continue;
      writeFileSync(`${state}/noticed/${id}`, `${name} > ${test.name}`);
      if (await isRed(test, undefined))
        leave(`${name}: "${test.name}" stays red after change ${id}`);
      return true;
    }
    if (!near) writeFileSync(spentAt, spent.toFixed());
    return awake || !tried;
  }
}

const changes: Change[] = JSON.parse(readFileSync(`${state}/changes.json`, 'utf8'));
const fileOf = new Map(changes.map(({ id, file }) => [id, file]));

/** The tests of a folder of `lib` are near the changes in it. */
function isNear(test: string, file: string): boolean {
  const place = file.split('/').slice(0, 2).join('/').replace(/\.ts$/, '');
  return test.startsWith(`tests/${place}`);
}

const timeOf = ({ result }: RunnerTestCase): number => result?.duration ?? 0;

function testsIn(task: RunnerTask): RunnerTestCase[] {
  return task.type === 'suite' ? task.tasks.flatMap(testsIn) : [task];
}

/** Runs one test again with a change switched on. `usual`: how often the changed place ran without it. */
async function isRed(
  test: RunnerTestCase,
  change: string | undefined,
  usual = 0,
): Promise<boolean> {
  theSwitch.on = change;
  theSwitch.times = 0;
  theSwitch.most = 1000 * usual + 100_000;
  const hooks = suitesAround(test).map((suite) => TestRunner.getSuiteHooks(suite));
  try {
    for (const { beforeEach } of hooks)
      for (const hook of beforeEach) await hook(test.context, test.suite as never);
    await TestRunner.getTestFn(test)();
    return false;
  } catch {
    return true;
  } finally {
    theSwitch.on = undefined;
    for (const { afterEach } of hooks.reverse())
      for (const hook of afterEach) await hook(test.context, test.suite as never);
  }
}

function suitesAround(test: RunnerTestCase): RunnerTestSuite[] {
  const suites = [];
  for (let suite = test.suite; suite; suite = suite.suite) suites.unshift(suite);
  return suites;
}

/** Something kept between tests was spoiled: this process ends, and the file goes on in a new one. */
function leave(why: string): never {
  writeFileSync(`${state}/left-early.txt`, `${why}\n`, { flag: 'a' });
  process.exit(1);
}
