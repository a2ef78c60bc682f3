import type { Page } from 'playwright-core';

/**
 * Scrolls through the page and back, so that all that waits to be seen comes alive.
 * A pause at each screen, in milliseconds, lets it come alive in sight.
 */
export async function readToTheEnd(page: Page, pause = 0): Promise<void> {
  await page.evaluate(async (pause) => {
    const nextFrame = () => new Promise((done) => requestAnimationFrame(done));
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await nextFrame();
      await nextFrame();
      await new Promise((done) => setTimeout(done, pause));
    }
    scrollTo(0, 0);
    await nextFrame();
  }, pause);
}
