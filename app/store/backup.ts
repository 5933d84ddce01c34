import { openArtwork } from '../../src/artwork/browser';
import { edits } from '../../src/editing';
import { artworkInUse, type Book } from '../../src/model';
import type { BundleProblem } from '../../src/output/backup';
import { packBackup, unpackBackup } from '../../src/output/backup/browser';
import type { SnapshotStore } from '../../src/storage';
import { fail, ok, type Result } from '../../src/units';
import { WorkerFailed } from '../../src/workers/browser';
import { download } from '../files/download';
import { keepArtwork, loadArtworkFile } from './artwork';
import { snapshotsNow } from './boot';
import { act, editContext, mayWrite, useShop } from './shop';

/** Saves the open book and its artwork as one file with the browser's downloads. */
export async function saveBackup(fileName: string): Promise<void> {
  const opened = snapshotsNow();
  const { book } = useShop.getState();
  const used = artworkInUse(book);
  const artwork: [string, Blob][] = [];
  for (const { id } of Object.values(book.artwork)) {
    const file = used.has(id) ? await loadArtworkFile(id) : null;
    if (file) artwork.push([id, file]);
  }
  download(await packBackup({ book, artwork }), fileName);
  if (snapshotsNow() === opened) act(edits.editSettings({ lastBackup: editContext().now }));
}

/**
 * Puts another book in place of the open one; what was there is kept as a snapshot first, up to the last edit.
 * @param snapshots those of the book that is to be replaced
 * @returns false where nothing is replaced: that book is no longer open, another tab writes, or it cannot be kept
 */
async function replaceBook(book: Book, snapshots: SnapshotStore | null): Promise<boolean> {
  let kept: Book | null = null;
  while (mayWrite() && snapshots && snapshots === snapshotsNow()) {
    const present = useShop.getState().book;
    if (present === kept) {
      useShop.setState({ book });
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

/** A backup as it is read; what cannot be opened at all is none. */
async function unpacked(file: File): ReturnType<typeof unpackBackup> {
  try {
    return await unpackBackup(file);
  } catch (error) {
    if (error instanceof WorkerFailed) throw error;
    return fail('not-backup');
  }
}

/**
 * Brings a backup back. All of it is verified before anything here is touched, and what was here is kept as a snapshot.
 * @throws {WorkerFailed} if the backup or its artwork cannot be looked at; nothing was replaced then
 */
export async function restoreBackup(file: File): Promise<Result<Book, BundleProblem | 'not-kept'>> {
  const snapshots = snapshotsNow();
  const read = await unpacked(file);
  if (!read.ok) return read;
  const { book, artwork } = read.value;
  for (const [id, blob] of artwork) {
    const name = book.artwork[id]?.fileName ?? id;
    const type = book.artwork[id]?.kind === 'svg' ? 'image/svg+xml' : '';
    const opened = await openArtwork(new File([blob], name, { type }));
    const kept = opened.ok ? await keepArtwork(opened.value) : null;
    if (kept && !kept.ok) return fail('not-kept');
  }
  return (await replaceBook(book, snapshots)) ? ok(book) : fail('not-kept');
}

/**
 * Brings the book back as a snapshot has it.
 * @returns false where it is not brought back, and all is as it was
 */
export async function bringBack(at: string): Promise<boolean> {
  const snapshots = snapshotsNow();
  const book = await snapshots?.book(at).catch(() => null);
  return book ? replaceBook(book, snapshots) : false;
}
