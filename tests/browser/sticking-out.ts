import type { Page } from 'playwright-core';

/**
 * What reaches past the right edge, unless it scrolls inside a frame of its own: how wide the page
 * is, and the first three elements that make it so. Empty when the page needs no sideways scrolling.
 */
export async function stickingOut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const room = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= room) return [];
    const scrollsInside = (element: Element | null): boolean =>
      element !== null &&
      element !== document.body &&
      (/auto|scroll|hidden|clip/.test(getComputedStyle(element).overflowX) ||
        scrollsInside(element.parentElement));
    const wide = [...document.body.querySelectorAll('*')].filter(
      (element) =>
        element.getBoundingClientRect().right > room + 0.5 && !scrollsInside(element.parentElement),
    );
    const widest = document.documentElement.scrollWidth;
    return [
      `at ${room} px the page is ${widest} px wide`,
      ...wide.slice(0, 3).map((element) => element.outerHTML.slice(0, 120)),
    ];
  });
}
