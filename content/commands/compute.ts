/**
 * The library from a terminal: one calculation with its working, all of them described as data, or
 * many at once.
 *
 *   npm run --silent compute -- heat-input voltage=23.5 current=128 "travelSpeed=5.25 in/min"
 *   npm run --silent compute -- --list
 *   npm run --silent compute -- --batch < requests.json
 */
import { readFileSync } from 'node:fs';
import { answer } from '../../lib/answer.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { speak } from '../../lib/text/say.ts';
import { asListed } from '../../lib/typed/as-listed.ts';
import { asked } from './asked.ts';
import { batchReply } from './batch.ts';
import { calculationIds } from './calculation-ids.ts';
import { described } from './described.ts';
import { systemTyped } from './system-typed.ts';
import { told } from './told.ts';

// Who reads only the first lines, as `| head` does, closes the pipe: that is no fault.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code !== 'EPIPE') throw new Error(`cannot write: ${code}`);
  process.exit();
});

const ids = calculationIds();
const [first, ...rest] = process.argv.slice(2);

if (first === '--list') {
  const all = await Promise.all(ids.map(async (id) => described(id, await loadCalculation(id))));
  write(JSON.stringify(all, null, 2));
} else if (first === '--batch') {
  const { text, failed } = await batchReply(readFileSync(0, 'utf8'), ids);
  write(text);
  process.exitCode = failed ? 1 : 0;
} else if (first === undefined || !ids.includes(first)) {
  const lead = first === undefined ? 'Name a calculation' : `There is no calculation “${first}”`;
  process.stderr.write(`${lead}. There are:\n${(await summaries()).join('')}`);
  process.exitCode = 1;
} else {
  const calculation = await loadCalculation(first);
  const typed = asListed(calculation.inputs, Object.fromEntries(rest.map(pair)));
  const answered = answer(calculation, typed);
  if (answered.ok) write(told(first, calculation, typed, answered));
  else {
    const system = systemTyped(calculation, typed);
    for (const { field, text } of answered.problems)
      process.stderr.write(`${field === '' ? '' : `${field}: `}${speak(text, system)}\n`);
    if (rest.length === 0) process.stderr.write(`\n${asked(calculation).join('\n')}\n`);
    process.exitCode = 1;
  }
}

/** Each id with the one sentence that says what it is for. */
function summaries(): Promise<string[]> {
  return Promise.all(
    ids.map(async (id) => {
      const { summary } = await loadCalculation(id);
      return `  ${id.padEnd(24)} ${speak(summary, 'us')}\n`;
    }),
  );
}

/** `name=value`; a list is given as JSON, or as `asListed` reads it. */
function pair(argument: string): [string, string] {
  const at = argument.indexOf('=');
  return at < 0 ? [argument, ''] : [argument.slice(0, at), argument.slice(at + 1)];
}

function write(text: string): void {
  process.stdout.write(`${text}\n`);
}
