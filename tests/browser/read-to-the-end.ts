import type { Page } from 'playwright-core';

/** What comes alive does so this far, in pixels, before it comes into view: less than the loader's own. */
const ahead = 300;

/**
 * Scrolls through the page and back, so that all that waits to be seen comes alive. With a pause, in
 * milliseconds, it goes on as a reader does: by less than what comes alive ahead, and in sight.
 */
export async function readToTheEnd(page: Page, pause = 0): Promise<void> {
  await page.evaluate(
    async ({ pause, ahead }) => {
      // Once a frame is drawn, the page has noticed what came into view.
      const drawn = () =>
        new Promise((done) => requestAnimationFrame(() => setTimeout(done, pause)));
      const step = pause > 0 ? ahead : innerHeight + 2 * ahead;
      for (let y = 0; y < document.documentElement.scrollHeight; y += step) {
        scrollTo(0, y);
        await drawn();
      }
      scrollTo(0, document.documentElement.scrollHeight);
      await drawn();
      scrollTo(0, 0);
      await drawn();
    },
    { pause, ahead },
  );
}
