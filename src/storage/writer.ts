/** What of Web Locks is needed: a lock held until a promise settles. */
export type Locks = Pick<LockManager, 'request'>;

/** A tab's part among the tabs that have the same book open. */
export interface Writer {
  /** Tells the tabs that follow that storage has changed. */
  announce(): void;
  /** Asks the writing tab to hand over; one that does not answer is overruled. */
  takeOver(): void;
  close(): void;
}

type Message = 'changed' | 'hand-over';

/** A writing tab that has not let go by then hangs. */
const PATIENCE = 2000;

/**
 * One tab writes, the others follow. A follower becomes the writer when the one before it closes or hands over.
 * @param locks `undefined` where the browser has none: then each tab writes
 * @param hear.onFollow another tab writes; called when this one is not the first, or has handed over
 * @param hear.onWrite this tab writes now; storage must be read before anything is written
 * @param hear.onChanged the writing tab has changed storage
 * @param hear.onHandOver this tab is to stop writing; settles when all is on the disk
 */
export function becomeWriter(
  name: string,
  locks: Locks | undefined,
  hear: { onFollow(): void; onWrite(): void; onChanged(): void; onHandOver(): Promise<void> },
): Writer {
  const channel = new BroadcastChannel(name);
  const closed = new AbortController();
  let release: (() => void) | null = null;

  const write = (): Promise<void> => {
    hear.onWrite();
    return new Promise<void>((resolve) => {
      release = resolve;
    });
  };
  /** Waits for the lock; it is granted when the writing tab closes or hands over. */
  const queue = (): void => {
    locks?.request(name, { signal: closed.signal }, write).catch(() => lost());
  };
  /** The lock was taken away: another tab overruled this one, which did not answer. */
  const lost = (): void => {
    if (closed.signal.aborted || !release) return;
    release = null;
    hear.onFollow();
    queue();
  };
  const handOver = async (): Promise<void> => {
    if (!release) return;
    await hear.onHandOver();
    release?.();
    release = null;
    hear.onFollow();
    // Behind the tab that asked, which waits already.
    setTimeout(queue, 200);
  };
  const tell = (message: Message): void => channel.postMessage(message);
  channel.onmessage = ({ data }: MessageEvent<Message>) => {
    if (data === 'hand-over') void handOver();
    else hear.onChanged();
  };

  if (!locks) void write();
  else {
    locks
      .request(name, { ifAvailable: true }, (lock) => {
        if (lock) return write();
        hear.onFollow();
        queue();
        return undefined;
      })
      .catch(() => lost());
  }
  return {
    announce: () => tell('changed'),
    takeOver() {
      if (release) return;
      tell('hand-over');
      setTimeout(() => {
        if (!release && !closed.signal.aborted)
          locks?.request(name, { steal: true }, write).catch(() => lost());
      }, PATIENCE);
    },
    close() {
      release?.();
      closed.abort();
      channel.close();
    },
  };
}
