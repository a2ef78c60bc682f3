/** What a desk offers to choose from: the page's own list, which stands there without scripts too. */
export interface Group {
  title: string;
  picks: readonly { value: string; title: string }[];
}

/** Reads the list, and empties the place for what comes alive in it. */
export function takeGroups(place: HTMLElement): Group[] {
  const groups = [...place.querySelectorAll('optgroup')].map(
    (group): Group => ({
      title: group.label,
      picks: [...group.querySelectorAll('option')].map(({ value, text }) => ({
        value,
        title: text,
      })),
    }),
  );
  place.replaceChildren();
  return groups;
}
