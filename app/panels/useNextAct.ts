import { useMemo } from 'react';
import { isAsked, type LaidRun, tooLargeFor } from '../../src/layout';
import type { Book } from '../../src/model';
import { usePlanning } from '../store/planning';
import { useShop } from '../store/shop';

/** What is done next with a run before it is printed; its button is the loud one. */
export type NextAct = 'lay-out' | 'lock' | 'print' | 'printed';

/** Whether laying out again could bring a copy onto the film: one waits that is not known to have no room there. */
function anyToLay(book: Book, { id, film }: LaidRun, leftOut: ReadonlySet<string>): boolean {
  const run = book.run[id];
  if (!run) return false;
  return Object.values(book.copy).some((copy) => {
    const transfer = book.transfer[copy.transfer];
    return (
      transfer !== undefined &&
      isAsked(book, run, copy) &&
      !leftOut.has(transfer.id) &&
      tooLargeFor(film, transfer) === null
    );
  });
}

/** What comes next with a run; `null` where there is none, or the rest is up to the printer. */
export function useNextAct(run: LaidRun | null): NextAct | null {
  const leftOut = usePlanning((state) => state.leftOut);
  const book = useShop((shop) => shop.book);
  // Once a book: it may have to look at every copy.
  const waits = useMemo(
    () => run?.state === 'draft' && anyToLay(book, run, new Set(leftOut.map(({ transfer }) => transfer))),
    [book, run, leftOut],
  );
  // Once its image is saved, the printer has the word.
  if (run?.state === 'locked') return book.run[run.id]?.imageFeed == null ? 'print' : 'printed';
  if (run?.state !== 'draft') return null;
  return run.copies.length === 0 || run.spans === null || waits ? 'lay-out' : 'lock';
}
