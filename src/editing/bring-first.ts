import { copiesToLay, inDueOrder, layRun, problemAgain, problemOfSome, soundPlaces } from '../layout';
import { type Book, type Copy, type Film, type Id, isFixed, type Run } from '../model';
import type { AtOnce } from '../packing';
import { filmForNextRun } from './next-run';
import { bring, setPlaces } from './places';
import { addRun } from './runs';
import { drawFirst } from './shelf';
import { type BookDraft, bookSoFar, type EditContext } from './step';

/**
 * Where an order is brought first: the draft that is looked at, or, where that is in print, a run of its own, which begins on the fullest
 * film of the kind in use that its prints fit.
 */
export type FirstOn =
  | { readonly kind: 'run'; readonly run: Id<'run'> }
  | { readonly kind: 'new'; readonly name: string; readonly inUse: Id<'film'> };

/** What came of bringing an order first. */
interface BroughtFirst {
  readonly run: Id<'run'>;
  /** Its copies on that run. */
  readonly placed: number;
  /** Those that found no place there. */
  readonly waiting: number;
}

/** Whether a copy may still be brought first: it is wanted, and neither in print nor from the shelf. */
const isMovable = (book: Pick<Book, 'run'>, copy: Copy): boolean =>
  copy.role !== 'filler' && copy.state !== 'shelved' && !isFixed(book, copy);

/** The orders that have copies which may still be brought first; the book is looked through once for all of them. */
export const mayComeFirst = (book: Pick<Book, 'copy' | 'transfer' | 'run'>): ReadonlySet<string> =>
  new Set(
    Object.values(book.copy).flatMap((copy) =>
      isMovable(book, copy) ? (book.transfer[copy.transfer]?.order ?? []) : [],
    ),
  );

/** The copies of an order that may still be brought first. */
const movableOf = (book: Book, order: string): Copy[] =>
  Object.values(book.copy).filter(
    (copy) => book.transfer[copy.transfer]?.order === order && isMovable(book, copy),
  );

/** Lays what waits for a run around all that lies there, then what is due soonest as near to the front as it goes. */
function layFirst(draft: BookDraft, id: Id<'run'>, own: ReadonlySet<Id<'copy'>>, engine: AtOnce): void {
  const open = (): { book: Book; run: Run; film: Film } | null => {
    const book = bookSoFar(draft);
    const run = book.run[id];
    const film = run && book.film[run.film];
    return film ? { book, run, film } : null;
  };
  const before = open();
  if (!before) return;
  const waiting = problemOfSome(before.book, before.run, before.film, own);
  if (copiesToLay(waiting).length > 0) {
    setPlaces(draft, id, soundPlaces(before, waiting, engine.firstPlan(waiting.problem)) ?? []);
  }
  const laid = open();
  if (laid)
    setPlaces(draft, id, inDueOrder(laid, problemAgain(laid.book, laid.run, laid.film), engine) ?? []);
}

/** Begins a run for some copies alone. */
const ownRun = (
  draft: BookDraft,
  { name, inUse }: Extract<FirstOn, { kind: 'new' }>,
  copies: readonly Copy[],
  context: EditContext,
): Id<'run'> =>
  addRun(draft, { name, film: filmForNextRun(bookSoFar(draft), inUse, copies), takes: 'chosen' }, context);

/**
 * Makes a rush of an order and brings its copies as near to the front of a film as they go; those on other drafts come over.
 * @param engine lays those that wait, and all in the order in which it is due
 * @returns `null` where none of its copies may be brought
 */
export function bringFirst(
  draft: BookDraft,
  id: Id<'order'>,
  on: FirstOn,
  engine: AtOnce,
  context: EditContext,
): BroughtFirst | null {
  const order = draft.order[id];
  if (!order || (on.kind === 'run' && draft.run[on.run]?.state !== 'draft')) return null;
  if (movableOf(bookSoFar(draft), id).length === 0) return null;
  order.rush = true;
  const isOwn = ({ transfer }: Pick<Copy, 'transfer'>) => draft.transfer[transfer]?.order === id;
  drawFirst(draft, isOwn);
  const copies = movableOf(bookSoFar(draft), id);
  const run = on.kind === 'run' ? on.run : ownRun(draft, on, copies, context);
  for (const { id: own, run: from } of copies) {
    const copy = draft.copy[own];
    if (copy && (from !== run || copy.state === 'waiting'))
      bring(copy, { state: 'waiting', run, place: null });
  }
  layFirst(draft, run, new Set(copies.map((copy) => copy.id)), engine);
  const book = bookSoFar(draft);
  const placed = book.run[run] ? (layRun(book, book.run[run])?.copies ?? []) : [];
  const lies = placed.filter(({ order: of }) => of.id === id).length;
  return {
    run,
    placed: lies,
    waiting: copies.filter((copy) => book.copy[copy.id]?.state === 'waiting').length,
  };
}
