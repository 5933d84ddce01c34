import { expose } from 'comlink';
import type { Book } from '../../../model';
import { ok, type Result } from '../../../units';
import { sha256 } from '../../../units/browser/sha256';
import { type BundleProblem, packBundle, unpackBundle } from '..';

const archivist = {
  async pack(book: Book, artwork: readonly (readonly [string, Blob])[]): Promise<Blob> {
    const files = new Map<string, Uint8Array>();
    for (const [id, blob] of artwork) files.set(id, new Uint8Array(await blob.arrayBuffer()));
    return new Blob([packBundle({ book, artwork: files })], { type: 'application/zip' });
  },
  async unpack(file: Blob): Promise<Result<{ book: Book; artwork: [string, Blob][] }, BundleProblem>> {
    const read = await unpackBundle(new Uint8Array(await file.arrayBuffer()), sha256);
    if (!read.ok) return read;
    const { book, artwork } = read.value;
    const blobs = [...artwork].map(([id, bytes]): [string, Blob] => [id, new Blob([new Uint8Array(bytes)])]);
    return ok({ book, artwork: blobs });
  },
};

export type Archivist = typeof archivist;

expose(archivist);
