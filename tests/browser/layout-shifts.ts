import type { Page } from 'playwright-core';

interface LayoutShift extends PerformanceEntry {
  value: number;
  sources: { node: Node | null }[];
}

/** What moved by itself since the page began to load, a line each: `how far: what`. */
export async function shiftsOn(page: Page): Promise<string[]> {
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
