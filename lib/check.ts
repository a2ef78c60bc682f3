/**
 * A published value beside the computed one.
 */
import { readFraction } from './text/inches.ts';

export interface Compared {
  agrees: boolean;
  /** Computed less printed, where both are numbers. */
  difference?: number;
  /** The largest difference that still agrees. */
  within?: number;
}

/**
 * Half a unit of the last printed digit: `0.84` stands for 0.835 to 0.845, `1970` for ±0.5. A
 * fraction such as `3/16` is a size on a rule and stands for itself alone.
 */
export function halfLastDigit(printed: string): number {
  if (printed.includes('/')) return 1e-9;
  const [, decimals = ''] = printed.trim().split('.');
  return 0.5 * 10 ** -decimals.length;
}

/** Numbers agree within half a unit of the last printed digit, or within a stated tolerance. */
export function compare(printed: string, computed: unknown, tolerance?: number): Compared {
  if (typeof computed !== 'number') {
    const shown = computed === null ? 'none' : String(computed);
    return { agrees: shown === printed };
  }
  const value = readFraction(printed) ?? Number(printed);
  if (printed.trim() === '' || Number.isNaN(value)) return { agrees: false };
  const within = tolerance ?? halfLastDigit(printed);
  const difference = computed - value;
  return {
    agrees: Math.abs(difference) <= within * (1 + 1e-9),
    difference,
    within,
  };
}

/** How near a computed value lies to a printed one. */
export type Nearness = 'same' | 'close' | 'within' | 'stated' | 'off';

/** @param stated whether a wider tolerance than half the last digit is stated, with its reason */
export function nearness({ agrees, difference = 0, within }: Compared, stated: boolean): Nearness {
  if (!agrees) return 'off';
  if (Math.abs(difference) < 1e-9) return 'same';
  if (stated) return 'stated';
  return within !== undefined && Math.abs(difference) > within / 2 ? 'within' : 'close';
}
