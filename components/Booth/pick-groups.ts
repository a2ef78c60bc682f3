/** What a desk offers to choose from: the page's own list, which stands there without scripts too. */
export interface Group {
  title: string;
  picks: readonly { value: string; title: string }[];
}

export interface Offered {
  groups: Group[];
  /** What was chosen while the page was still loading; '' when nothing. */
  chosen: string;
}

/** Reads the list and the choice made in it, and empties the place for what comes alive in it. */
export function takeOffered(place: HTMLElement): Offered {
  const chosen = place.querySelector('select')?.value ?? '';
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
  return { groups, chosen };
}
