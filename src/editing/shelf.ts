import type { Draft } from 'immer';
import {
  asId,
  type Book,
  type Copy,
  type Id,
  type Instant,
  runViewOf,
  type Transfer,
  turnsOf,
} from '../model';
import { bring } from './places';
import { type BookDraft, bookSoFar } from './step';

type Item = Book['shelf'][string];

/** Whether what lies on the shelf is the same as a transfer: artwork and size. */
const isSame = (item: Item, transfer: Transfer | undefined): boolean =>
  transfer?.width === item.width &&
  transfer.height === item.height &&
  (item.artwork === null ? transfer.name === item.name : transfer.artwork === item.artwork);

/** The spare copies of a run go on the shelf, one entry a transfer; those that are on it already stay as they are. */
export function shelveOvers(draft: BookDraft, id: Id<'run'>, now: Instant): void {
  const view = runViewOf(bookSoFar(draft), id);
  if (!view) return;
  const { run } = view;
  const spoiled = new Set(
    Object.values(draft.spoilage).flatMap((own) => (own.run === id ? [own.copy as string] : [])),
  );
  const cured = run.history.findLast(({ state }) => state === 'cured')?.at ?? now;
  for (const { id: transfer, order, name, width, height, artwork } of Object.values(view.transfer)) {
    const item = asId<'shelf'>(`${id}/${transfer}`);
    const count = view.placed.filter(
      ({ copy }) => copy.transfer === transfer && copy.role === 'over' && !spoiled.has(copy.id),
    ).length;
    // Closed before, and taken back since: it lies there already.
    if (count === 0 || draft.shelf[item]) continue;
    const code = view.order[order]?.code ?? '';
    draft.shelf[item] = { id: item, name, code, width, height, artwork, count, cured, changed: now };
  }
}

/** Copies that wait, and that a shelved transfer is the same as. Orders in a rush come first, then those that are due sooner. */
export function waitingFor(book: Book, shelfId: string): Id<'copy'>[] {
  const item = book.shelf[shelfId];
  if (!item) return [];
  const turns = turnsOf(Object.values(book.order));
  const turnOf = ({ transfer }: Copy) => turns.get(book.transfer[transfer]?.order ?? asId('')) ?? turns.size;
  return Object.values(book.copy)
    .filter((copy) => {
      const transfer = book.transfer[copy.transfer];
      return (
        copy.state === 'waiting' &&
        copy.role === 'ordered' &&
        book.order[transfer?.order ?? '']?.archived === false &&
        isSame(item, transfer)
      );
    })
    .sort((a, b) => turnOf(a) - turnOf(b) || a.number - b.number)
    .map(({ id }) => id);
}

/**
 * Takes transfers off the shelf for copies that wait: they need no film any more.
 * @param isWanted which of the copies that wait; all of them, if it is left out
 * @returns how many were taken
 */
export function drawFromShelf(
  draft: BookDraft,
  shelfId: string,
  isWanted: (copy: Copy) => boolean = () => true,
): number {
  const item = draft.shelf[shelfId];
  if (!item || item.count === 0) return 0;
  const copies = waitingFor(draft, shelfId)
    .flatMap((id) => draft.copy[id] ?? [])
    .filter(isWanted)
    .slice(0, item.count);
  for (const copy of copies) bring(copy, { state: 'shelved', run: null, place: null });
  item.count -= copies.length;
  return copies.length;
}

/** Copies of one transfer that were taken from the shelf. */
export interface Drawn {
  readonly name: string;
  readonly count: number;
}

/** Takes what there is on the shelf before more is printed, unless the shop does not want that; what was cured first goes first. */
export function drawFirst(draft: BookDraft, isWanted: (copy: Copy) => boolean): Drawn[] {
  if (draft.settings.shop?.shelfFirst !== true) return [];
  return Object.values(draft.shelf)
    .toSorted((a, b) => a.cured.localeCompare(b.cured))
    .map(({ id, name }) => ({ name, count: drawFromShelf(draft, id, isWanted) }))
    .filter(({ count }) => count > 0);
}

/** Puts a copy that was taken from the shelf, and is not wanted any more, back there. */
export function putBack(draft: BookDraft, copy: Copy | Draft<Copy>): void {
  if (copy.state !== 'shelved') return;
  const transfer = draft.transfer[copy.transfer];
  const item = Object.values(draft.shelf).find((own) => isSame(own, transfer));
  if (item) item.count += 1;
}
