import { edits } from '../../src/editing';
import { artworkInUse, type Book } from '../../src/model';
import { packBackup, unpackBackup } from '../../src/output/backup/browser';
import { fail, ok, type Result } from '../../src/units';
import { download } from '../files/download';
import { askWhere, writeAndRead } from '../files/save-file';
import { loadArtworkFile } from './artwork';
import { snapshotsNow } from './boot';
import { firstSettingsNow } from './first-book';
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
 * Packs the open book and its artwork, writes it to a file or hands it to the browser's downloads under a name, and notes the date. What
 * was written is read again before it counts as a backup; a download is read before it is handed over.
 * @returns the names of images that could not be put in. `differs`: what was read again is not what was written
 * @throws {WorkerFailed} if it cannot be packed; what the disk says, if it cannot be written
 */
export async function handOutBackup(
  to: FileSystemFileHandle | string,
): Promise<Result<readonly string[], 'differs'>> {
  const opened = snapshotsNow();
  const { book } = useShop.getState();
  const { files, lost } = await filesOf(book);
  const { file, digest, leftOut } = await packBackup(book, files);
  const written = typeof to === 'string' ? file : await writeAndRead(to, file);
  const read = await unpackBackup(written, firstSettingsNow());
  if (!read.ok || read.value.digest !== digest) return fail('differs');
  if (typeof to === 'string') download(file, to);
  if (snapshotsNow() === opened && mayWrite()) act(edits.editSettings({ lastBackup: editContext().now }));
  return ok([...lost, ...leftOut].map((id) => book.artwork[id]?.fileName ?? id));
}

/** Saves a backup where the user says, or else with the browser's downloads; see {@link handOutBackup}. */
export async function saveBackup(
  fileName: string,
): Promise<Result<readonly string[], 'dismissed' | 'differs'>> {
  const handle = await askWhere(fileName, { 'application/zip': ['.zip'] });
  return handle === 'dismissed' ? fail('dismissed') : handOutBackup(handle ?? fileName);
}
