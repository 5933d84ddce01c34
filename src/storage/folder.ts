import { createStore, del, get, set, type UseStore } from 'idb-keyval';

/** The folder to which backups go by themselves. */
export interface BackupFolder {
  readonly handle: FileSystemDirectoryHandle;
  /** When the last was written, in milliseconds; `null` before the first. */
  readonly at: number | null;
}

const KEY = 'folder';

/** A database of its own: a handle is of this device alone, and no part of a book. */
const store = (): UseStore => createStore('rollwright-folder', 'folder');

/** The folder that was chosen; `null` if none was, or storage fails. */
export async function backupFolder(): Promise<BackupFolder | null> {
  try {
    return (await get<BackupFolder>(KEY, store())) ?? null;
  } catch {
    return null;
  }
}

/** Remembers it until it is forgotten; where storage fails, until the page is left. */
export async function rememberFolder(folder: BackupFolder): Promise<void> {
  await set(KEY, folder, store()).catch(() => undefined);
}

export async function forgetFolder(): Promise<void> {
  await del(KEY, store()).catch(() => undefined);
}
