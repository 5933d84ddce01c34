import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { type Book, readWritten, recordsOf, writeKept } from '../../model';
import { fail, ok, type Result } from '../../units';

/** A book with its artwork, by the artwork's id. */
export interface Bundle {
  readonly book: Book;
  readonly artwork: ReadonlyMap<string, Uint8Array>;
}

/**
 * Why a file is no backup of ours. `damaged`: a part is missing or changed. `newer`: made by a newer version.
 */
export type BundleProblem = 'not-backup' | 'damaged' | 'newer';

const BOOK = 'book.json';
const ARTWORK = 'artwork/';

/** Packs a book and its artwork into one zip file (PKWARE APPNOTE 6.3). Images are stored as they are: they are compressed already. */
export function packBundle({ book, artwork }: Bundle): Uint8Array<ArrayBuffer> {
  const files: Zippable = { [BOOK]: strToU8(writeKept(recordsOf(book))) };
  for (const [id, bytes] of artwork) files[`${ARTWORK}${id}`] = [bytes, { level: 0 }];
  return new Uint8Array(zipSync(files));
}

/**
 * Unpacks a backup and verifies all of it before anything is done with it: every record by its schema, brought up from
 * an older version, and every image by the hash it is named by.
 * @param hash SHA-256 of bytes, in hexadecimal
 */
export async function unpackBundle(
  zip: Uint8Array,
  hash: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
): Promise<Result<Bundle, BundleProblem>> {
  let files: Readonly<Record<string, Uint8Array>>;
  try {
    files = unzipSync(zip);
  } catch {
    return fail(zip[0] === 0x50 && zip[1] === 0x4b ? 'damaged' : 'not-backup');
  }
  const stored = files[BOOK];
  const kept = stored ? readWritten(strFromU8(stored)) : null;
  if (!kept) return fail('not-backup');
  if (!kept.ok) return kept;
  const { book, unreadable } = kept.value;
  if (unreadable.length > 0) return fail('damaged');
  const artwork = new Map<string, Uint8Array>();
  for (const [path, bytes] of Object.entries(files)) {
    if (!path.startsWith(ARTWORK)) continue;
    const id = path.slice(ARTWORK.length);
    if ((await hash(new Uint8Array(bytes))) !== id) return fail('damaged');
    artwork.set(id, bytes);
  }
  return ok({ book, artwork });
}
