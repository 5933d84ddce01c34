import { create } from 'zustand';
import {
  applyEdit,
  applySettled,
  type BookDraft,
  type Drawn,
  dropLast,
  type EditContext,
  forget,
  historyOf,
  redoStep,
  remember,
  type Step,
  stepBack,
  stepForward,
  undoStep,
} from '../../src/editing';
import { type Book, emptyBook, type Instant } from '../../src/model';
import type { SaveState, Source, StorageProblem } from '../../src/storage';
import { localeNow, wordsNow } from '../words';
import { notify } from './view';

type Phase =
  | { readonly kind: 'opening' }
  | { readonly kind: 'open' }
  | { readonly kind: 'newer' }
  | { readonly kind: 'failed'; readonly problem: StorageProblem };

/**
 * How long each key lives: `book` with the shop, kept in storage after every change; all others until
 * the tab closes.
 */
interface Shop {
  readonly phase: Phase;
  readonly source: Source;
  readonly book: Book;
  readonly saving: SaveState;
  /** Another tab writes; this one looks on. */
  readonly follows: boolean;
  /** Keys of stored records that could not be read; they stay in storage untouched. */
  readonly setAside: readonly string[];
}

export const useShop = create<Shop>(() => ({
  phase: { kind: 'opening' },
  source: 'demo',
  book: emptyBook,
  saving: { kind: 'saving' },
  follows: false,
  setAside: [],
}));

export const editContext = (): EditContext => ({
  newId: () => crypto.randomUUID(),
  now: new Date().toISOString() as Instant,
});

type Edit = (draft: BookDraft, context: EditContext) => void;

/** False while the book is not in, or another tab writes. */
export const mayWrite = (): boolean => {
  const { phase, follows } = useShop.getState();
  return phase.kind === 'open' && !follows;
};

/** Says what was taken from the shelf instead of being printed. */
export function sayDrawn(drawn: readonly Drawn[]): void {
  if (drawn.length > 0) notify('plain', wordsNow().press.shelfDrawn(drawn, { locale: localeNow() }));
}

/**
 * Makes an edit one step that can be undone, and says so if copies came off the film with it.
 * @returns the step, or `null` if the edit changed nothing or may not be made
 */
export function commit(edit: Edit): Step | null {
  if (!mayWrite()) return null;
  const { book } = useShop.getState();
  const context = editContext();
  const {
    book: edited,
    step,
    takenOff,
    drawn,
  } = applySettled(book, (draft) => edit(draft, context), context.now);
  if (!step) return null;
  useShop.setState({ book: remember(edited, step, context.now) });
  if (takenOff.length > 0)
    notify('care', wordsNow().orders.takenOff(takenOff.length, { locale: localeNow() }));
  sayDrawn(drawn);
  return step;
}

/** Makes an edit that undo leaves alone: settings, what is read from a file's header. */
export function commitQuietly(edit: Edit): void {
  if (!mayWrite()) return;
  const context = editContext();
  useShop.setState({
    book: applyEdit(useShop.getState().book, (draft) => edit(draft, context), context.now).book,
  });
}

/**
 * Makes an edit that is not taken back by undo, nor is anything before it: a run is sent to print, film is spoiled. Such
 * steps have steps back of their own.
 */
export function commitForGood(edit: Edit): void {
  if (commit(edit)) useShop.setState(({ book }) => ({ book: forget(book) }));
}

/** Makes an edit that only adds ticks; if film comes off a roll by it, or a copy off its run, undo begins anew. */
export function commitTicks(edit: Edit): void {
  const { film, copy } = useShop.getState().book;
  commitQuietly(edit);
  useShop.setState(({ book }) =>
    book.film === film && book.copy === copy ? { book } : { book: forget(book) },
  );
}

export function undo(): void {
  const back = stepBack(useShop.getState().book);
  if (back && mayWrite()) useShop.setState({ book: undoStep(back.book, back.step, editContext()) });
}

export function redo(): void {
  const forward = stepForward(useShop.getState().book);
  if (forward && mayWrite()) useShop.setState({ book: redoStep(forward.book, forward.step, editContext()) });
}

/**
 * Takes a step back, if it is still the last, and makes another in its place: a plan that a better
 * one follows. The two are seen as one change.
 */
export function recommit(replaced: Step | null, edit: Edit): Step | null {
  if (!mayWrite()) return null;
  let { book } = useShop.getState();
  const context = editContext();
  const last = historyOf(book).done.at(-1);
  if (replaced !== null && last?.number === replacedNumber.get(replaced)) {
    book = undoStep(dropLast(book), replaced, context);
  }
  const edited = applyEdit(book, (draft) => edit(draft, context), context.now);
  book = edited.step ? remember(edited.book, edited.step, context.now) : edited.book;
  const added = historyOf(book).done.at(-1);
  if (edited.step && added) replacedNumber.set(edited.step, added.number);
  useShop.setState({ book });
  return edited.step;
}

/** The number in the history of each step that may be replaced. */
const replacedNumber = new WeakMap<Step, number>();
