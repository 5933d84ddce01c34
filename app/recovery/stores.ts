/** What the app stores under: written down anew, since nothing of the app may be needed here. A test holds the two against each other. */
export const BOOK = 'rollwright';
export const SNAPSHOTS = 'rollwright-snapshots';
export const DATABASES = [
  BOOK,
  'rollwright-artwork',
  SNAPSHOTS,
  'rollwright-demo',
  'rollwright-demo-artwork',
  'rollwright-demo-snapshots',
  'rollwright-choice',
] as const;

const RECORDS = 'records';

export const answer = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Opens a database that is there; `null` for one that is not, and none is made. */
export const openExisting = (name: string): Promise<IDBDatabase | null> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    let isNew = false;
    request.onupgradeneeded = () => {
      isNew = true;
      request.transaction?.abort();
    };
    request.onsuccess = () => {
      const { result } = request;
      result.onversionchange = () => result.close();
      resolve(result);
    };
    request.onerror = () => (isNew ? resolve(null) : reject(request.error));
  });

/** The key-value store of a database of the app, made where it is missing. */
export async function openRecords(name: string): Promise<IDBDatabase> {
  const request = indexedDB.open(name, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(RECORDS);
  return answer(request);
}

export const recordsIn = (db: IDBDatabase, mode: IDBTransactionMode): IDBObjectStore =>
  db.transaction(RECORDS, mode, { durability: 'strict' }).objectStore(RECORDS);

/** Resolves when a transaction is on the disk, rejects when it came to nothing. */
export const settled = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
  });
