import type { Page } from 'playwright-core';

/** What comes alive does so this far, in pixels, before it comes into view: less than the loader's own. */
const ahead = 300;

/**
 * Scrolls through the page and back, so that all that waits to be seen comes alive.
 * A pause at each screen, in milliseconds, lets it come alive in sight.
 */
export async function readToTheEnd(page: Page, pause = 0): Promise<void> {
  const skipped = pause > 0 ? 0 : 2 * ahead;
  await page.evaluate(
    async ({ pause, skipped }) => {
      // Once a frame is drawn, the page has noticed what came into view.
      const drawn = () =>
        new Promise((done) => requestAnimationFrame(() => setTimeout(done, pause)));
      for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight + skipped) {
        scrollTo(0, y);
        await drawn();
      }
      scrollTo(0, document.documentElement.scrollHeight);
      await drawn();
      scrollTo(0, 0);
      await drawn();
    },
    { pause, skipped },
  );
}
