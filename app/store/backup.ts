import { openArtwork } from '../../src/artwork/browser';
import { edits } from '../../src/editing';
import { artworkInUse, type Book } from '../../src/model';
import type { BundleProblem } from '../../src/output/backup';
import { packBackup, unpackBackup } from '../../src/output/backup/browser';
import { fail, ok, type Result } from '../../src/units';
import { WorkerFailed } from '../../src/workers/browser';
import { download } from '../files/download';
import { keepArtwork, loadArtworkFile } from './artwork';
import { snapshotsNow } from './boot';
import { act, editContext, mayWrite, useShop } from './shop';

/** Saves the open book and its artwork as one file with the browser's downloads. */
export async function saveBackup(fileName: string): Promise<void> {
  const { book } = useShop.getState();
  const used = artworkInUse(book);
  const artwork: [string, Blob][] = [];
  for (const { id } of Object.values(book.artwork)) {
    const file = used.has(id) ? await loadArtworkFile(id) : null;
    if (file) artwork.push([id, file]);
  }
  download(await packBackup({ book, artwork }), fileName);
  act(edits.editSettings({ lastBackup: editContext().now }));
}

/** Puts another book in place of the open one; what was there is kept as a snapshot first. */
async function replaceBook(book: Book): Promise<boolean> {
  const snapshots = snapshotsNow();
  if (!snapshots || !mayWrite()) return false;
  await snapshots.take(useShop.getState().book, 'before-restoring', editContext().now);
  useShop.setState({ book });
  return true;
}

/**
 * Brings a backup back. All of it is verified before anything here is touched, and what was here is kept as a snapshot.
 * @throws {WorkerFailed} if the backup or its artwork cannot be looked at; nothing was replaced then
 */
export async function restoreBackup(file: File): Promise<Result<Book, BundleProblem | 'not-kept'>> {
  try {
    const read = await unpackBackup(file);
    if (!read.ok) return read;
    const { book, artwork } = read.value;
    for (const [id, blob] of artwork) {
      const name = book.artwork[id]?.fileName ?? id;
      const type = book.artwork[id]?.kind === 'svg' ? 'image/svg+xml' : '';
      const opened = await openArtwork(new File([blob], name, { type }));
      const kept = opened.ok ? await keepArtwork(opened.value) : null;
      if (kept && !kept.ok) return fail('not-kept');
    }
    return (await replaceBook(book)) ? ok(book) : fail('not-kept');
  } catch (error) {
    if (error instanceof WorkerFailed) throw error;
    return fail('not-backup');
  }
}

/** Brings the book back as a snapshot has it. */
export async function bringBack(at: string): Promise<boolean> {
  const book = await snapshotsNow()?.book(at);
  return book ? replaceBook(book) : false;
}
