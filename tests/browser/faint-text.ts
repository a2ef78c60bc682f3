import type { Page } from 'playwright-core';

/**
 * Text that stands out too little from its ground (WCAG 2.2, 1.4.3: 4.5 to 1, large text 3 to 1),
 * each kind once, as `3.9 to 1: its words`. Grounds are those of the element and what it lies in, laid
 * over each other; text in drawings, which lies on shapes, is left to axe. Takes milliseconds where
 * axe, which asks what lies on top at every point, takes seconds.
 */
export async function faintText(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    type Color = [red: number, green: number, blue: number, alpha: number];
    const pen = Object.assign(document.createElement('canvas'), { width: 1, height: 1 }).getContext(
      '2d',
      { willReadFrequently: true },
    );
    if (!pen) throw new Error('no canvas to read colors with');
    const read = new Map<string, Color>();
    /** Whatever way a color is written, it is what the browser paints. */
    const colorOf = (text: string): Color => {
      const known = read.get(text);
      if (known) return known;
      pen.clearRect(0, 0, 1, 1);
      pen.fillStyle = text;
      pen.fillRect(0, 0, 1, 1);
      const [red, green, blue, alpha] = pen.getImageData(0, 0, 1, 1).data as unknown as Color;
      const color: Color = [red, green, blue, alpha / 255];
      read.set(text, color);
      return color;
    };
    const over = ([r, g, b, a]: Color, [R, G, B]: Color): Color => [
      r * a + R * (1 - a),
      g * a + G * (1 - a),
      b * a + B * (1 - a),
      1,
    ];
    const grounds = new Map<Element, Color>();
    const groundOf = (element: Element | null): Color => {
      if (!element) return [255, 255, 255, 1];
      const known = grounds.get(element);
      if (known) return known;
      const ground = over(
        colorOf(getComputedStyle(element).backgroundColor),
        groundOf(element.parentElement),
      );
      grounds.set(element, ground);
      return ground;
    };
    const opacityOf = (element: Element | null): number =>
      element ? Number(getComputedStyle(element).opacity) * opacityOf(element.parentElement) : 1;
    const luminance = (color: Color) => {
      const [r, g, b] = color.slice(0, 3).map((byte) => {
        const part = byte / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      }) as [number, number, number];
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };

    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const speaking = new Set<Element>(
      document.querySelectorAll(
        'input:not([type=radio], [type=checkbox], [type=range]), select, textarea',
      ),
    );
    while (words.nextNode())
      if (words.currentNode.textContent?.trim() && words.currentNode.parentElement)
        speaking.add(words.currentNode.parentElement);

    const faint = new Map<string, string>();
    for (const element of speaking) {
      if (element.closest('svg, script, style, :disabled')) continue;
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      const { color, fontSize, fontWeight } = getComputedStyle(element);
      const ground = groundOf(element);
      const [r, g, b, alpha] = colorOf(color);
      const ink = over([r, g, b, alpha * opacityOf(element)], ground);
      const [dark = 0, light = 0] = [luminance(ink), luminance(ground)].sort((a, b) => a - b);
      const ratio = (light + 0.05) / (dark + 0.05);
      const size = Number.parseFloat(fontSize);
      const large = size >= 24 || (size >= 18.66 && Number(fontWeight) >= 700);
      if (ratio < (large ? 3 : 4.5))
        faint.set(
          `${color} on ${ground}`,
          `${ratio.toFixed(1)} to 1: ${element.outerHTML.slice(0, 120)}`,
        );
    }
    return [...faint.values()];
  });
}
