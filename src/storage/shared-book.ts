import type { Book } from '../model';
import { type Epoch, fence } from './epoch';
import type { StorageProblem } from './problem';
import { type BookReading, type BookRepository, type Found, isFound } from './repository';
import { createSaver, type Saver, type SaveState } from './saver';
import { becomeWriter, type Ground, type Writer } from './writer';

/** A book to go on with, and what of it lies in storage. */
interface Begun {
  readonly stored: Book;
  readonly book: Book;
}

type NotRead = Exclude<BookReading, Found | { kind: 'failed' }>;

/** What a tab is told of the book that it shares with others. */
export interface Hears {
  /** Settles when there is all that a book needs before it is shown. */
  prepare(found: Found): Promise<void>;
  /** This tab is to write: what the book begins with. Nothing may be changed in it yet. */
  begin(found: Found): Begun;
  /** The book may be changed here from now on, and each change is to be put. */
  onWrite(book: Book): void;
  /**
   * Nothing may be changed here from now on; what is shown is read anew.
   * @param lacks what was changed here last may have come too late to be kept
   */
  onFollow(lacks: boolean): void;
  /** What is stored, as another tab wrote it. */
  onRead(found: Found): void;
  /** What is stored is of a newer version, or cannot be brought up from an older one; nothing is read or written here any more. */
  onNotRead(why: NotRead['kind']): void;
  /** Storage cannot be read; nothing is read or written here any more. */
  onFailed(problem: StorageProblem): void;
  onSaving(state: SaveState): void;
}

/** A tab's part in a book that several tabs may have open. */
export interface SharedBook extends Pick<Writer, 'takeOver' | 'pause' | 'resume'> {
  /** Keeps a book; nothing where another tab writes. */
  put(book: Book): void;
  /** Tries again after a failure to keep it. */
  retry(): void;
  /** Reads anew what another tab writes, which may not have been heard. */
  look(): void;
  /** Ends when all is written. */
  close(): Promise<void>;
}

/**
 * Opens a book in one of several tabs. One tab writes it, the others show it. Who writes claims the book with an epoch
 * of its own before anything is written, and each write is held to it: a tab that was overruled and goes on, since
 * it has not heard of it, changes nothing and is told.
 * @param name what the tabs know the book by
 * @param tab names this tab, other than any other
 */
export function openSharedBook(
  { name, tab, now }: { name: string; tab: string; now: () => number },
  { repository, epoch }: { repository: BookRepository; epoch: Epoch },
  ground: Ground,
  hear: Hears,
): SharedBook {
  /** Grows whenever this tab's part changes; what began before then comes to nothing. */
  let turn = 0;
  let isFollowing = false;
  let isLooking = false;
  let isOutdated = false;
  let saver: Saver | null = null;

  /** Ends this tab's part as it was. */
  const drop = (): { lacks: boolean } => {
    const lacks = saver ? !saver.isDone() : false;
    turn += 1;
    saver = null;
    isFollowing = false;
    epoch.current = 0;
    return { lacks };
  };
  const leave = (reading: Exclude<BookReading, Found>): void => {
    drop();
    writer.close();
    if (reading.kind === 'failed') hear.onFailed(reading.problem);
    else hear.onNotRead(reading.kind);
  };

  const write = async (): Promise<void> => {
    drop();
    const mine = turn;
    const { reading, epoch: claimed } = await repository.claim();
    if (turn !== mine) return;
    if (!isFound(reading)) return leave(reading);
    epoch.current = claimed;
    await fence(epoch.databases, claimed);
    await hear.prepare(reading);
    if (turn !== mine) return;
    const begun = hear.begin(reading);
    const own = createSaver(repository, begun.stored, {
      now,
      onState: (state) => {
        if (saver !== own) return;
        if (state.kind === 'failed' && state.problem.code === 'overtaken') return writer.stepDown();
        hear.onSaving(state);
        if (state.kind === 'saved') writer.announce();
      },
    });
    saver = own;
    hear.onWrite(begun.book);
    own.put(begun.book);
  };

  const look = async (): Promise<void> => {
    if (!isFollowing) return;
    isOutdated = true;
    if (isLooking) return;
    isLooking = true;
    while (isOutdated && isFollowing) {
      isOutdated = false;
      const mine = turn;
      const reading = await repository.read();
      if (turn !== mine) continue;
      if (!isFound(reading)) {
        leave(reading);
        continue;
      }
      await hear.prepare(reading);
      if (turn === mine) hear.onRead(reading);
    }
    isLooking = false;
  };
  const follow = (): void => {
    const { lacks } = drop();
    isFollowing = true;
    hear.onFollow(lacks);
    void look();
  };

  const writer = becomeWriter(name, tab, ground, {
    onWrite: () => void write(),
    onFollow: follow,
    onChanged: () => void look(),
    async onHandOver() {
      hear.onFollow(false);
      // A book that is not open yet need not be opened any more.
      if (!saver) drop();
      await saver?.flush();
    },
  });
  return {
    put: (book) => saver?.put(book),
    retry: () => saver?.retry(),
    look: () => void look(),
    takeOver: writer.takeOver,
    pause: writer.pause,
    resume: writer.resume,
    async close() {
      await saver?.flush();
      drop();
      writer.close();
    },
  };
}
