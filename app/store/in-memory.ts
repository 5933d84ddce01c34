import type { Book } from '../../src/model';
import { type BookRepository, isFound, type Source, type StorageProblem } from '../../src/storage';
import { keepArtworkInMemory } from './artwork';
import { firstBookOf } from './first-book';
import { layOut } from './planning';
import { useShop } from './shop';

/** What was entered in the shop's own book while nothing was kept, until it is put where the storage answers again. */
let carried: Book | null = null;

export const carry = (book: Book): void => {
  carried = book;
};

/** Hands over what was carried for a book; nothing is carried any more then. */
export function takeCarried(source: Source): Book | null {
  if (source !== 'shop') return null;
  const book = carried;
  carried = null;
  return book;
}

/** Work on a book whose storage does not open. */
interface MemoryWork {
  begin(problem: StorageProblem): void;
  isBegun(): boolean;
  /** Opens what is stored if it can be read by now; what was entered meanwhile is carried over. */
  tryAgain(): Promise<void>;
  close(): void;
}

/**
 * @param repository the book's storage, which may answer later
 * @param reopen opens the same book again
 * @param restart opens the book that was open last, which nobody could ask the storage for
 */
export function memoryWork(
  source: Source,
  repository: Pick<BookRepository, 'read'>,
  reopen: () => Promise<void>,
  restart: () => Promise<void>,
): MemoryWork {
  /** The book that was begun, as it was then. */
  let begun: Book | null = null;
  let isClosed = false;

  const isUntouched = (): boolean => source === 'demo' || useShop.getState().book === begun;

  /** Storage that only was slow is opened as soon as it answers, unless something was entered meanwhile. */
  const awaitAnswer = async (): Promise<void> => {
    while (!isClosed && isUntouched()) {
      const reading = await repository.read();
      if (reading.kind === 'failed' && reading.problem.code !== 'blocked') return;
      if (reading.kind !== 'failed' && !isClosed && isUntouched()) return restart();
    }
  };

  return {
    begin(problem) {
      keepArtworkInMemory();
      begun = (source === 'shop' ? carried : null) ?? firstBookOf(source);
      useShop.setState({
        phase: { kind: 'open' },
        book: begun,
        saving: { kind: 'failed', problem },
        inMemory: problem,
        follows: false,
      });
      if (source === 'demo') void layOut('pinned');
      if (problem.code === 'blocked') void awaitAnswer();
    },
    isBegun: () => begun !== null,
    async tryAgain() {
      const reading = await repository.read();
      const { book } = useShop.getState();
      // What was entered meanwhile stays in sight where nothing would take it.
      if (!isFound(reading) || !begun) return;
      if (!isUntouched()) carry(book);
      await reopen();
    },
    close() {
      isClosed = true;
    },
  };
}
