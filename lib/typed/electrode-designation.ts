/** What is printed on an electrode, as one word: `E7018-1 H4R`, `7018H8`, `E8018-C3`. */

import { coverings } from '../tables/electrodes-a5.1.ts';

const a51 = /^(?:aws\s*)?e?[\s-]*(\d{4}(?:-1|m)?)[\s-]*((?:h(?:4|8|16))?r?)$/i;
/** Low-hydrogen electrodes of A5.5, by the two or three digits of their strength. */
const a55 =
  /^(?:aws\s*)?e?[\s-]*(70|80|90|100|110)(1[568])(?:m|[\s-]+(?!h\d|r$)[a-z]\w*)?[\s-]*((?:h(?:4|8|16))?r?)$/i;

export interface Designation {
  /** Classifications that may be meant: that of A5.1 before the row of A5.5 for its strength. */
  names: string[];
  /** What it is to the preheat table. */
  kind: 'low-hydrogen' | 'not low-hydrogen' | undefined;
  /** What follows, such as H4R. */
  designator: string | undefined;
}

/** Reads both parts; no names where it is no electrode. */
export function readDesignation(typed: string): Designation {
  const text = typed.trim();
  const carbon = a51.exec(text);
  const alloy = a55.exec(text);
  const names = [
    ...(carbon ? [`E${carbon[1]?.toUpperCase()}`] : []),
    ...(alloy ? [`E${alloy[1]}XX-X`] : []),
  ];
  const covering = coverings[carbon?.[1]?.slice(2, 4) ?? alloy?.[2] ?? ''];
  const kind = covering && (covering.lowHydrogen ? 'low-hydrogen' : 'not low-hydrogen');
  return { names, kind, designator: (carbon?.[2] || alloy?.[3])?.toUpperCase() || undefined };
}
