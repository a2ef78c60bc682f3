import type { Page } from 'playwright-core';

/** One stop of a screen reader: what it is, what it is called, and what is said beside. */
export interface Heard {
  role: string;
  name: string;
  description: string;
  value: string;
  level?: number;
  invalid: boolean;
}

/**
 * The page as a screen reader goes through it, from the browser's accessibility tree: what is hidden
 * is left out, and what only groups other things and has no name.
 */
export async function heard(page: Page): Promise<Heard[]> {
  const devtools = await page.context().newCDPSession(page);
  const { nodes } = await devtools.send('Accessibility.getFullAXTree');
  await devtools.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const stops: Heard[] = [];
  const walk = (id: string) => {
    const node = byId.get(id);
    if (!node) return;
    if (!node.ignored) {
      const property = (name: string) =>
        node.properties?.find((one) => one.name === name)?.value.value;
      const stop: Heard = {
        role: String(node.role?.value ?? ''),
        name: String(node.name?.value ?? '').trim(),
        description: String(node.description?.value ?? '').trim(),
        value: String(node.value?.value ?? ''),
        invalid: property('invalid') === 'true',
      };
      const level = property('level');
      stops.push(level === undefined ? stop : { ...stop, level: Number(level) });
    }
    for (const child of node.childIds ?? []) walk(child);
  };
  const root = nodes.find(({ parentId }) => parentId === undefined);
  if (root) walk(root.nodeId);
  return stops.filter(
    ({ role, name }) => role !== 'InlineTextBox' && (name !== '' || !silent.has(role)),
  );
}

/** What a screen reader passes over, or says as part of what it lies in. */
const silent = new Set(['generic', 'none', 'paragraph', 'LabelText', 'Legend', 'LineBreak']);

/** Starts to note what live regions say; call `spoken` for what was said since. */
export const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const live = '[aria-live]:not([aria-live="off"]), [role="status"], [role="alert"], output';
    const regions = new Set<Element>();
    const last = new Map<Element, string>();
    let waiting = false;
    const wordsOf = (region: Element) => {
      // biome-ignore lint/performance/useDomNodeTextContent: what is hidden is not spoken
      const text = region instanceof HTMLElement ? region.innerText : region.textContent;
      return region.checkVisibility() ? (text ?? '').replace(/\s+/g, ' ').trim() : '';
    };
    for (const region of document.querySelectorAll(live)) last.set(region, wordsOf(region));
    // A screen reader waits until a region has stopped changing, and reads what is shown.
    const speak = () => {
      waiting = false;
      for (const region of regions) {
        const words = wordsOf(region);
        if (words && words !== last.get(region)) said.push(words);
        last.set(region, words);
      }
      regions.clear();
    };
    new MutationObserver((changes) => {
      for (const { target, addedNodes } of changes) {
        const element = target instanceof Element ? target : target.parentElement;
        const region = element?.closest(live);
        if (region) regions.add(region);
        // One that comes into being with its words is only spoken when it is an alert.
        for (const node of addedNodes)
          if (node instanceof Element)
            for (const alert of [node, ...node.querySelectorAll('*')])
              if (alert.matches('[role="alert"]')) regions.add(alert);
      }
      if (regions.size > 0 && !waiting) {
        waiting = true;
        setTimeout(speak, 50);
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });

/** What live regions have said since the last time, in order. */
export const spoken = (page: Page): Promise<string[]> =>
  page.evaluate(() => (window as unknown as { said: string[] }).said.splice(0));
