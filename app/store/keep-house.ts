import { artworkInUse, type Book } from '../../src/model';
import type { ArtworkStore, SnapshotStore } from '../../src/storage';
import { editContext, mayWrite, useShop } from './shop';

/** How often it is looked whether a snapshot is due, in milliseconds. */
const OFTEN = 300_000;

const hasOrders = (book: Book): boolean => Object.keys(book.order).length > 0;

/**
 * Takes the snapshot that is due, and lets go of images that neither the book nor a snapshot names. Nothing is let go of while it cannot be
 * told what a snapshot, or a record that was set aside, names.
 */
export async function keepHouse(book: Book, snapshots: SnapshotStore, artwork: ArtworkStore): Promise<void> {
  if (hasOrders(book)) await snapshots.takeDue(book, editContext().now);
  const named = await snapshots.artwork();
  if (named === null || useShop.getState().setAside.length > 0) return;
  await artwork.sweep(new Set([...artworkInUse(useShop.getState().book), ...artworkInUse(book), ...named]));
}

/** Takes a snapshot of each hour in which something was changed. */
export function followHours(snapshots: SnapshotStore): () => void {
  let next = Date.now() + OFTEN;
  return useShop.subscribe(({ book, saving }, before) => {
    if (saving === before.saving || saving.kind !== 'saved' || Date.now() < next || !mayWrite()) return;
    next = Date.now() + OFTEN;
    if (hasOrders(book)) void snapshots.takeDue(book, editContext().now).catch(() => undefined);
  });
}
