import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRef,
} from 'pdf-lib';
import type { Page } from 'playwright-core';

export interface Printed {
  pages: number;
  /** What lies on two pages or more and should lie on one: `TR 12 on pages 3, 4`. */
  cut: string[];
  /** Headings at the end of a page whose text begins on the next: `H2 3 on page 2`. */
  alone: string[];
}

/** What must not be parted: a row, a heading, a drawing. Names of the standard PDF structure. */
const whole = new Set(['TR', 'H1', 'H2', 'H3', 'H4', 'Figure']);

/**
 * Prints the open page and reads from the tags of the PDF (ISO 32000-1, 14.7) on which page each
 * part of it came to lie.
 */
export async function printed(page: Page, format: 'Letter' | 'A4'): Promise<Printed> {
  const document = await PDFDocument.load(
    await page.pdf({ format, tagged: true, preferCSSPageSize: true }),
  );
  const places = new Map(document.getPages().map(({ ref }, at) => [ref.toString(), at + 1]));
  const root = document.catalog.lookup(PDFName.of('StructTreeRoot'), PDFDict);
  const counted = new Map<string, number>();
  const found: Printed = { pages: document.getPageCount(), cut: [], alone: [] };
  let heading: { name: string; on: number } | undefined;

  /** A row of headings is printed again on each page that its table reaches. */
  const repeats = (node: PDFDict, kind: string): boolean =>
    kind === 'TR' && !cellsOf(node).includes('TD');
  const cellsOf = (row: PDFDict): string[] => {
    const kids = row.lookup(PDFName.of('K'));
    return (kids instanceof PDFArray ? kids.asArray() : [kids]).map((kid) => {
      const cell = kid instanceof PDFRef ? document.context.lookup(kid) : kid;
      return cell instanceof PDFDict ? String(cell.get(PDFName.of('S'))).slice(1) : '';
    });
  };

  /** The pages on which a tag's content lies, in reading order. */
  function pagesOf(tag: PDFObject | undefined, inherited: number | undefined): number[] {
    const node = tag instanceof PDFRef ? document.context.lookup(tag) : tag;
    if (node instanceof PDFArray)
      return node.asArray().flatMap((child) => pagesOf(child, inherited));
    if (node instanceof PDFNumber) return inherited === undefined ? [] : [lies(inherited)];
    if (!(node instanceof PDFDict) || node.get(PDFName.of('Type')) === PDFName.of('OBJR'))
      return [];
    const here = places.get(String(node.get(PDFName.of('Pg')))) ?? inherited;
    if (node.has(PDFName.of('MCID'))) return here === undefined ? [] : [lies(here)];
    const kind = String(node.get(PDFName.of('S'))).slice(1);
    const name = `${kind} ${(counted.get(kind) ?? 0) + 1}`;
    if (whole.has(kind)) counted.set(kind, (counted.get(kind) ?? 0) + 1);
    const isHeading = /^H\d/.test(kind);
    if (isHeading) heading = undefined;
    const on = [...new Set(pagesOf(node.get(PDFName.of('K')), here))];
    if (whole.has(kind) && on.length > 1 && !repeats(node, kind))
      found.cut.push(`${name} on pages ${on.join(', ')}`);
    if (isHeading && on.length > 0) heading = { name, on: on.at(-1) as number };
    return on;
  }

  /** Marks content on a page; the first after a heading has to lie on the heading's page. */
  function lies(on: number): number {
    if (heading && heading.on !== on) found.alone.push(`${heading.name} on page ${heading.on}`);
    heading = undefined;
    return on;
  }

  pagesOf(root.get(PDFName.of('K')), undefined);
  return found;
}

/**
 * What a printer without color would lose: ink that is not gray or nearly so, and text lighter than 7 to 1 on
 * white (WCAG 2.2, 1.4.6), each kind once. Pictures are left out.
 */
export async function lostWithoutColor(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  const lost = await page.evaluate(() => {
    const found = new Map<string, string>();
    const note = (what: string, element: Element) =>
      found.set(what, `${what}: ${element.outerHTML.slice(0, 120)}`);
    const parts = (color: string) => (color.match(/[\d.]+/g) ?? []).map(Number);
    for (const element of document.body.querySelectorAll('*')) {
      if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      // The lines on a picture carry their names.
      if (element.closest('.section-annotated')) continue;
      const style = getComputedStyle(element);
      const speaks = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
      );
      const drawn = element instanceof SVGGeometryElement || element instanceof SVGTextElement;
      const inks = [
        ...(speaks ? [drawn || element.closest('svg text') ? style.fill : style.color] : []),
        ...(drawn ? [style.fill, style.stroke] : []),
        ...(Number.parseFloat(style.borderTopWidth) > 0 ? [style.borderTopColor] : []),
        ...(Number.parseFloat(style.borderLeftWidth) > 0 ? [style.borderLeftColor] : []),
      ];
      for (const ink of inks) {
        if (!ink.startsWith('rgb')) continue;
        const [red = 0, green = 0, blue = 0, alpha = 1] = parts(ink);
        if (alpha > 0 && Math.max(red, green, blue) - Math.min(red, green, blue) > 24)
          note(`ink ${ink}`, element);
      }
      if (!speaks) continue;
      const [red = 0, , , alpha = 1] = parts(inks[0] as string);
      const byte =
        (red * alpha + 255 * (1 - alpha)) * Number(style.opacity) +
        255 * (1 - Number(style.opacity));
      // #595959 on white is 7.0 to 1.
      if (byte > 0x59) note(`text as light as ${byte.toFixed(0)}`, element);
    }
    return [...found.values()];
  });
  await page.emulateMedia({ media: null });
  return lost;
}
