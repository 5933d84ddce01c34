import { applyPatches, type Patch, produce } from 'immer';
import type { Book } from '../model';
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

export const undoStep = (book: Book, step: Step, context: EditContext): Book =>
  play(book, step.undo, context);

export const redoStep = (book: Book, step: Step, context: EditContext): Book =>
  play(book, step.redo, context);
