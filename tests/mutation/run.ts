/**
 * `npm run mutate -- lib/geometry lib/answer.ts`: every small change of those files (of the whole library
 * when none is named) against the tests. Prints what was noticed, a line a folder, and each change that was not.
 *
 * `TESTS=tests/lib/geometry` names the tests; `AGAIN=1` goes on where the last run stopped.
 */
import { spawn } from 'node:child_process';
import {
  existsSync,
  globSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname } from 'node:path';
import { type Change, changesIn, root } from './changes.ts';
import { withSwitch } from './switch.ts';

process.chdir(root);
const state = `${root}.cache/mutation`;
const lanes = 2;
/** A change that holds one process longer than this, in milliseconds, made a loop without an end: that is noticed. */
const stuckAfter = 30_000;

const asked = process.argv.slice(2);
const files = globSync('lib/**/*.ts')
  .filter((name) => name !== 'lib/sources.ts')
  .filter((name) => asked.length === 0 || asked.some((start) => name.startsWith(start)))
  .sort();
const everyTest = ['tests/lib/**/*.test.ts', 'tests/{*,content/**/*,components/**/*}.test.ts'];
const tests = globSync(
  process.env.TESTS?.split(',').map((name) =>
    name.endsWith('.ts') ? name : `${name}/**/*.test.ts`,
  ) ?? everyTest,
).sort((a, b) => breadth(a) - breadth(b) || statSync(a).size - statSync(b).size);

const changes = await prepare();
await tryAll();
await tryAsleep();
report();

/** Tests of one thing come before tests that pass through the whole library. */
function breadth(name: string): number {
  if (/junk|practice.problem|curriculum|lib.published|formula-proof/.test(name)) return 2;
  return name.startsWith('tests/lib/') ? 0 : 1;
}

async function prepare(): Promise<Change[]> {
  const { changes, code } = await changesIn(files);
  if (!process.env.AGAIN) rmSync(state, { recursive: true, force: true });
  for (const folder of ['noticed', 'now', 'done', 'spent', 'fresh'])
    mkdirSync(`${state}/${folder}`, { recursive: true });
  for (const [name, text] of code) {
    mkdirSync(dirname(`${state}/code/${name}`), { recursive: true });
    writeFileSync(`${state}/code/${name}`, withSwitch(text));
  }
  writeFileSync(`${state}/changes.json`, JSON.stringify(changes));
  return changes;
}

/** Each test file runs once as it is, then once more for each change that it passes through. */
async function tryAll() {
  const watch = setInterval(endWhatHangs, 2000);
  for (let before = Number.NaN; ; ) {
    const waiting = tests.filter(
      (name) => !existsSync(`${state}/done/${name.replaceAll('/', '+')}.json`),
    );
    const done = readdirSync(`${state}/noticed`).length - waiting.length;
    if (waiting.length === 0 || done === before) break;
    before = done;
    await run('vitest', ['run', '--config', 'tests/mutation/vitest.config.ts'], waiting);
  }
  clearInterval(watch);
}

function endWhatHangs() {
  for (const pid of readdirSync(`${state}/now`)) {
    const path = `${state}/now/${pid}`;
    const text = readFileSync(path, 'utf8');
    if (!text || Date.now() - statSync(path).mtimeMs < stuckAfter) continue;
    const { id, name } = JSON.parse(text);
    writeFileSync(`${state}/noticed/${id}`, `${name} never ended`);
    writeFileSync(path, '');
    try {
      process.kill(Number(pid), 'SIGKILL');
    } catch {} // It ended by itself.
  }
}

/** A change that acts only while a file is loaded sleeps in a process that has loaded it: it gets one of its own. */
async function tryAsleep() {
  const through = new Map<string, string[]>();
  for (const { name, asleep } of testedFiles())
    for (const id of asleep) through.set(id, [...(through.get(id) ?? []), name]);
  const todo = unnoticed()
    .filter(({ id }) => through.has(id))
    .map(({ id, file }) => ({ id, tests: nearest(file, through.get(id) ?? []).slice(0, 3) }));
  await Promise.all(
    Array.from({ length: lanes }, async (_, lane) => {
      const list = `${state}/asleep-${lane}.json`;
      writeFileSync(list, JSON.stringify(todo.filter((_, index) => index % lanes === lane)));
      // A lane that meets an endless loop ends with 7 and starts anew behind it.
      while (
        (await run(
          'node',
          ['tests/mutation/fresh.ts', list],
          [...new Set(todo.flatMap(({ tests }) => tests))],
        )) === 7
      );
    }),
  );
}

function nearest(file: string, names: string[]): string[] {
  const own = file.split('/').slice(1).join('/').replace(/\.ts$/, '');
  const distance = (name: string) =>
    (name.includes(own) ? 0 : name.includes(dirname(own)) ? 1 : 2) * 10 + breadth(name);
  return [...names].sort(
    (a, b) => distance(a) - distance(b) || tests.indexOf(a) - tests.indexOf(b),
  );
}

function run(command: string, args: string[], names: string[]): Promise<number | null> {
  const env = {
    ...process.env,
    MUTATION_STATE: state,
    MUTATION_TESTS: names.join(','),
    STRYKER_MUTATOR_WORKER: '1',
  };
  const stdio = process.env.LOUD ? 'inherit' : 'ignore';
  return new Promise((end) => spawn(command, args, { stdio, env }).on('exit', end));
}

function testedFiles(): { name: string; seen: string[]; asleep: string[]; red: string[] }[] {
  return readdirSync(`${state}/done`).map((name) =>
    JSON.parse(readFileSync(`${state}/done/${name}`, 'utf8')),
  );
}

function unnoticed(): Change[] {
  return changes.filter(({ id }) => !existsSync(`${state}/noticed/${id}`));
}

function report() {
  const seen = new Set(testedFiles().flatMap(({ seen }) => seen));
  const left = unnoticed();
  const short = (code: string) => code.replace(/\s+/g, ' ').slice(0, 90);
  const lines = left.map(
    (change) =>
      `${change.file}:${change.line}:${change.column} ${seen.has(change.id) ? '' : 'NO TEST COMES HERE '}${short(change.was)}  →  ${short(change.becomes)}`,
  );
  writeFileSync(`${state}/left.txt`, `${lines.join('\n')}\n`);
  if (lines.length < 200) console.log(lines.join('\n'));
  const row = (name: string, all: Change[]) => {
    const noticed = all.filter((change) => !left.includes(change)).length;
    return `| ${name.padEnd(21)} | ${String(all.length).padStart(7)} | ${String(noticed).padStart(7)} | ${((100 * noticed) / all.length).toFixed(1).padStart(5)} % |`;
  };
  const folder = ({ file }: Change) =>
    file.split('/').length > 2 ? file.split('/').slice(0, 2).join('/') : 'lib itself';
  for (const [name, all] of Map.groupBy(changes, folder)) console.log(row(name, all));
  console.log(row('all', changes));
  for (const { name, red } of testedFiles())
    if (red.length > 0) console.log(`red before any change: ${name}: ${red.join('; ')}`);
  const undone = tests.filter(
    (name) => !existsSync(`${state}/done/${name.replaceAll('/', '+')}.json`),
  );
  if (undone.length > 0) console.log(`not finished: ${undone.join(', ')}`);
}
