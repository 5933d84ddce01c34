import { DiskFull } from '../..';
import type { Sink } from './sink';

/** A file that the user chose. Nothing is seen of it before it is whole. */
export async function chosenFile(handle: FileSystemFileHandle): Promise<Sink> {
  const stream = await handle.createWritable();
  return {
    write: (bytes) => stream.write(bytes),
    rewrite: (bytes, at) => stream.write({ type: 'write', position: at, data: bytes }),
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
    async rewrite(bytes, position) {
      if (file.write(bytes, { at: position }) !== bytes.length) throw new DiskFull();
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
