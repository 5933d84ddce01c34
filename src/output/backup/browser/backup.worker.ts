import { expose } from 'comlink';
import type { Book, Settings } from '../../../model';
import { ok, type Result } from '../../../units';
import { sha256 } from '../../../units/browser/sha256';
import {
  type Bundle,
  type BundleProblem,
  bytesOf,
  type Part,
  packBundle,
  rangeOf,
  type Source,
  unpackBundle,
} from '..';

/** A backup that was read and verified, its images by their ids. */
export interface Unpacked extends Omit<Bundle, 'artwork'> {
  readonly artwork: readonly (readonly [string, Blob])[];
}

/** A backup in one file, the digest of its book, and the ids of images that could not be put in. */
export interface Packed {
  readonly file: Blob;
  readonly digest: string;
  readonly leftOut: readonly string[];
}

/** Chunks are handed to the browser in pieces of some size, so that no more than one is in this worker's memory. */
const PIECE = 16 << 20;

const sourceOf = (file: Blob): Source => ({
  size: file.size,
  read: async (from, to) => new Uint8Array(await file.slice(from, to).arrayBuffer()),
});

/** An image as it lies in the file: one that is stored as it is is not read. */
async function blobOf(file: Blob, source: Source, part: Part): Promise<Blob> {
  const range = part.isStored ? await rangeOf(source, part) : null;
  if (range) return file.slice(...range);
  const bytes = await bytesOf(source, part);
  return new Blob(bytes ? [bytes] : []);
}

const archivist = {
  async pack(book: Book, artwork: readonly (readonly [string, Blob])[]): Promise<Packed> {
    const pieces: Blob[] = [];
    let chunks: Uint8Array<ArrayBuffer>[] = [];
    let length = 0;
    const seal = () => {
      pieces.push(new Blob(chunks));
      chunks = [];
      length = 0;
    };
    const images = artwork.map(([id, blob]): [string, () => Promise<Uint8Array<ArrayBuffer>>] => [
      id,
      async () => new Uint8Array(await blob.arrayBuffer()),
    ]);
    const { digest, leftOut } = await packBundle(book, images, sha256, (chunk) => {
      chunks.push(new Uint8Array(chunk));
      length += chunk.length;
      if (length >= PIECE) seal();
    });
    seal();
    return { file: new Blob(pieces, { type: 'application/zip' }), digest, leftOut };
  },
  async unpack(file: Blob, first: Settings): Promise<Result<Unpacked, BundleProblem>> {
    const source = sourceOf(file);
    const read = await unpackBundle(source, sha256, first);
    if (!read.ok) return read;
    const artwork: [string, Blob][] = [];
    for (const [id, part] of read.value.artwork) artwork.push([id, await blobOf(file, source, part)]);
    return ok({ ...read.value, artwork });
  },
};

export type Archivist = typeof archivist;

expose(archivist);
