import { DiskFull } from '../..';

/** A file that is written from its beginning on. */
export interface Sink {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Ends the file as it is. */
  close(): Promise<void>;
  /** Gives up: nothing of it stays. */
  abandon(): Promise<void>;
}

/** A file that the user chose. Nothing is seen of it before it is whole. */
export async function chosenFile(handle: FileSystemFileHandle): Promise<Sink> {
  const stream = await handle.createWritable();
  return {
    write: (bytes) => stream.write(bytes),
    close: () => stream.close(),
    async abandon() {
      await stream.abort().catch(() => undefined);
      // The file that was made when it was chosen is empty still; where it cannot be removed, it stays so.
      const file = handle as FileSystemFileHandle & { remove?: () => Promise<void> };
      if ((await handle.getFile()).size === 0) await file.remove?.().catch(() => undefined);
    },
  };
}

/** A file of the origin's private file system; whoever made it removes it. */
export async function privateFile(handle: FileSystemFileHandle): Promise<Sink> {
  const file = await handle.createSyncAccessHandle();
  file.truncate(0);
  let at = 0;
  return {
    async write(bytes) {
      if (file.write(bytes, { at }) !== bytes.length) throw new DiskFull();
      at += bytes.length;
    },
    async close() {
      file.flush();
      file.close();
    },
    async abandon() {
      file.truncate(0);
      file.close();
    },
  };
}
