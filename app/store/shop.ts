import { v7 } from 'uuid';
import { create } from 'zustand';
import type { Drawn, Edit, EditContext } from '../../src/editing';
// Not by the door, behind which every edit lies: half of the app looks at the store.
import { type Done, redo as redone, replaceStep, session, undo as undone } from '../../src/editing/session';
import {
  asId,
  asInstant,
  type Book,
  emptyBook,
  type Film,
  type SetAside,
  type SettingsField,
} from '../../src/model';
import type { SaveState, Source, StorageProblem } from '../../src/storage';
import { localeNow, wordsNow } from '../words';
import { clearActNotices, notify } from './view';

type Phase = { readonly kind: 'opening' | 'open' | 'newer' | 'part-missing' };

/**
 * How long each key lives: `book` with the shop, kept in storage after every change; all others until
 * the tab closes.
 */
interface Shop {
  readonly phase: Phase;
  readonly source: Source;
  readonly book: Book;
  readonly saving: SaveState;
  /** Why the book is in memory alone and nothing is kept; `null` where it comes from storage. */
  readonly inMemory: StorageProblem | null;
  /** There was a book of the shop's own, and its storage was found empty. */
  readonly isGone: boolean;
  /** Another tab writes; this one looks on. */
  readonly follows: boolean;
  /** Stored records that could not be read; they stay in storage untouched. */
  readonly setAside: readonly SetAside[];
  /** Settings that could not be read; what a shop begins with stands in for them. */
  readonly fellBack: readonly SettingsField[];
}

export const useShop = create<Shop>(() => ({
  phase: { kind: 'opening' },
  source: 'demo',
  book: emptyBook,
  saving: { kind: 'saving' },
  inMemory: null,
  isGone: false,
  follows: false,
  setAside: [],
  fellBack: [],
}));

export const editContext = (): EditContext => ({
  // Ids that tell when they were given: rows keep the order they were entered in, see `asEntered`.
  newId: () => asId(v7()),
  now: asInstant(new Date()),
});

/** False while the book is not in, or another tab writes. */
export const mayWrite = (): boolean => {
  const { phase, follows } = useShop.getState();
  return phase.kind === 'open' && !follows;
};

/** Says what was taken from the shelf instead of being printed. */
export function sayDrawn(drawn: readonly Drawn[]): void {
  if (drawn.length > 0) notify('plain', wordsNow().film.fromShelf(drawn, { locale: localeNow() }));
}

/** Says that copies came off the film, since they cannot lie there. */
export function sayTakenOff({ length }: Done<unknown>['takenOff']): void {
  if (length > 0) notify('care', wordsNow().orders.takenOff(length, { locale: localeNow() }));
}

/** Says of which films the ledger did not sum to what is left of them. */
export function sayReconciled(films: readonly Pick<Film, 'name'>[]): void {
  if (films.length === 0) return;
  const names = films.map(({ name }) => name);
  notify('care', wordsNow().damaged.reconciled(names, { locale: localeNow() }));
}

/** Holds what came of an edit, and says what followed from it. */
function hold<Result>(done: Done<Result>): Done<Result> {
  useShop.setState({ book: done.book });
  sayTakenOff(done.takenOff);
  sayDrawn(done.drawn);
  return done;
}

/** Whether a hand may write; if another tab does, it is said why nothing changes. */
function mayAct(): boolean {
  const { follows } = useShop.getState();
  if (follows) notify('care', wordsNow().bands.readOnly);
  return mayWrite();
}

/**
 * Makes an edit: the one way the open book changes under a hand. What it is to undo it says itself.
 * @returns what came of it, or `null` if nothing may be written, which is said
 */
export const act = <Result>(edit: Edit<Result>): Done<Result> | null =>
  mayAct() ? hold(session(useShop.getState().book, edit, editContext())) : null;

/** The same in place of an edit before, if nothing that can be undone came after it. */
export const actInstead = <Result>(
  replaced: Done<unknown> | null,
  edit: Edit<Result>,
): Done<Result> | null =>
  mayAct() ? hold(replaceStep(useShop.getState().book, replaced, edit, editContext())) : null;

/** Holds what undo or redo led to. */
function go(way: typeof undone): void {
  if (!mayAct()) return;
  const { book, takenOff, damaged } = way(useShop.getState().book, editContext());
  useShop.setState({ book });
  clearActNotices();
  sayTakenOff(takenOff);
  if (damaged) notify('care', wordsNow().damaged.history);
}

export const undo = (): void => go(undone);
export const redo = (): void => go(redone);
