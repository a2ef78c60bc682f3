/**
 * A formula's text with each name replaced: by its symbol for the symbol line, by a value with its
 * unit for the line with numbers.
 */
export const substitute = (
  formula: string,
  replacement: (name: string) => string | undefined,
): string => formula.replace(/[A-Za-z][A-Za-z0-9]*(?!\s*\()/g, (name) => replacement(name) ?? name);
