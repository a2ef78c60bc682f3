import { ruleOf } from './inches.ts';
import { printStated } from './quantity-text.ts';

/**
 * A computed length in braces for `say.ts`. One that lies on a rule is stated in inches; any other,
 * such as 200 mm, is printed in both systems, so that nobody reads its twelve decimals.
 */
export function lengthText(inches: number): string {
  if (ruleOf(inches) !== undefined) return `{${plain(printStated(inches, 'in'))}}`;
  const shown = [printStated(inches, 'in'), printStated(inches * 25.4, 'mm')];
  return `{${shown.map(plain).join('|')}}`;
}

const plain = (text: string): string => text.replace('\u00a0', ' ');
