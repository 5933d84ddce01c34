import { IDBDatabase, IDBFactory, IDBObjectStore, IDBTransaction } from 'fake-indexeddb';

/** How a call of the storage fails: at once, or by the end of its transaction, as a full disk is told of. */
export const failures = ['throws', 'aborts', 'full'] as const;

export type Failure = (typeof failures)[number];

const calls = {
  open: [IDBFactory.prototype, 'open'],
  transaction: [IDBDatabase.prototype, 'transaction'],
  get: [IDBObjectStore.prototype, 'get'],
  getAll: [IDBObjectStore.prototype, 'getAll'],
  getAllKeys: [IDBObjectStore.prototype, 'getAllKeys'],
  put: [IDBObjectStore.prototype, 'put'],
  delete: [IDBObjectStore.prototype, 'delete'],
} as const;

/** What the store in memory ends a transaction by, as a browser does whose disk is full. */
interface Ending {
  _abort(name: string): void;
}

const canEnd = (transaction: object): transaction is Ending => '_abort' in transaction;

/** Lets one call of the storage fail, counted from 1 over all kinds of calls. */
export function failAt(call: number, failure: Failure): { hasFailed(): boolean; stop(): void } {
  let made = 0;
  let hasFailed = false;
  const undo: (() => void)[] = [];
  for (const [target, name] of Object.values(calls)) {
    const own: unknown = Reflect.get(target, name);
    if (typeof own !== 'function') throw new Error(`no call ${name}`);
    Reflect.set(target, name, function (this: object, ...given: unknown[]) {
      // The store in memory begins its own transaction when a database is made.
      if (given.includes('versionchange')) return own.apply(this, given);
      made += 1;
      if (made !== call) return own.apply(this, given);
      hasFailed = true;
      const transaction = this instanceof IDBObjectStore ? this.transaction : null;
      if (failure === 'throws' || !(transaction instanceof IDBTransaction))
        throw new DOMException('refused', failure === 'full' ? 'QuotaExceededError' : 'UnknownError');
      const request: unknown = own.apply(this, given);
      queueMicrotask(() => {
        if (failure === 'aborts') transaction.abort();
        else if (canEnd(transaction)) transaction._abort('QuotaExceededError');
      });
      return request;
    });
    undo.push(() => Reflect.set(target, name, own));
  }
  return {
    hasFailed: () => hasFailed,
    stop() {
      for (const back of undo) back();
    },
  };
}
