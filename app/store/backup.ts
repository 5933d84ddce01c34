import { openArtwork } from '../../src/artwork/browser';
import { edits } from '../../src/editing';
import { artworkInUse, type Book } from '../../src/model';
import type { BundleProblem } from '../../src/output/backup';
import { packBackup, unpackBackup } from '../../src/output/backup/browser';
import type { SnapshotProblem, SnapshotStore } from '../../src/storage';
import { fail, ok, type Result } from '../../src/units';
import { WorkerFailed } from '../../src/workers/browser';
import { download } from '../files/download';
import { askWhere, writeAndRead } from '../files/save-file';
import { keepArtwork, keepFile, loadArtworkFile } from './artwork';
import { snapshotsNow } from './boot';
import { act, editContext, mayWrite, useShop } from './shop';

/** The files of all artwork that a book needs, and the ids of those that are not here. */
async function filesOf(book: Book): Promise<{ files: [string, Blob][]; lost: string[] }> {
  const used = artworkInUse(book);
  const files: [string, Blob][] = [];
  const lost: string[] = [];
  for (const { id } of Object.values(book.artwork)) {
    if (!used.has(id)) continue;
    const file = await loadArtworkFile(id);
    if (file) files.push([id, file]);
    else lost.push(id);
  }
  return { files, lost };
}

/**
 * Saves the open book and its artwork as one file: where the user says, or else with the browser's downloads. What was written is read
 * again before it counts as a backup; a download is read before it is handed over.
 * @returns the names of images that could not be put in. `differs`: what was read again is not what was written
 * @throws {WorkerFailed} if it cannot be packed; what the disk says, if it cannot be written
 */
export async function saveBackup(
  fileName: string,
): Promise<Result<readonly string[], 'dismissed' | 'differs'>> {
  const handle = await askWhere(fileName, { 'application/zip': ['.zip'] });
  if (handle === 'dismissed') return fail('dismissed');
  const opened = snapshotsNow();
  const { book } = useShop.getState();
  const { files, lost } = await filesOf(book);
  const { file, digest, leftOut } = await packBackup(book, files);
  const read = await unpackBackup(handle ? await writeAndRead(handle, file) : file);
  if (!read.ok || read.value.digest !== digest) return fail('differs');
  if (!handle) download(file, fileName);
  if (snapshotsNow() === opened && mayWrite()) act(edits.editSettings({ lastBackup: editContext().now }));
  return ok([...lost, ...leftOut].map((id) => book.artwork[id]?.fileName ?? id));
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
    return fail({ code: 'not-backup' });
  }
}

/** Puts the images of a backup on the disk; one that cannot be looked at here is kept as it is. */
async function keepImages(book: Book, artwork: readonly (readonly [string, Blob])[]): Promise<boolean> {
  for (const [id, blob] of artwork) {
    const name = book.artwork[id]?.fileName ?? id;
    const type = book.artwork[id]?.kind === 'svg' ? 'image/svg+xml' : '';
    const opened = await openArtwork(new File([blob], name, { type }));
    const kept = opened.ok ? await keepArtwork(opened.value) : await keepFile(id, blob);
    if (!kept.ok) return false;
  }
  return true;
}

/**
 * Brings a backup back. All of it is verified before anything here is touched, and what was here is kept as a snapshot.
 * @returns the book, and whether the file could be verified whole
 * @throws {WorkerFailed} if the backup or its artwork cannot be looked at; nothing was replaced then
 */
export async function restoreBackup(
  file: File,
): Promise<Result<{ book: Book; isVerified: boolean }, BundleProblem | { readonly code: 'not-kept' }>> {
  const snapshots = snapshotsNow();
  const read = await unpacked(file);
  if (!read.ok) return read;
  const { book, artwork, isVerified } = read.value;
  const isKept = (await keepImages(book, artwork)) && (await replaceBook(book, snapshots));
  return isKept ? ok({ book, isVerified }) : fail({ code: 'not-kept' });
}

/**
 * Brings the book back as a snapshot has it; what was here is kept as another.
 * @returns why it is not brought back, and all is as it was
 */
export async function bringBack(at: string): Promise<Result<void, SnapshotProblem | 'not-kept'>> {
  const snapshots = snapshotsNow();
  const read = snapshots
    ? await snapshots.read(at).catch(() => fail('not-kept' as const))
    : fail('not-kept' as const);
  if (!read.ok) return read;
  return (await replaceBook(read.value, snapshots)) ? ok(undefined) : fail('not-kept');
}
