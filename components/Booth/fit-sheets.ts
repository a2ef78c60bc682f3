/**
 * Makes each booth sheet fit one side of Letter and of A4: its letters get smaller step by step until
 * it does. Measured on a copy as wide as paper, since the sheet itself may be shown on a phone.
 */
import { currentSystem } from '../Calculator/already-there.ts';

const millimeter = 96 / 25.4;
/** What both papers leave inside the page's margins. */
const width = 184 * millimeter;
const height = 252 * millimeter;
/** In points: from what reads well at arm's length down to what still can be read. */
const [largest, least, step] = [10, 6, 0.25];

let asked = false;
/** What each sheet held when it was measured; the same is not measured again. */
const measured = new WeakMap<HTMLElement, string>();

/** Measures once, however often it is asked within a frame. */
export function fitSheetsSoon(): void {
  if (asked) return;
  asked = true;
  requestAnimationFrame(() => {
    asked = false;
    fitSheets();
  });
}

/** Measures at once, as printing asks for it. */
export function fitSheets(): void {
  const host = document.createElement('div');
  host.className = 'booth-measure';
  host.setAttribute('aria-hidden', 'true');
  host.style.setProperty('width', `${width}px`);
  document.querySelector('main')?.append(host);
  for (const sheet of document.querySelectorAll<HTMLElement>('.booth-sheets > .booth-sheet')) {
    const holds = currentSystem() + sheet.innerHTML;
    if (measured.get(sheet) === holds) continue;
    measured.set(sheet, holds);
    const copy = sheet.cloneNode(true) as HTMLElement;
    copy.removeAttribute('aria-label');
    host.replaceChildren(copy);
    sheet.style.setProperty('--size', `${largestThatFits(copy)}pt`);
  }
  host.remove();
}

/** By halving, since each try lays the whole sheet out anew. The least one, where none fits. */
function largestThatFits(copy: HTMLElement): number {
  const fits = (size: number) => {
    copy.style.setProperty('--size', `${size}pt`);
    return copy.offsetHeight <= height;
  };
  if (fits(largest)) return largest;
  let low = 0;
  let high = (largest - least) / step;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(least + middle * step)) low = middle;
    else high = middle;
  }
  return least + low * step;
}
