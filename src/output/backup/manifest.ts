import { strFromU8 } from 'fflate';
import * as z from 'zod/mini';

export const BOOK = 'book.json';
export const MANIFEST = 'manifest.json';
export const ARTWORK = 'artwork/';

/** From this version of the model on every backup has a manifest. */
export const FIRST_WITH_MANIFEST = 19;

const sha256 = z.string().check(z.regex(/^[0-9a-f]{64}$/));

const schema = z.object({
  format: z.literal('rollwright backup manifest'),
  /** SHA-256 of the book's bytes. */
  book: sha256,
  /** The images, by the SHA-256 of their bytes, which is their id. */
  images: z.array(sha256),
});

/** What a backup must hold to be whole. */
export type Manifest = Omit<z.infer<typeof schema>, 'format'>;

export const writeManifest = ({ book, images }: Manifest): string =>
  JSON.stringify({ format: 'rollwright backup manifest', book, images });

/** `null` for bytes that are no manifest. */
export function readManifest(bytes: Uint8Array): Manifest | null {
  try {
    const read = z.safeParse(schema, JSON.parse(strFromU8(bytes)));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
