/**
 * How long the site takes to build as lessons are added, beside a bare Astro project with as many
 * lessons of the same length: `node tests/bench/build-times.ts 25 250 1000`. Builds in temporary folders.
 */
import { execFileSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('../..', import.meta.url));
const model = readFileSync(join(repository, 'content/lessons/flat-bead.mdx'), 'utf8');
const [, frontMatter = '', prose = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(model) ?? [];
const slugOf = (place: number) => `more-${String(place).padStart(4, '0')}`;

/** The project with further lessons, each a copy of one that has calculators, examples and practice. */
function ours(folder: string, lessons: number): void {
  for (const part of [
    'content',
    'components',
    'lib',
    'public',
    'astro.config.mjs',
    'package.json',
    'tsconfig.json',
  ])
    cpSync(join(repository, part), join(folder, part), { recursive: true });
  const slugs = Array.from({ length: lessons }, (_, place) => slugOf(place));
  for (const [place, slug] of slugs.entries()) {
    const front = frontMatter
      .replace(/^title: .*$/m, `title: Further bead ${place}`)
      // A term is defined once, an exercise belongs to one lesson, a skill is introduced once.
      .replace(/\n {2}terms:\n(?: {4}.*\n)+/, '\n  terms: {}\n')
      .replace(/^exercises: .*$/m, 'exercises: []')
      .replace(/\n {2}skills:\n(?: {4}.*\n)+/, (skills) =>
        skills.replace(/^ {4}([\w-]+):/gm, `    $1-${place}:`),
      );
    writeFileSync(join(folder, 'content/lessons', `${slug}.mdx`), `---\n${front}\n---\n${prose}`);
  }
  const order = join(folder, 'content/reading-order.ts');
  const list = slugs.map((slug) => `'${slug}',`).join(' ');
  writeFileSync(order, readFileSync(order, 'utf8').replace("'arc-length-clinic',", `$& ${list}`));
}

/** As little as Astro needs: one layout, one route, lessons as plain MDX. */
function bare(folder: string, lessons: number): void {
  const plain = prose.replace(/<\/?[A-Z][^<>]*>/g, '').replace(/[{}<>]/g, '');
  mkdirSync(join(folder, 'src/lessons'), { recursive: true });
  mkdirSync(join(folder, 'src/pages/lessons'), { recursive: true });
  for (let place = 0; place < lessons; place++)
    writeFileSync(
      join(folder, 'src/lessons', `${slugOf(place)}.mdx`),
      `---\ntitle: Further bead ${place}\n---\n${plain}`,
    );
  writeFileSync(
    join(folder, 'src/content.config.ts'),
    `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
export const collections = { lessons: defineCollection({ loader: glob({ pattern: '*.mdx', base: './src/lessons' }) }) };\n`,
  );
  writeFileSync(
    join(folder, 'src/pages/lessons/[id].astro'),
    `---
import { getCollection, render } from 'astro:content';
export const getStaticPaths = async () =>
  (await getCollection('lessons')).map((lesson) => ({ params: { id: lesson.id }, props: { lesson } }));
const { lesson } = Astro.props;
const { Content } = await render(lesson);
---
<html lang="en"><head><title>{lesson.data.title}</title></head><body><h1>{lesson.data.title}</h1><Content /></body></html>\n`,
  );
  writeFileSync(
    join(folder, 'astro.config.mjs'),
    `import mdx from '@astrojs/mdx';\nexport default { integrations: [mdx()] };\n`,
  );
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }\n');
}

const run = `const { build } = await import('astro');
const start = performance.now();
await build({ root: process.cwd(), logLevel: 'error' });
const { user, system } = process.cpuUsage();
console.log('took', (performance.now() - start) / 1000, (user + system) / 1e6);`;

/** Seconds by the clock and seconds of processor, which other work on the machine leaves alone. */
function build(write: (folder: string, lessons: number) => void, lessons: number) {
  const folder = mkdtempSync(join(tmpdir(), 'build-times-'));
  try {
    write(folder, lessons);
    symlinkSync(join(repository, 'node_modules'), join(folder, 'node_modules'));
    const said = execFileSync(process.execPath, ['--input-type=module', '--eval', run], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, NODE_ENV: 'production', ASTRO_TELEMETRY_DISABLED: '1' },
      maxBuffer: 100e6,
    });
    const [, clock, processor] = /took ([\d.]+) ([\d.]+)/.exec(said) ?? [];
    return { clock: Number(clock), processor: Number(processor) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A row for each size; growth is linear when what a further lesson costs stays the same. */
export function buildTimes(sizes: readonly number[]): Record<string, Record<string, number>> {
  const table: Record<string, Record<string, number>> = {};
  let before: { lessons: number; ours: number; bare: number } | undefined;
  for (const lessons of sizes) {
    const mine = build(ours, lessons);
    const plain = build(bare, lessons);
    const each = (now: number, then: number) =>
      Math.round((1000 * (now - then)) / (lessons - (before?.lessons ?? lessons)));
    table[`${lessons} further lessons`] = {
      's by the clock': Math.round(10 * mine.clock) / 10,
      's of processor': Math.round(10 * mine.processor) / 10,
      'bare, clock': Math.round(10 * plain.clock) / 10,
      'bare, processor': Math.round(10 * plain.processor) / 10,
      ...(before && {
        'ms for one more': each(mine.processor, before.ours),
        'bare, one more': each(plain.processor, before.bare),
      }),
    };
    before = { lessons, ours: mine.processor, bare: plain.processor };
  }
  return table;
}

if (import.meta.main) console.table(buildTimes(process.argv.slice(2).map(Number)));
