import { createHash } from 'node:crypto';
import type { Book } from '../../src/model';
import { packBundle, type Source } from '../../src/output/backup';

export const hash = async (bytes: Uint8Array): Promise<string> =>
  createHash('sha256').update(bytes).digest('hex');

/** A backup of a book and its images, as one piece of memory. */
export async function packed(
  book: Book,
  images: readonly (readonly [string, Uint8Array])[] = [],
): Promise<{ bytes: Uint8Array<ArrayBuffer>; digest: string; leftOut: string[] }> {
  const chunks: Uint8Array[] = [];
  const files = images.map(([id, image]): [string, () => Promise<Uint8Array<ArrayBuffer>>] => [
    id,
    async () => new Uint8Array(image),
  ]);
  const { digest, leftOut } = await packBundle(book, files, hash, (chunk) =>
    chunks.push(new Uint8Array(chunk)),
  );
  return { bytes: new Uint8Array(Buffer.concat(chunks)), digest, leftOut };
}

export const sourceOf = (bytes: Uint8Array): Source => ({
  size: bytes.length,
  read: async (from, to) => new Uint8Array(bytes.slice(from, to)),
});
