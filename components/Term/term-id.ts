/** The anchor of a term on the glossary page: `weld pool` becomes `weld-pool`. */
export const termId = (term: string): string =>
  term
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
