import { layRun, unfitCopies } from '../layout';
import type { Book, Id, Instant } from '../model';
import { takeOff } from './places';
import { applyEdit, type BookDraft, type Step } from './step';

/** The copies of a draft that an edit left where they can no longer lie. */
function unsettled(book: Book): Id<'copy'>[] {
  return Object.values(book.run).flatMap((run) => {
    const laid = run.state === 'draft' ? layRun(book, run) : null;
    return laid ? unfitCopies(laid) : [];
  });
}

const movesGround = (step: Step): boolean =>
  step.redo.some(({ path }) => path[0] === 'transfer' || path[0] === 'film' || path[0] === 'run');

/**
 * Applies an edit and lets the drafts follow it: copies that no longer fit where they lie come off
 * the film, in the same step.
 * @returns the book, the step (`null` if nothing changed), and the copies taken off
 */
export function applySettled(
  book: Book,
  edit: (draft: BookDraft) => void,
  now: Instant,
): { book: Book; step: Step | null; takenOff: readonly Id<'copy'>[] } {
  const edited = applyEdit(book, edit, now);
  if (!edited.step || !movesGround(edited.step)) return { ...edited, takenOff: [] };
  const takenOff = unsettled(edited.book);
  if (takenOff.length === 0) return { ...edited, takenOff };
  const settled = applyEdit(edited.book, (draft) => takeOff(draft, takenOff), now);
  const step = {
    redo: [...edited.step.redo, ...(settled.step?.redo ?? [])],
    undo: [...(settled.step?.undo ?? []), ...edited.step.undo],
  };
  return { book: settled.book, step, takenOff };
}
