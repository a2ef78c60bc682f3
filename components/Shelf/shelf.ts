/**
 * The place in the browser where a reader's own work lies: one text per kind of file, in the form in
 * which it is also saved to disk. A shelf never loses what it holds: a text that it cannot read is
 * set aside under another key, and one that a newer version wrote is left alone.
 */
import { type FileKind, readFile, writeFile } from '../../lib/files/file-kind.ts';

export interface Taken<T> {
  data: T;
  /** A sentence, when the shelf is closed or what lay there could not be read. */
  problem?: string;
}

export class Shelf<T> {
  readonly key: string;
  readonly kind: FileKind<T>;
  private readonly empty: () => T;
  /** The text as this tab last saw it: another one there means that another tab was quicker. */
  private seen: string | null = null;
  private locked: string | undefined;

  constructor(kind: FileKind<T>, empty: () => T) {
    this.kind = kind;
    this.empty = empty;
    this.key = `sixteenths.${kind.name}`;
  }

  /** What lies on the shelf, or an empty one. */
  take(): Taken<T> {
    let text: string | null;
    try {
      text = localStorage.getItem(this.key);
    } catch {
      return { data: this.empty(), problem: closed };
    }
    this.seen = text;
    this.locked = undefined;
    if (text === null) return { data: this.empty() };
    const read = readFile(this.kind, text);
    if (read.ok) return { data: read.data };
    if (read.newer) {
      this.locked =
        'A newer version of this site keeps this here. Reload the page to go on with it';
      return { data: this.empty(), problem: this.locked };
    }
    return { data: this.empty(), problem: this.setAside(text) };
  }

  /** Keeps `data`; a sentence when that was not possible. */
  put(data: T): string | undefined {
    if (this.locked) return this.locked;
    const text = writeFile(this.kind, data, new Date().toISOString());
    try {
      if (localStorage.getItem(this.key) !== this.seen) return elsewhere;
      localStorage.setItem(this.key, text);
      this.seen = text;
      return undefined;
    } catch (thrown) {
      return thrown instanceof DOMException && thrown.name === 'QuotaExceededError' ? full : closed;
    }
  }

  /** Leaves nothing here. */
  clear(): void {
    try {
      localStorage.removeItem(this.key);
    } catch {
      // Nothing could be kept, so nothing is left.
    }
    this.seen = null;
  }

  /** Calls back when another tab has put something new here. Returns what ends the watch. */
  watch(changed: (taken: Taken<T>) => void): () => void {
    const listen = ({ key }: StorageEvent) => {
      if (key === this.key || key === null) changed(this.take());
    };
    addEventListener('storage', listen);
    return () => removeEventListener('storage', listen);
  }

  private setAside(text: string): string {
    try {
      localStorage.setItem(`${this.key}.damaged`, text);
      localStorage.removeItem(this.key);
      this.seen = null;
      return 'What was kept here could not be read. It was set aside, and this starts empty';
    } catch {
      this.locked = 'What is kept here could not be read, and there is no room to set it aside';
      return this.locked;
    }
  }
}

const closed = 'This browser does not let the page keep anything. Save to a file before you leave';
const full = 'The browser has no room left. Save to a file before you leave';
const elsewhere =
  'Another tab has changed this meanwhile. Reload to see it, or save yours to a file first';
