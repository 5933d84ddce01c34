/** What of Web Locks is needed: a lock held until a promise settles. */
export type Locks = Pick<LockManager, 'request'>;

/** What the tabs tell each other by. Messages may come late, in another order, or not at all. */
export interface Channel {
  tell(message: Message): void;
  hear(onMessage: (message: Message) => void): void;
  close(): void;
}

/** What the tabs stand on. */
export interface Ground {
  /** `undefined` where the browser has none: then the tab that came last writes. */
  readonly locks: Locks | undefined;
  /** `null` where the browser has none: then a tab that is overruled hears of it by its lock or its next write. */
  readonly channel: Channel | null;
  /** Runs something after some milliseconds, until the function it returns is called. */
  later(run: () => void, milliseconds: number): () => void;
}

/** A tab's part among the tabs that have the same book open. */
export interface Writer {
  /** Tells the tabs that follow that storage has changed. */
  announce(): void;
  /** Asks the writing tab to hand over; one that does not answer is overruled. */
  takeOver(): void;
  /** Lets go of the lock and waits for it anew, behind the others. */
  stepDown(): void;
  /** The browser is about to halt this tab: it holds up nobody meanwhile. */
  pause(): void;
  /** The tab goes on. */
  resume(): void;
  close(): void;
}

export type Message =
  /** Storage has changed. A bare string, since tabs of older versions know it as that. */
  | 'changed'
  /** What tabs of older versions call `ask`; heard by them alone. */
  | 'hand-over'
  /** The tab wants to write. */
  | { readonly kind: 'ask'; readonly tab: string }
  /** The writing tab has stopped for this one, which may take the lock from it. */
  | { readonly kind: 'yours'; readonly tab: string }
  /** The tab writes now, and whether somebody asked for that there. */
  | { readonly kind: 'writes'; readonly tab: string; readonly asked: boolean };

/** A writing tab that has not let go by then hangs, and a tab that has not taken what it asked for is gone; milliseconds. */
const PATIENCE = 2000;

/** A request was given up here, or the lock was stolen before it was used: both say nothing against locks as such. */
const wasTakenBack = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'AbortError';

/**
 * One tab writes, the others follow. A follower becomes the writer when the one before it closes, or stops for it.
 * The tab that asked takes the lock itself, so that no other that waits for it comes in between.
 * @param tab names this tab, other than any other
 * @param hear.onFollow another tab writes: whatever wrote here is at an end
 * @param hear.onWrite this tab writes now; the book must be claimed before anything is written
 * @param hear.onChanged the writing tab has changed storage
 * @param hear.onHandOver this tab is to stop writing; settles when all is on the disk
 */
export function becomeWriter(
  name: string,
  tab: string,
  { locks, channel, later }: Ground,
  hear: { onFollow(): void; onWrite(): void; onChanged(): void; onHandOver(): Promise<void> },
): Writer {
  /** Lets go of the lock that is held. */
  let release: (() => void) | null = null;
  let usable = locks;
  let isHandingOver = false;
  let stopAsking: (() => void) | null = null;
  let stopWaiting = new AbortController();
  let isPaused = false;
  let isClosed = false;

  const tell = (message: Message): void => {
    if (!isClosed) channel?.tell(message);
  };
  const endAsking = (): void => {
    stopAsking?.();
    stopAsking = null;
  };
  /**
   * Asks for the lock; what holds it ends by itself, or when another tab takes it away.
   * @param hasAsked whether the other tabs were asked for it before
   * @param onHeld there is another that holds it, and `ifAvailable` was asked for
   */
  const request = (options: LockOptions, hasAsked = false, onHeld: () => void = () => undefined): void => {
    let mine: (() => void) | null = null;
    const hold = (): Promise<void> | undefined => {
      if (isClosed || isPaused) return undefined;
      return new Promise((resolve) => {
        mine = resolve;
        release = resolve;
        begin(hasAsked);
      });
    };
    if (!usable) {
      void hold();
      return;
    }
    usable
      .request(name, options, (lock) => (lock ? hold() : onHeld()))
      .catch((error: unknown) => {
        if (mine) {
          if (release === mine) lost();
        } else if (!wasTakenBack(error)) {
          // Refused, as to a page of no address: this tab goes on like one without locks.
          usable = undefined;
          enter();
        }
      });
  };
  const begin = (hasAsked: boolean): void => {
    endAsking();
    stopWaiting.abort();
    isHandingOver = false;
    tell({ kind: 'writes', tab, asked: hasAsked });
    hear.onWrite();
  };
  /** Waits for the lock; it is granted when the writing tab closes. */
  const wait = (): void => {
    if (!usable || isClosed || isPaused) return;
    stopWaiting.abort();
    stopWaiting = new AbortController();
    request({ signal: stopWaiting.signal });
  };
  const enter = (): void =>
    request({ ifAvailable: true }, false, () => {
      if (isClosed || isPaused || release) return;
      hear.onFollow();
      wait();
    });
  const lost = (): void => {
    release = null;
    isHandingOver = false;
    if (isClosed) return;
    hear.onFollow();
    wait();
  };
  const letGo = (): void => {
    release?.();
    lost();
  };
  /** Stops writing; what then happens to the lock, unless it was taken meanwhile, is the caller's. */
  const stopWriting = (andThen: (stillHeld: () => boolean) => void): void => {
    const held = release;
    if (!held || isHandingOver) return;
    isHandingOver = true;
    const stillHeld = () => release === held && isHandingOver;
    void hear.onHandOver().then(() => {
      if (stillHeld()) andThen(stillHeld);
    });
  };
  const handOver = (to: string): void =>
    stopWriting((stillHeld) => {
      tell({ kind: 'yours', tab: to });
      later(() => stillHeld() && letGo(), PATIENCE);
    });
  const take = (): void => {
    endAsking();
    request({ steal: true }, true);
  };
  const ask = (): void => {
    endAsking();
    tell({ kind: 'ask', tab });
    tell('hand-over');
    stopAsking = later(take, PATIENCE);
  };
  /** Another tab writes; one that was not asked to has come in between. */
  const giveWay = (asked: boolean): void => {
    if (!usable) stopWriting(letGo);
    if (!stopAsking) return;
    if (asked) endAsking();
    else ask();
  };
  channel?.hear((message) => {
    if (isClosed || message === 'hand-over') return;
    if (message === 'changed') hear.onChanged();
    else if (message.kind === 'ask') handOver(message.tab);
    else if (message.kind === 'writes') giveWay(message.asked);
    else if (message.tab === tab && stopAsking) take();
  });

  enter();
  return {
    announce: () => tell('changed'),
    takeOver() {
      if (release || stopAsking) return;
      if (usable) ask();
      else take();
    },
    stepDown() {
      if (release) letGo();
    },
    pause() {
      isPaused = true;
      endAsking();
      stopWaiting.abort();
      stopWriting(letGo);
    },
    resume() {
      if (!isPaused) return;
      isPaused = false;
      if (!release) enter();
    },
    close() {
      isClosed = true;
      endAsking();
      stopWaiting.abort();
      release?.();
      channel?.close();
    },
  };
}
