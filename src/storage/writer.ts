/** What of Web Locks is needed: a lock held until a promise settles. */
export type Locks = Pick<LockManager, 'request'>;

/** A tab's part among the tabs that have the same book open. */
export interface Writer {
  /** Tells the tabs that follow that storage has changed. */
  announce(): void;
  close(): void;
}

/**
 * One tab writes, the others follow. A follower becomes the writer when the one before it closes.
 * @param locks `undefined` where the browser has none: then each tab writes
 * @param hear.onFollow another tab writes; called once, if this one is not the first
 * @param hear.onWrite this tab writes now; storage must be read before anything is written
 * @param hear.onChanged the writing tab has changed storage
 */
export function becomeWriter(
  name: string,
  locks: Locks | undefined,
  hear: { onFollow(): void; onWrite(): void; onChanged(): void },
): Writer {
  const channel = new BroadcastChannel(name);
  channel.onmessage = () => hear.onChanged();
  const closed = new AbortController();
  let release = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const write = () => {
    hear.onWrite();
    return held;
  };
  if (!locks) void write();
  else {
    void locks
      .request(name, { ifAvailable: true }, (lock) => {
        if (lock) return write();
        hear.onFollow();
        // The queue ends when the writing tab closes. Aborted, if this tab closes first.
        locks.request(name, { signal: closed.signal }, write).catch(() => undefined);
        return undefined;
      })
      .catch(() => undefined);
  }
  return {
    announce: () => channel.postMessage('changed'),
    close() {
      release();
      closed.abort();
      channel.close();
    },
  };
}
