/**
 * The small changes that a mutation run makes, and the code that holds them all behind switches.
 *
 * Stryker's instrumenter writes them: each changed place becomes `is change 17 on ? changed : as it was`.
 * The code is loaded once and each change is then only a switch away.
 */
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Instrumenter } from '@stryker-mutator/instrumenter';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** One change: where it stands, what stood there, what stands there now. */
export interface Change {
  id: string;
  file: string;
  line: number;
  column: number;
  kind: string;
  was: string;
  becomes: string;
}

/** Texts and the lists and records that hold them: what they say is proofread, not tested word by word. */
const leftOut = ['StringLiteral', 'ObjectLiteral', 'ArrayDeclaration'];

const quiet = {
  isTraceEnabled: () => false,
  isDebugEnabled: () => false,
  isInfoEnabled: () => false,
  isWarnEnabled: () => false,
  isErrorEnabled: () => false,
  isFatalEnabled: () => false,
  trace() {},
  debug() {},
  info() {},
  warn() {},
  error() {},
  fatal() {},
};

/** `files`: paths from the root. Gives every change in them, and the code of each file with all of its changes. */
export async function changesIn(
  files: string[],
): Promise<{ changes: Change[]; code: Map<string, string> }> {
  const made = await new Instrumenter(quiet).instrument(
    files.map((name) => ({
      name: root + name,
      mutate: true,
      content: readFileSync(root + name, 'utf8'),
    })),
    { plugins: null, excludedMutations: leftOut, ignorers: [], mutationLevel: undefined } as never,
  );
  const code = new Map(
    made.files.map(({ name, content }) => [relative(root, name), String(content)]),
  );
  const changes = made.mutants
    .filter(({ status }) => status !== 'Ignored')
    .map(({ id, fileName, location, mutatorName, replacement }) => {
      const file = relative(root, fileName);
      const lines = readFileSync(fileName, 'utf8')
        .split('\n')
        .slice(location.start.line, location.end.line + 1);
      lines[lines.length - 1] = lines.at(-1)?.slice(0, location.end.column) ?? '';
      lines[0] = lines[0]?.slice(location.start.column) ?? '';
      return {
        id,
        file,
        line: location.start.line + 1,
        column: location.start.column + 1,
        kind: mutatorName,
        was: lines.join('\n'),
        becomes: replacement,
      };
    });
  return { changes, code };
}
