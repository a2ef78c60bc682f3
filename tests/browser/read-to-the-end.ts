import type { Page } from 'playwright-core';

/** Scrolls through the page and back, so that all that waits to be seen comes alive. */
export async function readToTheEnd(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const nextFrame = () => new Promise((done) => requestAnimationFrame(done));
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await nextFrame();
      await nextFrame();
    }
    scrollTo(0, 0);
    await nextFrame();
  });
}
