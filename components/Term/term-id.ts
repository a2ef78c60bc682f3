/** The anchor of a term on the glossary page: `weld pool` becomes `weld-pool`, `2G pipe` `term-2g-pipe`. */
export const termId = (term: string): string =>
  term
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .replace(/^(?=\d)/, 'term-');
