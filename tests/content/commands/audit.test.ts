import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const run = (...given: string[]) =>
  new Promise<{ status: number; out: string; err: string }>((done) => {
    execFile(process.execPath, ['content/commands/audit.ts', ...given], (problem, out, err) => {
      done({ status: typeof problem?.code === 'number' ? problem.code : 0, out, err });
    });
  });

describe('npm run audit', () => {
  it('says that every rule of this course is met, and ends well', async () => {
    const { status, out } = await run();
    expect(out).not.toContain('BROKEN');
    expect(status).toBe(0);
  });

  it('gives the same as data', async () => {
    const { out } = await run('--json');
    const verdicts = JSON.parse(out) as { rule: string; met: boolean; lookedAt: number }[];
    expect(verdicts.length).toBeGreaterThan(15);
    expect(verdicts.every(({ met, lookedAt }) => met && lookedAt > 0)).toBe(true);
  });

  it.each([
    [['no/such/folder'], /no\/such\/folder/],
    [['--jsno'], /--jsno/],
    [['content', 'more'], /more/],
  ])('ends with status 2 and says what is wrong with %s', async (given, sentence) => {
    const { status, err } = await run(...given);
    expect(status).toBe(2);
    expect(err).toMatch(sentence);
    expect(err).not.toMatch(/\n\s+at /);
  });
});

describe('npm run audit, for a course that was adapted', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'audit-'));
    for (const part of ['lessons', 'exercises', 'checks'])
      cpSync(`content/${part}`, join(folder, part), { recursive: true });
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('holds the other folder to the same rules', async () => {
    expect((await run(folder)).status).toBe(0);
  });

  it('names the broken place and ends with status 1', async () => {
    const file = join(folder, 'lessons/flat-bead.mdx');
    const text = readFileSync(file, 'utf8');
    writeFileSync(file, text.replace('needs: [', 'needs: [weld-small-pipe, '));
    const { status, out } = await run(folder);
    expect(status).toBe(1);
    expect(out).toMatch(/BROKEN No lesson needs a skill[^\n]*\n\s+flat-bead needs weld-small-pipe/);
    writeFileSync(file, text);
  });

  it('reads its own order, with its own units', async () => {
    writeFileSync(
      join(folder, 'reading-order.ts'),
      "export const readingOrder = [{ id: 'short', title: 'Short', aim: '', lessons: ['booth-safety'] }];\n",
    );
    const { status, out } = await run(folder);
    expect(status).toBe(1);
    expect(out).toContain('1 lessons');
    expect(out).toContain('short has booth-safety, which says before-the-arc');
    expect(out).toContain('flat-bead has no place in the order');
  });

  it('says which lesson it cannot read', async () => {
    const file = join(folder, 'lessons/booth-safety.mdx');
    writeFileSync(file, readFileSync(file, 'utf8').replace('minutes: 25', 'minutes: often'));
    const { status, err } = await run(folder);
    expect(status).toBe(2);
    expect(err).toMatch(/booth-safety\.mdx[\s\S]*minutes/);
  });
});
