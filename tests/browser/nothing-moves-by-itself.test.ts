import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

interface LayoutShift extends PerformanceEntry {
  value: number;
  sources: { node: Node | null }[];
}

describe('the layout stands still from the first paint to the last line', () => {
  it.each(sampledPages)('%s', async (path) => {
    const shifts = await visit(
      path,
      { width: 360, height: 2000, units: 'metric' },
      async ({ page, quiet }) => {
        await quiet();
        await readToTheEnd(page, 30);
        await quiet();
        return shiftsOn(page);
      },
    );
    expect(shifts).toEqual([]);
  });
});

/** Each shift as `how far: what moved`. */
async function shiftsOn(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const seen: string[] = [];
    const describe = (node: Node | null) =>
      (node instanceof Element ? node : node?.parentElement)?.outerHTML.slice(0, 120) ??
      'something gone';
    new PerformanceObserver((list) => {
      for (const { value, sources } of list.getEntries() as LayoutShift[]) {
        seen.push(`${value.toFixed(4)}: ${sources.map(({ node }) => describe(node)).join(' | ')}`);
      }
    }).observe({ type: 'layout-shift', buffered: true });
    await new Promise((done) => setTimeout(done, 50));
    return seen;
  });
}
