import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { type Book, bookOf, collectionNames, MODEL_VERSION, migrate } from '../../model';
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

interface Manifest {
  readonly format: 'rollwright backup';
  readonly version: number;
  readonly records: Readonly<Record<string, unknown>>;
}

/** Packs a book and its artwork into one zip file (PKWARE APPNOTE 6.3). Images are stored as they are: they are compressed already. */
export function packBundle({ book, artwork }: Bundle): Uint8Array<ArrayBuffer> {
  const records = Object.fromEntries(
    collectionNames.flatMap((name) =>
      Object.entries(book[name]).map(([id, record]) => [`${name}/${id}`, record]),
    ),
  );
  const manifest: Manifest = { format: 'rollwright backup', version: MODEL_VERSION, records };
  const files: Zippable = { [BOOK]: strToU8(JSON.stringify(manifest)) };
  for (const [id, bytes] of artwork) files[`${ARTWORK}${id}`] = [bytes, { level: 0 }];
  return new Uint8Array(zipSync(files));
}

function readManifest(bytes: Uint8Array): Manifest | null {
  try {
    const value: unknown = JSON.parse(strFromU8(bytes));
    const manifest = value as Partial<Manifest>;
    const isOurs = manifest?.format === 'rollwright backup' && typeof manifest.records === 'object';
    return isOurs && typeof manifest.version === 'number' ? (manifest as Manifest) : null;
  } catch {
    return null;
  }
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
  const manifest = stored && readManifest(stored);
  if (!manifest) return fail('not-backup');
  if (manifest.version > MODEL_VERSION) return fail('newer');
  const records = migrate(new Map(Object.entries(manifest.records)), manifest.version);
  if (!records) return fail('damaged');
  const { book, unreadable } = bookOf(records);
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
