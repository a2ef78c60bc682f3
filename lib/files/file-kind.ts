/**
 * What a reader keeps, as a file: JSON with a name, a version and the day it was saved. Anything
 * else is refused with a sentence, so that a foreign, damaged or newer file never replaces good data.
 */
import * as v from 'valibot';

/** One kind of file: a class plan, a learner's record. */
export interface FileKind<T> {
  /** Stands in the file and in the browser's storage. Never renamed. */
  name: string;
  /** What readers call it, with its article: "a class plan". */
  title: string;
  /** Counted up when the shape changes. */
  version: number;
  /** The shape of the newest version. */
  schema: v.GenericSchema<unknown, T>;
  /** From the version that is its key to the next one. */
  upgrade?: Readonly<Record<number, (data: unknown) => unknown>>;
}

export type FileRead<T> =
  | { ok: true; data: T; saved: string }
  /** `newer`: a later version of this site wrote it, and an earlier one must leave it alone. */
  | { ok: false; problem: string; newer?: true };

/** More than any plan or record needs; a larger text is somebody's mistake. */
const longest = 8_000_000;

const envelope = v.object({
  sixteenths: v.string(),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  saved: v.optional(v.string(), ''),
  data: v.unknown(),
});

/** The text of a file. `saved` is a day or an instant in ISO 8601. */
export function writeFile<T>({ name, version }: FileKind<T>, data: T, saved: string): string {
  return `${JSON.stringify({ sixteenths: name, version, saved, data }, null, 1)}\n`;
}

/** Reads what `writeFile` wrote, in this version or an earlier one. */
export function readFile<T>(kind: FileKind<T>, text: string): FileRead<T> {
  if (text.length > longest) return refuse(`This file is too large to be ${kind.title}`);
  const json = parse(text);
  if (json === undefined) return refuse('This file is damaged, or no file of this site');
  const found = v.safeParse(envelope, json);
  if (!found.success) return refuse('This file was not saved by this site');
  const { sixteenths, version, saved } = found.output;
  if (sixteenths !== kind.name) return refuse(`This file is not ${kind.title}`);
  if (version > kind.version)
    return {
      ...refuse(
        'This file comes from a newer version of this site. Reload the page, then try again',
      ),
      newer: true,
    };
  let data: unknown = found.output.data;
  try {
    for (let step = version; step < kind.version; step++)
      data = kind.upgrade?.[step]?.(data) ?? data;
  } catch {
    return refuse('This file comes from an older version of this site and is damaged');
  }
  const read = v.safeParse(kind.schema, data);
  if (read.success) return { ok: true, data: read.output, saved };
  const [issue] = read.issues;
  const place = v.getDotPath(issue);
  return refuse(`This file does not fit${place ? ` at "${place}"` : ''}: ${lower(issue.message)}`);
}

const refuse = (problem: string): { ok: false; problem: string } => ({ ok: false, problem });

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function parse(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
