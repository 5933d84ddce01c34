import { isDismissed, type Pickers } from './pickers';

/**
 * Asks where a file is to be saved. To be called as soon as a button is pressed: browsers ask only then.
 * @param accept its ending by its type
 * @returns `null` where the browser cannot ask
 */
export async function askWhere(
  suggestedName: string,
  accept: Readonly<Record<string, readonly string[]>>,
): Promise<FileSystemFileHandle | 'dismissed' | null> {
  try {
    return (await (window as Pickers).showSaveFilePicker?.({ suggestedName, types: [{ accept }] })) ?? null;
  } catch (error) {
    return isDismissed(error) ? 'dismissed' : null;
  }
}

/** Writes a file where it is to be saved, and reads it again from there. */
export async function writeAndRead(handle: FileSystemFileHandle, file: Blob): Promise<File> {
  const writable = await handle.createWritable();
  await writable.write(file);
  await writable.close();
  return handle.getFile();
}
