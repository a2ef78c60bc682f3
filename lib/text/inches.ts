/**
 * Fractions of an inch, as a rule is read: `5/16`, `1-3/8`, `1 3/8`.
 */

/** Sign, whole and fraction as typed. */
const shape = /^(?:([+\-−])\s*)?(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\s*\/\s*(\d+)$/;

const single: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Writes the one-character fractions out, so that `1½` reads as `1 1/2`. */
export const spellFractions = (text: string): string =>
  text.replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${single[sign]}`).trim();

/**
 * Reads a fraction. Returns undefined for text of another shape and NaN for a fraction over zero.
 * A whole number before the fraction needs a proper fraction behind it: `1-5/4` is not a size
 * that anybody writes on purpose.
 */
export function readFraction(text: string): number | undefined {
  const found = shape.exec(text);
  if (!found) return undefined;
  const [, sign = '+', whole, top, bottom] = found;
  const numerator = Number(top);
  const denominator = Number(bottom);
  if (denominator === 0) return Number.NaN;
  if (whole !== undefined && numerator >= denominator) return Number.NaN;
  const size = Number(whole ?? 0) + numerator / denominator;
  return sign === '+' ? size : 0 - size;
}

/** The nearest fraction on a rule divided into `parts`, written the way the trade writes it. */
export function printFraction(value: number, parts: number): string {
  const sign = value < 0 ? '−' : '';
  let numerator = Math.round(Math.abs(value) * parts);
  let denominator = parts;
  const whole = Math.floor(numerator / denominator);
  numerator -= whole * denominator;
  while (numerator > 0 && numerator % 2 === 0 && denominator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  if (numerator === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole}-` : ''}${numerator}/${denominator}`;
}

/** The coarsest rule (down to 64ths) on which the value lies, or undefined. */
export function ruleOf(value: number): number | undefined {
  return [1, 2, 4, 8, 16, 32, 64].find(
    (parts) => Math.abs(value * parts - Math.round(value * parts)) < 1e-9 * parts,
  );
}
