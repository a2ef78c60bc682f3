/**
 * What a reader typed, inside one of our sentences. Braces would be taken for a quantity of ours
 * (see `say.ts`), so they come back as parentheses.
 */
export function quoted(typed: string, most = 24): string {
  const text = typed.length > most ? `${typed.slice(0, most)}…` : typed;
  return `“${text.replaceAll('{', '(').replaceAll('}', ')')}”`;
}
