/**
 * What makes a box that scrolls sideways reachable by the keyboard and named to those who hear it.
 * @param label what is in the box, in a word
 */
export const scrollingBox = (label: string) =>
  ({ role: 'group', 'aria-label': label, tabindex: 0 }) as const;
