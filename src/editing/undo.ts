import { applyPatches, type Patch, produce } from 'immer';
import { type Book, holds } from '../model';
import { reverse } from './ledger';
import { type EditContext, type Step, stamp } from './step';

export const isEntry = ({ path }: Patch): boolean => path[0] === 'entry';

/**
 * Plays patches. Those that would take an entry out of the ledger, or put it back, add an entry that undoes it, or undoes that one:
 * entries are only ever added, and their sum stays what there is.
 */
function play(book: Book, patches: readonly Patch[], context: EditContext): Book {
  const others = patches.filter((patch) => !isEntry(patch));
  const played = stamp(applyPatches(book, others), others, context.now);
  return produce(played, (draft) => {
    for (const { path } of patches.filter(isEntry)) reverse(draft, String(path[1]), context);
  });
}

/**
 * Plays patches that were stored, and may have been damaged there.
 * @returns `null` where they do not fit the book, or lead to records that could not be read again
 */
function playStored(book: Book, patches: readonly Patch[], context: EditContext): Book | null {
  try {
    const played = play(book, patches, context);
    return holds(
      played,
      patches.map(({ path: [collection, id] }) => `${collection}/${id}`),
    )
      ? played
      : null;
  } catch {
    return null;
  }
}

/** The book before a step; `null` where the step is damaged. */
export const undoStep = (book: Book, step: Step, context: EditContext): Book | null =>
  playStored(book, step.undo, context);

/** The book after a step that was taken back; `null` where the step is damaged. */
export const redoStep = (book: Book, step: Step, context: EditContext): Book | null =>
  playStored(book, step.redo, context);
