import { type Book, filmCost, type Id, type StockItem, type Supply } from '../model';
import { amountOf, entryProblem, standing } from '../stock';
import { asMinor, type Micrometres, um } from '../units';
import { addFilm, type FilmFields } from './films';
import { counterEntry, enter } from './ledger';
import type { BookDraft, EditContext } from './step';

type Own = 'id' | 'changed' | 'archived';
/** What is entered for something to keep in stock; of each kind its own fields. */
export type SupplyFields = Supply extends infer Each
  ? Each extends Supply
    ? Omit<Each, Own>
    : never
  : never;

/** What is noted of the box of any item. */
type BoxFields = Pick<StockItem, 'lot' | 'bestBefore' | 'opened' | 'reorder' | 'order'>;

const nothingNoted: BoxFields = { lot: '', bestBefore: null, opened: null, reorder: null, order: '' };

/** Begins to keep something in stock, with as much as there is of it. */
export function addSupply(
  draft: BookDraft,
  fields: SupplyFields,
  amount: number,
  context: EditContext,
): Id<'item'> {
  const id = context.newId<'item'>();
  draft.item[id] = { ...fields, id, archived: false, changed: context.now };
  enter(draft, id, amount, { kind: 'opening' }, context);
  return id;
}

/** Begins to keep several things in stock at once: a garment in all its sizes. */
export function addSupplies(
  draft: BookDraft,
  supplies: readonly { readonly fields: SupplyFields; readonly amount: number }[],
  context: EditContext,
): void {
  for (const { fields, amount } of supplies) addSupply(draft, fields, amount, context);
}

/** Adds a film that was bought, with what is on its box. */
export function buyFilm(
  draft: BookDraft,
  fields: FilmFields,
  box: Partial<BoxFields>,
  context: EditContext,
): void {
  noteFilmBox(draft, addFilm(draft, fields, context, 'bought'), box, context);
}

/** Changes what is known of a supply; what kind it is stays. */
export function editSupply(
  draft: BookDraft,
  id: string,
  fields: Partial<BoxFields> & { name?: string },
): void {
  const item = draft.item[id];
  if (item && item.kind !== 'film') Object.assign(item, fields);
}

/** Notes what is on the box of a film. */
export function noteFilmBox(
  draft: BookDraft,
  film: Id<'film'>,
  fields: Partial<BoxFields>,
  { now }: EditContext,
): void {
  if (!draft.film[film]) return;
  const known = draft.item[film];
  if (known) Object.assign(known, fields);
  else draft.item[film] = { id: film, kind: 'film', cutFrom: null, ...nothingNoted, ...fields, changed: now };
}

/** Puts an item away: it keeps its entries and may be taken out again. */
export function archiveItem(draft: BookDraft, id: string, archived: boolean): void {
  const item = draft.film[id] ?? draft.item[id];
  if (item && 'archived' in item) item.archived = archived;
}

/** What a hand notes: how much came or went, or how much there is. */
export type HandEntry =
  | { readonly kind: 'bought' | 'returned'; readonly amount: number }
  | { readonly kind: 'weighed-out' | 'discarded' | 'spoiled'; readonly amount: number }
  | { readonly kind: 'counted'; readonly amount: number };

/** The signed change that a hand's entry makes of the present amount. */
export function changeBy(entry: HandEntry, present: number): number {
  switch (entry.kind) {
    case 'bought':
    case 'returned':
      return entry.amount;
    case 'counted':
      return entry.amount - present;
    default:
      return -entry.amount;
  }
}

/** Enters what a hand notes; nothing, where more would leave than there is or the item is gone: see `entryProblem`. */
export function enterByHand(
  draft: BookDraft,
  id: string,
  entry: HandEntry,
  { run, note }: { readonly run: Id<'run'> | null; readonly note: string },
  context: EditContext,
): void {
  const present = amountOf(draft, id);
  if (present === null) return;
  const change = changeBy(entry, present);
  if (entryProblem(draft, id, change) === null)
    enter(draft, id, change, { kind: entry.kind, run, note }, context);
}

/**
 * Makes a film of its own out of what is left of another: so much of a roll, or the clean end of a sheet that is printed already.
 * It is a sheet to lay out on, and costs what its length of the roll does.
 */
export function cutOffcut(
  draft: BookDraft,
  from: Id<'film'>,
  length: Micrometres,
  name: string,
  context: EditContext,
): Id<'film'> | null {
  const film = draft.film[from];
  if (!film || length <= 0 || (film.kind === 'roll' && length > film.lengthLeft)) return null;
  const { width, margins, gap, cutting, together, peel, curl } = film;
  const entry =
    film.kind === 'roll' ? enter(draft, from, -length, { kind: 'cut', note: name }, context) : null;
  const price = film.kind === 'roll' ? filmCost(length, film) : asMinor(0);
  const fields = {
    kind: 'sheets' as const,
    name,
    printer: film.printer,
    width,
    margins: { ...margins },
    gap,
    cutting,
    together: { ...together },
    peel,
    curl,
    length,
    sheetsLeft: 1,
    price,
    archived: false,
  };
  const id = addFilm(draft, fields, context, 'cut');
  noteFilmBox(
    draft,
    id,
    { lot: draft.item[from]?.lot ?? '', bestBefore: draft.item[from]?.bestBefore ?? null },
    context,
  );
  const box = draft.item[id];
  if (box?.kind === 'film') box.cutFrom = { film: from, name: film.name, length: um(length), entry };
  return id;
}

/** Whether an offcut can be put back: it is whole, on no run, and the roll it came from is there. */
export function mayPutBack(book: Book, id: string): boolean {
  const box = book.item[id];
  const film = book.film[id];
  if (box?.kind !== 'film' || !box.cutFrom || film?.kind !== 'sheets' || film.sheetsLeft !== 1) return false;
  const isOnRun = Object.values(book.run).some((run) => run.film === id);
  return !isOnRun && (box.cutFrom.entry === null || book.film[box.cutFrom.film] !== undefined);
}

/** Takes an offcut back: its roll has its length again, and the film of its own is gone. */
export function putOffcutBack(draft: BookDraft, id: string, context: EditContext): void {
  if (!mayPutBack(draft, id)) return;
  const box = draft.item[id];
  const cut = box?.kind === 'film' ? box.cutFrom : null;
  // What was undone by hand before has given the roll its length back already.
  const ofCut = standing(
    draft.entry,
    (entry) => entry.id === cut?.entry || (entry.item === id && entry.kind === 'cut'),
  );
  for (const entry of ofCut) counterEntry(draft, entry.id, context);
  // A sheet that was counted by hand, where its cut was undone before, goes back with it.
  enter(draft, id, -(amountOf(draft, id) ?? 0), { kind: 'cut' }, context);
  delete draft.film[id];
  delete draft.item[id];
}
