import { createDraft, current, type Draft, enablePatches, finishDraft, type Patch, produce } from 'immer';
import type { Book, Collection, Id, Instant } from '../model';

enablePatches();

/** A change to the book that may be undone: what one command, or one whole gesture, did. */
export interface Step {
  readonly redo: readonly Patch[];
  readonly undo: readonly Patch[];
}

/** The id maker and the clock are handed in, so that edits are the same for the same input. */
export interface EditContext {
  newId<Kind extends string>(): Id<Kind>;
  now: Instant;
}

export type BookDraft = Draft<Book>;

/**
 * The book as an edit has left it so far, of records that no longer change: what is worked out from it may be kept, and put into
 * the draft.
 */
export const bookSoFar = (draft: BookDraft): Book => current(draft);

/** Marks every record that patches touched, and that is still there, as changed at an instant. */
export function stamp(book: Book, patches: readonly Patch[], now: Instant): Book {
  return produce(book, (draft) => {
    for (const { path } of patches) {
      const record = draft[path[0] as Collection][String(path[1])];
      if (record) record.changed = now;
    }
  });
}

/**
 * Applies an edit to a book.
 * @returns what the edit told, with the new book and the step that leads to it, or the same book and `null` if nothing changed
 */
export function applyEdit<Result>(
  book: Book,
  edit: (draft: BookDraft) => Result,
  now: Instant,
): { book: Book; result: Result; step: Step | null } {
  const draft = createDraft(book);
  const result = edit(draft);
  let step: Step = { redo: [], undo: [] };
  const edited = finishDraft(draft, (redo, undo) => {
    step = { redo, undo };
  });
  if (step.redo.length === 0) return { book, result, step: null };
  return { book: stamp(edited, step.redo, now), result, step };
}
