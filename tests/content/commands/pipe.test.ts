import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, it } from 'vitest';

it('ends without a complaint when its reader wants no more lines', async () => {
  const child = spawn(process.execPath, ['content/commands/compute.ts', '--list']);
  const complaints: string[] = [];
  child.stderr.on('data', (text) => complaints.push(String(text)));
  child.stdout.once('data', () => child.stdout.destroy());
  const [code] = await once(child, 'close');
  expect(complaints.join('')).toBe('');
  expect(code).toBe(0);
});
