import { applyPatches, type Draft, enablePatches, type Patch, produce, produceWithPatches } from 'immer';
import type { Book, Collection, Instant } from '../model';
import { reverse } from './ledger';

enablePatches();

/** A change to the book that may be undone: what one command, or one whole gesture, did. */
export interface Step {
  readonly redo: readonly Patch[];
  readonly undo: readonly Patch[];
}

/** The id maker and the clock are handed in, so that edits are the same for the same input. */
export interface EditContext {
  newId(): string;
  now: Instant;
}

export type BookDraft = Draft<Book>;

/** Marks every record that patches touched, and that is still there, as changed at an instant. */
function stamp(book: Book, patches: readonly Patch[], now: Instant): Book {
  return produce(book, (draft) => {
    for (const { path } of patches) {
      const record = draft[path[0] as Collection][String(path[1])];
      if (record) record.changed = now;
    }
  });
}

/**
 * Applies an edit to a book.
 * @returns the new book and the step that leads to it, or the same book and `null` if nothing changed
 */
export function applyEdit(
  book: Book,
  edit: (draft: BookDraft) => void,
  now: Instant,
): { book: Book; step: Step | null } {
  const [edited, redo, undo] = produceWithPatches(book, (draft) => {
    edit(draft);
  });
  if (redo.length === 0) return { book, step: null };
  return { book: stamp(edited, redo, now), step: { redo, undo } };
}

/**
 * Plays patches. Those that would take an entry out of the ledger, or put it back, add an entry that undoes it, or undoes that one:
 * entries are only ever added, and their sum stays what there is.
 */
function play(book: Book, patches: readonly Patch[], context: EditContext): Book {
  const isEntry = ({ path }: Patch) => path[0] === 'entry';
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
