import type { Book, Id, Instant, Run } from '../model';
import type { BookDraft } from './step';

/** The spare copies of a run go on the shelf, one entry a transfer; those that are on it already stay as they are. */
export function shelveOvers(draft: BookDraft, run: Run, now: Instant): void {
  const { snapshot } = run;
  const spoiled = new Set(
    Object.values(draft.spoilage).flatMap((own) => (own.run === run.id ? [own.copy as string] : [])),
  );
  const cured = run.history.findLast(({ state }) => state === 'cured')?.at ?? now;
  for (const { id: transfer, order, name, width, height, artwork } of snapshot?.transfers ?? []) {
    const id = `${run.id}/${transfer}` as Id<'shelf'>;
    const count = (snapshot?.copies ?? []).filter(
      (copy) => copy.transfer === transfer && copy.role === 'over' && !spoiled.has(copy.id),
    ).length;
    // Closed before, and taken back since: it lies there already.
    if (count === 0 || draft.shelf[id]) continue;
    const code = snapshot?.orders.find((each) => each.id === order)?.code ?? '';
    draft.shelf[id] = { id, name, code, width, height, artwork, count, cured, changed: now };
  }
}

/** Copies that wait, and that a shelved transfer is the same as: artwork and size. Orders that are due sooner come first. */
export function waitingFor(book: Book, shelfId: string): Id<'copy'>[] {
  const item = book.shelf[shelfId];
  if (!item) return [];
  const due = (transfer: string) => book.order[book.transfer[transfer]?.order ?? '']?.due ?? '9999';
  return Object.values(book.copy)
    .filter((copy) => {
      const transfer = book.transfer[copy.transfer];
      const order = book.order[transfer?.order ?? ''];
      return (
        copy.place === null &&
        !copy.shelved &&
        copy.role === 'ordered' &&
        order?.archived === false &&
        transfer?.width === item.width &&
        transfer.height === item.height &&
        (item.artwork === null ? transfer.name === item.name : transfer.artwork === item.artwork)
      );
    })
    .sort((a, b) => due(a.transfer).localeCompare(due(b.transfer)) || a.number - b.number)
    .map(({ id }) => id);
}

/**
 * Takes transfers off the shelf for copies that wait: they need no film any more.
 * @returns how many were taken
 */
export function drawFromShelf(draft: BookDraft, shelfId: string): number {
  const item = draft.shelf[shelfId];
  if (!item) return 0;
  const copies = waitingFor(draft as Book, shelfId).slice(0, item.count);
  for (const id of copies) {
    const copy = draft.copy[id];
    if (copy) Object.assign(copy, { shelved: true, run: null });
  }
  item.count -= copies.length;
  return copies.length;
}
