/** Files that are kept only until they are saved, in a folder of the origin's private file system. */
const FOLDER = 'print-images';
/** Held while a folder's files are in use, by whichever tab. */
const LOCK = 'rollwright print images';

const rootFolder = (): Promise<FileSystemDirectoryHandle> => navigator.storage.getDirectory();

/** Whether this browser has a private file system at all. */
export const hasPrivateFiles = (): boolean => typeof navigator.storage?.getDirectory === 'function';

/** A new folder for the files of one export. */
export async function openPrivateFolder(): Promise<{
  file(name: string): Promise<FileSystemFileHandle>;
  /** Removes the folder with all that lies in it. */
  remove(): Promise<void>;
}> {
  const parent = await (await rootFolder()).getDirectoryHandle(FOLDER, { create: true });
  const name = crypto.randomUUID();
  const folder = await parent.getDirectoryHandle(name, { create: true });
  let release = () => {};
  await new Promise<void>((taken) => {
    void navigator.locks.request(`${LOCK} ${name}`, () => {
      taken();
      return new Promise<void>((resolve) => {
        release = resolve;
      });
    });
  });
  return {
    file: (fileName) => folder.getFileHandle(fileName, { create: true }),
    async remove() {
      await parent.removeEntry(name, { recursive: true }).catch(() => undefined);
      release();
    },
  };
}

/** Removes what exports left behind that were ended with their tab. */
export async function sweepPrivateFiles(): Promise<void> {
  if (!hasPrivateFiles()) return;
  const parent = await (await rootFolder()).getDirectoryHandle(FOLDER).catch(() => null);
  if (!parent) return;
  const held = new Set((await navigator.locks.query()).held?.map(({ name }) => name));
  for await (const name of parent.keys()) {
    if (!held.has(`${LOCK} ${name}`))
      await parent.removeEntry(name, { recursive: true }).catch(() => undefined);
  }
}
