import { asId, type Book, type StoredStep } from '../model';
import type { Edit } from './edit';
import { dropLast, forget, historyOf, remember, stepBack, stepForward } from './history';
import { rebased } from './rebase';
import { applySettled, type Settled, settle } from './settled';
import type { EditContext } from './step';
import { redoStep, undoStep } from './undo';

/** What came of an edit. */
export interface Done<Result> extends Pick<Settled<Result>, 'book' | 'result' | 'takenOff' | 'drawn'> {
  readonly changed: boolean;
  /** The book that it was made in. */
  readonly from: Book;
  /** The step that undo takes back now, if the edit became one. */
  readonly step: StoredStep['id'] | null;
}

/** The same ids in the same order each time, so that an edit made in several states makes the same records in all. */
function sameIds({ now, newId }: EditContext): () => EditContext {
  const ids: string[] = [];
  return () => {
    let given = 0;
    return {
      now,
      newId: () => {
        const id = ids[given] ?? newId();
        ids[given] = id;
        given += 1;
        return asId(id);
      },
    };
  };
}

/** Whether film came off a roll or a stack, or a copy off its run. */
const movesFilm = (before: Book, after: Book): boolean =>
  before.film !== after.film || before.copy !== after.copy;

/**
 * Makes an edit, lets what hangs on it follow, and does to history what the edit says.
 * @returns the book as it is then, and what is to be said of it
 */
export function session<Result>(book: Book, edit: Edit<Result>, context: EditContext): Done<Result> {
  const again = sameIds(context);
  const make = (state: Book) => applySettled(state, (draft) => edit.apply(draft, again()), context.now);
  const { book: after, step, ...said } = make(book);
  const done = (then: Book, number: Done<Result>['step'] = null): Done<Result> => ({
    ...said,
    from: book,
    book: then,
    changed: step !== null,
    step: number,
  });
  if (edit.history === 'step') {
    if (!step) return done(after);
    const kept = remember(after, step, context.now);
    return done(kept, historyOf(kept).done.at(-1)?.id);
  }
  const forgets =
    edit.history === 'forget'
      ? step !== null
      : edit.history === 'forget-if-film-moved' && movesFilm(book, after);
  return done(forgets ? forget(after) : rebased(book, { book: after, step }, make));
}

/**
 * Makes an edit in place of another that became a step, if that is still the last: a plan that a better one follows. The two are seen
 * as one change.
 * @param replaced what came of the other, or `null` if there is none yet
 */
export function replaceStep<Result>(
  book: Book,
  replaced: Pick<Done<unknown>, 'from' | 'book' | 'step'> | null,
  edit: Edit<Result>,
  context: EditContext,
): Done<Result> {
  // Nothing came after it: no step is played to know what was before.
  if (replaced?.book === book) return session(replaced.from, edit, context);
  const last = historyOf(book).done.at(-1);
  const isLast = last !== undefined && last.id === replaced?.step;
  const before = isLast ? undoStep(dropLast(book), last, context) : null;
  return session(before ?? book, edit, context);
}

/** A book that was not come to by an edit, and the copies that came off the film since they cannot lie there. */
interface Checked extends Pick<Done<unknown>, 'book' | 'takenOff'> {
  /** The step was damaged where it was stored: it was not played, and history begins anew. */
  readonly damaged?: true;
}

/**
 * Checks a book that undo led to, or that an older version left: copies that cannot lie where they lie come off the film, here and
 * in every state that undo and redo lead to from here.
 */
export function checked(book: Book, { now }: EditContext): Checked {
  const settled = settle(book, now);
  const { takenOff } = settled;
  if (takenOff.length === 0) return { book, takenOff };
  return { book: rebased(book, settled, (state) => settle(state, now)), takenOff };
}

/** What playing a stored step led to; where it is damaged, the book as it was without a history. */
function played(before: Book, after: Book | null, context: EditContext): Checked {
  return after ? checked(after, context) : { book: forget(before), takenOff: [], damaged: true };
}

/** Takes the last step back; the same book if there is none. */
export function undo(book: Book, context: EditContext): Checked {
  const back = stepBack(book);
  return back ? played(book, undoStep(back.book, back.step, context), context) : { book, takenOff: [] };
}

/** Makes the step again that was taken back last; the same book if there is none. */
export function redo(book: Book, context: EditContext): Checked {
  const forward = stepForward(book);
  return forward
    ? played(book, redoStep(forward.book, forward.step, context), context)
    : { book, takenOff: [] };
}
