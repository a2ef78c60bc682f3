import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../content/commands/calculation-ids.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { eachPage, site } from './built-site.ts';
import { askedForLater, scriptFilesAtOnce, withImports } from './script-graph.ts';
import { KB, loadedAtOnce, scriptAtOnce, weightOfFiles } from './weight.ts';

const sum = (parts: Map<string, number>) => [...parts.values()].reduce((a, b) => a + b, 0);

/** Says what is heavy when a budget is broken. */
function within(allowed: number, parts: Map<string, number>, what: string): void {
  const list = [...parts].map(([name, bytes]) => `${name} ${bytes}`).join(', ');
  const found = sum(parts);
  expect(found, `${what}: ${found} bytes, allowed ${allowed} (${list})`).toBeLessThanOrEqual(
    allowed,
  );
}

const calculations = await Promise.all(
  calculationIds().map(async (id) => ({ id, kind: (await loadCalculation(id)).kind })),
);

describe('before anyone touches the page', () => {
  it.each(eachPage)('%s loads at most 20 KB', (path, page) => {
    within(20 * KB, loadedAtOnce(page, site), path);
  });

  it.each(eachPage)('%s runs at most 1 KB of script', (path, page) => {
    within(KB, scriptAtOnce(page, site), path);
  });

  it('half of the lessons load at most 14.6 KB, which one congestion window carries', () => {
    const lessons = site.pages.filter(({ path }) => /\/lessons\/./.test(path));
    const weights = lessons.map((page) => sum(loadedAtOnce(page, site))).sort((a, b) => a - b);
    expect(weights.length).toBeGreaterThan(0);
    expect(weights[Math.floor(weights.length / 2)]).toBeLessThanOrEqual(14.6 * KB);
  });
});

/** A tool with a page of its own is fetched when its reader begins to use it. In KB, all that it brings. */
const tools: Readonly<Record<string, number>> = {
  // Fillet and groove, with the live form's chunk that it shares.
  'open-bench': 40,
  'open-plan': 34,
  'open-board': 32,
  'live-outline': 24,
  'open-practice': 22,
  'open-record': 30,
  'open-test-sheet': 30,
  'open-log': 34,
};
const nameOf = (file: string) => /([^/]+)\.[^.]+\.js$/.exec(file)?.[1] ?? '';

describe('when something on the page comes to life', () => {
  const atOnce = new Set(site.pages.flatMap((page) => [...scriptFilesAtOnce(page, site)]));
  const asked = [...askedForLater(atOnce, site)];
  const first = asked
    .filter((file) => !Object.hasOwn(tools, nameOf(file)))
    .map((file) => [file, withImports([file], site)] as const);
  const shared = new Set(first.flatMap(([, files]) => [...files]));

  it('the form comes once, with at most 12 KB; what follows it adds at most 6 KB', () => {
    const come = new Set(atOnce);
    const heaviestFirst = first
      .map(([name, files]) => ({ name, files, own: weightOfFiles([name], site) }))
      .sort((a, b) => b.own - a.own);
    expect(heaviestFirst.length).toBeGreaterThan(0);
    for (const [index, { name, files }] of heaviestFirst.entries()) {
      const news = [...files].filter((file) => !come.has(file));
      const weights = new Map(news.map((file) => [file, weightOfFiles([file], site)]));
      within((index === 0 ? 12 : 6) * KB, weights, name);
      for (const file of files) come.add(file);
    }
  });

  it.each(Object.entries(tools))('the tool %s brings at most %i KB', (tool, allowed) => {
    const file = asked.find((one) => nameOf(one) === tool);
    expect(file, 'file of the tool').toBeDefined();
    const news = [...withImports([file as string], site)].filter((one) => !atOnce.has(one));
    within(allowed * KB, new Map(news.map((one) => [one, weightOfFiles([one], site)])), tool);
  });

  /** A plan or a log brings its tables and its reasons along; a formula or a drawing does not. */
  const procedures = new Set(
    calculations.filter(({ kind }) => kind === 'procedure').map(({ id }) => id),
  );

  /** A whole tool, fetched by a press of its button. */
  const pressedFor = new Set(['fade', 'practice-live', 'why-wrong']);

  it('each formula and each drawing adds at most 3 KB, each procedure with its tables and its geometry 7 KB, what a button asks for 8 KB', () => {
    const next = askedForLater(shared, site);
    const each = [...new Set([...next, ...askedForLater(withImports(next, site), site)])].filter(
      (file) => !shared.has(file),
    );
    expect(each.length, 'files loaded on demand').toBeGreaterThan(0);
    for (const name of each) {
      const news = [...withImports([name], site)].filter(
        (file) => !shared.has(file) && !atOnce.has(file),
      );
      const id = nameOf(name);
      const allowed = pressedFor.has(id) ? 8 : procedures.has(id) ? 7 : 3;
      within(allowed * KB, new Map(news.map((file) => [file, weightOfFiles([file], site)])), name);
    }
  });
});
