import { promisifyRequest, type UseStore } from 'idb-keyval';
import { EPOCH_KEY, type Epoch, holdTo, Overtaken } from './epoch';
import { inTime } from './patience';

/** A key-value store in a database of its own, as `idb-keyval` takes it, and how to let go of it. */
export interface Store {
  readonly use: UseStore;
  /** What its writes are held to; `null` where any tab may write. */
  readonly epoch: Epoch | null;
  close(): void;
  /** Removes the whole database. */
  destroy(): Promise<void>;
}

const STORE = 'records';

/** What fails on the way comes to nothing: what was put before it must not stay. */
function endUnfinished(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It had ended by itself.
  }
}

/**
 * Opens a database when it is first used. The connection is given up when another tab wants to change or
 * remove the database, and opened again when it is needed; a connection that has died is replaced once. A transaction of which any part
 * fails is ended whole.
 * @param epoch that of the tab, where only the writing tab may change the database
 */
export function openStore(database: string, epoch: Epoch | null = null): Store {
  let connection: Promise<IDBDatabase> | null = null;

  const open = (): Promise<IDBDatabase> => {
    const request = indexedDB.open(database, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    const opened = promisifyRequest(request).then((db) => {
      const forget = () => {
        if (connection === opened) connection = null;
      };
      db.onversionchange = () => {
        forget();
        db.close();
      };
      db.onclose = forget;
      return db;
    });
    opened.catch(() => {
      if (connection === opened) connection = null;
    });
    return opened;
  };

  // What is said to be saved is on the disk, not on its way there: a crash of the machine takes nothing of it.
  const storeIn = (db: IDBDatabase, mode: IDBTransactionMode) =>
    db.transaction(STORE, mode, { durability: 'strict' }).objectStore(STORE);

  const use: UseStore = async (mode, act) => {
    connection ??= open();
    let store: IDBObjectStore;
    try {
      store = storeIn(await inTime(connection), mode);
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw error;
      connection = open();
      store = storeIn(await inTime(connection), mode);
    }
    try {
      return await act(store);
    } catch (error) {
      endUnfinished(store.transaction);
      throw error;
    }
  };

  const close = () => {
    void connection?.then((db) => db.close()).catch(() => undefined);
    connection = null;
  };

  epoch?.databases.push(use);
  return {
    use,
    epoch,
    close,
    async destroy() {
      close();
      await promisifyRequest(indexedDB.deleteDatabase(database));
    },
  };
}

/** Resolves when a transaction is on the disk, rejects when it came to nothing. */
export function settled(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new DOMException('aborted', 'AbortError'));
  });
}

/**
 * Puts and deletes in one transaction: all of it is on the disk, or none.
 * @throws {Overtaken} if another tab has been granted the lock
 */
export async function writeBatch(
  { use, epoch }: Store,
  puts: Iterable<readonly [string, unknown]>,
  deletes: Iterable<string>,
): Promise<void> {
  const current = epoch?.current;
  if (current === 0) throw new Overtaken('another tab writes');
  return use('readwrite', async (store) => {
    const { transaction } = store;
    const done = settled(transaction);
    done.catch(() => undefined);
    const isOvertaken = current ? holdTo(store, current) : () => false;
    for (const [key, value] of puts) store.put(value, key);
    for (const key of deletes) store.delete(key);
    try {
      await done;
    } catch (error) {
      throw isOvertaken() ? new Overtaken('another tab writes') : error;
    }
  });
}

/** The entries of an open transaction whose keys begin with a prefix; all of them for ''. */
export async function entriesIn(store: IDBObjectStore, prefix: string): Promise<[string, unknown][]> {
  const range = prefix === '' ? undefined : IDBKeyRange.bound(prefix, `${prefix}\uffff`);
  const asked = [store.getAllKeys(range), store.getAll(range)] as const;
  const [keys, values] = await Promise.all([
    promisifyRequest(asked[0]),
    promisifyRequest<unknown[]>(asked[1]),
  ]);
  return keys
    .map((key, index): [string, unknown] => [String(key), values[index]])
    .filter(([key]) => key !== EPOCH_KEY);
}

/** The entries whose keys begin with a prefix; all of them for ''. */
export const entriesWithPrefix = ({ use }: Store, prefix: string): Promise<[string, unknown][]> =>
  use('readonly', (store) => entriesIn(store, prefix));
