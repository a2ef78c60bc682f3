/**
 * The picture on the bench, kept in this browser so that a reload does not lose it. One at a time, and
 * only when it is small; where the browser keeps nothing, every call answers that there is none.
 */
const database = 'sixteenths.section';
const shelf = 'pictures';
/** In bytes. A scaled-down photograph is a tenth of this; an etched face saved without loss may be more. */
const largest = 8_000_000;

const opened = (): Promise<IDBDatabase> =>
  new Promise((done, fail) => {
    const asked = indexedDB.open(database, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(shelf);
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error);
    asked.onblocked = () => fail(new Error('blocked'));
  });

async function within<T>(
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T | undefined> {
  try {
    const base = await opened();
    try {
      return await new Promise<T>((done, fail) => {
        const turn = base.transaction(shelf, mode);
        const asked = work(turn.objectStore(shelf));
        turn.oncomplete = () => done(asked.result);
        turn.onabort = turn.onerror = () => fail(turn.error);
      });
    } finally {
      base.close();
    }
  } catch {
    return undefined;
  }
}

/** Whether it could be kept. */
export async function keepPicture(blob: Blob): Promise<boolean> {
  if (blob.size > largest) {
    await forgetPicture();
    return false;
  }
  return (await within('readwrite', (store) => store.put(blob, 'last'))) !== undefined;
}

export async function keptPicture(): Promise<Blob | undefined> {
  const found: unknown = await within('readonly', (store) => store.get('last'));
  return found instanceof Blob ? found : undefined;
}

export async function forgetPicture(): Promise<void> {
  await within('readwrite', (store) => store.delete('last'));
}
