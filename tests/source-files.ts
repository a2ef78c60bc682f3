import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('..', import.meta.url));

export interface SourceFile {
  /** From the top of the repository, with `/`. */
  path: string;
  text: string;
}

/** Every file of the project that is not made by a command, found without asking git. */
export function sourceFiles(): SourceFile[] {
  const made = readFileSync(`${repository}.gitignore`, 'utf8').split('\n').filter(Boolean);
  const isMade = (name: string) =>
    name === '.git' ||
    made.some(
      (rule) => rule === `${name}/` || (rule.startsWith('*') && name.endsWith(rule.slice(1))),
    );
  const walk = (folder: string): string[] =>
    readdirSync(repository + folder, { withFileTypes: true })
      .filter((entry) => !isMade(entry.name))
      .flatMap((entry) =>
        entry.isDirectory() ? walk(`${folder}${entry.name}/`) : [folder + entry.name],
      );
  return walk('').map((path) => ({ path, text: readFileSync(repository + path, 'utf8') }));
}
