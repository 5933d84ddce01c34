import { openArtwork } from '../../src/artwork/browser';
import { checked, edits, reconciled } from '../../src/editing';
import { artworkInUse, type Book, type Opened } from '../../src/model';
import type { BundleProblem } from '../../src/output/backup';
import { unpackBackup } from '../../src/output/backup/browser';
import { unsummed } from '../../src/stock';
import type { SnapshotProblem, SnapshotStore } from '../../src/storage';
import { fail, ok, type Result } from '../../src/units';
import { WorkerFailed } from '../../src/workers/browser';
import { keepArtwork, keepFile, loadArtworkFile } from './artwork';
import { snapshotsNow } from './boot';
import { firstSettingsNow } from './first-book';
import { act, editContext, mayWrite, sayReconciled, sayTakenOff, useShop } from './shop';

/** A book that was kept, read as far as it can be read and not brought back yet: nothing here was touched. */
export interface FoundBook extends Opened {
  /** Names of images that it needs and that are neither with it nor here. */
  readonly missing: readonly string[];
  /** False for a backup of an earlier version, which has no list of what must be in it. */
  readonly isVerified: boolean;
  readonly images: readonly (readonly [string, Blob])[];
  /** Those of the book that it is to take the place of. */
  readonly snapshots: SnapshotStore | null;
}

/** Whether something of it would be left out, or come otherwise than it is there. */
export const lacksSomething = ({ book, setAside, fellBack, missing }: FoundBook): boolean =>
  setAside.length + fellBack.length + missing.length + unsummed(book).length > 0;

/** The names of images that are not here, of those that are asked for. */
async function notHere(book: Book, ids: Iterable<string>): Promise<string[]> {
  const names: string[] = [];
  for (const id of ids) {
    const file = await loadArtworkFile(id).catch(() => null);
    if (!file) names.push(book.artwork[id]?.fileName ?? id);
  }
  return names;
}

/** A backup as it is read; what cannot be opened at all is none. */
async function unpacked(file: File): ReturnType<typeof unpackBackup> {
  try {
    return await unpackBackup(file, firstSettingsNow());
  } catch (error) {
    if (error instanceof WorkerFailed) throw error;
    return fail({ code: 'not-backup' });
  }
}

/**
 * Reads and verifies a backup.
 * @throws {WorkerFailed} if it cannot be looked at
 */
export async function findBackup(file: File): Promise<Result<FoundBook, BundleProblem>> {
  const snapshots = snapshotsNow();
  const read = await unpacked(file);
  if (!read.ok) return read;
  const { book, setAside, fellBack, artwork, missing, isVerified } = read.value;
  const found = { book, setAside, fellBack, isVerified, snapshots, images: artwork };
  return ok({ ...found, missing: await notHere(book, missing) });
}

/** Reads and verifies a snapshot of the book that is open. */
export async function findSnapshot(at: string): Promise<Result<FoundBook, SnapshotProblem | 'not-kept'>> {
  const snapshots = snapshotsNow();
  const read = snapshots
    ? await snapshots.read(at).catch(() => fail('not-kept' as const))
    : fail('not-kept' as const);
  if (!read.ok) return read;
  const { book } = read.value;
  const used = artworkInUse(book);
  const needed = Object.keys(book.artwork).filter((id) => used.has(id));
  return ok({
    ...read.value,
    isVerified: true,
    images: [],
    snapshots,
    missing: await notHere(book, needed),
  });
}

/** Puts the images of a backup on the disk; one that cannot be looked at here is kept as it is. */
async function keepImages({ book, images }: FoundBook): Promise<boolean> {
  for (const [id, blob] of images) {
    const name = book.artwork[id]?.fileName ?? id;
    const type = book.artwork[id]?.kind === 'svg' ? 'image/svg+xml' : '';
    const opened = await openArtwork(new File([blob], name, { type }));
    const kept = opened.ok ? await keepArtwork(opened.value) : await keepFile(id, blob);
    if (!kept.ok) return false;
  }
  return true;
}

/**
 * Puts another book in place of the open one; what was there is kept as a snapshot first, up to the last edit. Copies that cannot lie
 * where they lie come off the film, which is said.
 * @returns false where nothing is replaced: that book is no longer open, another tab writes, or it cannot be kept
 */
async function replaceBook({ book, snapshots }: FoundBook): Promise<boolean> {
  const sound = checked(book, editContext());
  const summed = reconciled(sound.book, editContext());
  let kept: Book | null = null;
  while (mayWrite() && snapshots && snapshots === snapshotsNow()) {
    const present = useShop.getState().book;
    if (present === kept) {
      useShop.setState({ book: summed.book });
      sayTakenOff(sound.takenOff);
      sayReconciled(summed.films);
      return true;
    }
    try {
      await snapshots.take(present, 'before-restoring', editContext().now);
    } catch {
      return false;
    }
    kept = present;
  }
  return false;
}

/**
 * Brings a book back as far as it could be read; what was here is kept as a snapshot.
 * @returns `not-kept`, and all is as it was
 * @throws {WorkerFailed} if its artwork cannot be looked at; nothing was replaced then
 */
export async function bringBack(found: FoundBook): Promise<Result<void, 'not-kept'>> {
  return (await keepImages(found)) && (await replaceBook(found)) ? ok(undefined) : fail('not-kept');
}

/**
 * Brings orders of a kept book back into the one that is open.
 * @returns how many orders and copies came; `null` where nothing may be written, or another book is open by now
 */
export function bringOrdersBack(
  { book, snapshots }: FoundBook,
  orders: Iterable<string>,
): { readonly orders: number; readonly copies: number } | null {
  if (snapshots !== snapshotsNow()) return null;
  return act(edits.bringOrders(book, orders))?.result ?? null;
}
