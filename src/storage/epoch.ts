import { promisifyRequest, type UseStore } from 'idb-keyval';

/**
 * Which grant of the lock a tab writes under: a number that grows by one at each grant. It is kept in every
 * database that the writing tab alone changes, and held against it inside each write transaction, so that a tab
 * whose lock was taken away, and which has not heard of it yet, changes nothing any more.
 */
export interface Epoch {
  /** 0 while this tab does not write. */
  current: number;
  readonly databases: UseStore[];
}

export const noEpoch = (): Epoch => ({ current: 0, databases: [] });

/** Where the epoch lies in each database; it is none of its entries. */
export const EPOCH_KEY = 'meta/epoch';

/** A write was refused, since another tab has been granted the lock. */
export class Overtaken extends Error {
  override readonly name = 'Overtaken';
}

export const epochIn = (value: unknown): number =>
  typeof value === 'number' && Number.isSafeInteger(value) ? value : 0;

/**
 * Ends the transaction unless the database is at the epoch under which it was begun. Requests of a transaction are
 * answered in their order, so this one is answered before it can commit, whatever is asked after it.
 * @returns tells afterwards whether the transaction was ended by this
 */
export function holdTo(records: IDBObjectStore, epoch: number): () => boolean {
  let isOvertaken = false;
  const stored = records.get(EPOCH_KEY);
  stored.onsuccess = () => {
    if (epochIn(stored.result) === epoch) return;
    isOvertaken = true;
    records.transaction.abort();
  };
  return () => isOvertaken;
}

/** The latest epoch in any of the databases; one that cannot be read has none. */
export async function latestEpoch(databases: readonly UseStore[]): Promise<number> {
  const epochs = databases.map((use) =>
    use('readonly', (records) => promisifyRequest<unknown>(records.get(EPOCH_KEY)))
      .then(epochIn)
      .catch(() => 0),
  );
  return Math.max(0, ...(await Promise.all(epochs)));
}

/**
 * Keeps the writes of earlier epochs out of the databases. One that cannot be written, or has a later epoch, stays as
 * it is: what is written there is refused then.
 */
export async function fence(databases: readonly UseStore[], epoch: number): Promise<void> {
  const fenced = databases.map((use) =>
    use('readwrite', async (records) => {
      const stored = epochIn(await promisifyRequest<unknown>(records.get(EPOCH_KEY)));
      if (stored < epoch) await promisifyRequest(records.put(epoch, EPOCH_KEY));
    }).catch(() => undefined),
  );
  await Promise.all(fenced);
}
