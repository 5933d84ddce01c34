import { create } from 'zustand';
import {
  applyEdit,
  applySettled,
  type BookDraft,
  type EditContext,
  emptyHistory,
  type History,
  redoStep,
  remember,
  type Step,
  stepBack,
  stepForward,
  undoStep,
} from '../../src/editing';
import { type Book, emptyBook, type Instant } from '../../src/model';
import type { SaveState, Source, StorageProblem } from '../../src/storage';
import { words } from '../words';
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
  readonly history: History;
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
  history: emptyHistory,
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

/**
 * Makes an edit one step that can be undone, and says so if copies came off the film with it.
 * @returns the step, or `null` if the edit changed nothing or may not be made
 */
export function commit(edit: Edit): Step | null {
  if (!mayWrite()) return null;
  const { book, history } = useShop.getState();
  const context = editContext();
  const { book: edited, step, takenOff } = applySettled(book, (draft) => edit(draft, context), context.now);
  if (!step) return null;
  useShop.setState({ book: edited, history: remember(history, step) });
  if (takenOff.length > 0) notify('care', words.orders.takenOff(takenOff.length));
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
  if (commit(edit)) useShop.setState({ history: emptyHistory });
}

export function undo(): void {
  const back = stepBack(useShop.getState().history);
  if (!back || !mayWrite()) return;
  useShop.setState({
    book: undoStep(useShop.getState().book, back.step, editContext().now),
    history: back.history,
  });
}

export function redo(): void {
  const forward = stepForward(useShop.getState().history);
  if (!forward || !mayWrite()) return;
  useShop.setState({
    book: redoStep(useShop.getState().book, forward.step, editContext().now),
    history: forward.history,
  });
}

/**
 * Takes a step back, if it is still the last, and makes another in its place: a plan that a better
 * one follows. The two are seen as one change.
 */
export function recommit(replaced: Step | null, edit: Edit): Step | null {
  if (!mayWrite()) return null;
  let { book, history } = useShop.getState();
  const context = editContext();
  const back = stepBack(history);
  if (replaced !== null && back?.step === replaced) {
    book = undoStep(book, replaced, context.now);
    history = { ...back.history, undone: [] };
  }
  const edited = applyEdit(book, (draft) => edit(draft, context), context.now);
  if (edited.step) history = remember(history, edited.step);
  useShop.setState({ book: edited.book, history });
  return edited.step;
}
