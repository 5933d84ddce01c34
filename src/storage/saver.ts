import { type Book, emptyBook } from '../model';
import type { StorageProblem } from './problem';
import type { BookRepository } from './repository';

export type SaveState =
  | { readonly kind: 'saved'; readonly at: number }
  | { readonly kind: 'saving' }
  | { readonly kind: 'failed'; readonly problem: StorageProblem };

/** Keeps the latest book on the disk: one write at a time, started at once, the newest book next. */
export interface Saver {
  put(book: Book): void;
  /** Tries again after a failure. */
  retry(): void;
  /** Resolves when nothing is left to write, or writing failed. */
  flush(): Promise<void>;
  /** Whether the latest book is on the disk. */
  isDone(): boolean;
}

/**
 * @param stored the book as it lies in storage
 * @param options.now the clock, in milliseconds
 */
export function createSaver(
  repository: Pick<BookRepository, 'save'>,
  stored: Book = emptyBook,
  { onState, now }: { onState: (state: SaveState) => void; now: () => number },
): Saver {
  let written = stored;
  let latest = stored;
  let writing: Promise<void> | null = null;

  const write = async (): Promise<void> => {
    while (written !== latest) {
      const book = latest;
      onState({ kind: 'saving' });
      const saved = await repository.save(written, book);
      if (!saved.ok) return onState({ kind: 'failed', problem: saved.problem });
      written = book;
    }
    onState({ kind: 'saved', at: now() });
  };
  const start = (): void => {
    writing ??= write().finally(() => {
      writing = null;
    });
  };
  return {
    put(book) {
      latest = book;
      start();
    },
    retry: start,
    async flush() {
      await writing;
    },
    isDone: () => written === latest,
  };
}
