import { readdirSync } from 'node:fs';

/** The ids of all calculations: the names of their files. */
export const calculationIds = (): string[] =>
  readdirSync('lib/calculations')
    .filter((name) => name.endsWith('.ts'))
    .map((name) => name.replace('.ts', ''))
    .sort();
