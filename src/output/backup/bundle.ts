import { strFromU8, strToU8, Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import { type Book, readWritten, recordsOf, settingsOf, writeKept } from '../../model';
import { fail, ok, type Result } from '../../units';
import { bytesOf, type Part, partsOf, type Source } from './archive';
import { hasLongText, limits, type TooMuch, tooMuchOf } from './limits';
import {
  ARTWORK,
  BOOK,
  FIRST_WITH_MANIFEST,
  MANIFEST,
  type Manifest,
  readManifest,
  writeManifest,
} from './manifest';

type Bytes = Uint8Array<ArrayBuffer>;

/** SHA-256 of bytes, in hexadecimal. */
export type Hash = (bytes: Bytes) => Promise<string>;

/** A backup that was read and verified. */
export interface Bundle {
  readonly book: Book;
  /** Where each image lies in the archive, by its id. */
  readonly artwork: ReadonlyMap<string, Part>;
  /** False for one of an earlier version, which has no list of what must be in it. */
  readonly isVerified: boolean;
  /** SHA-256 of the book as it is written there. */
  readonly digest: string;
}

/**
 * Why a file is not brought back. `damaged`: a part is missing or changed. `newer`: made by a newer version. `lost-images` and
 * `altered-images` name them. `too-much`: it would unpack to more than a shop can have.
 */
export type BundleProblem =
  | { readonly code: 'not-backup' | 'damaged' | 'newer' }
  | { readonly code: 'lost-images' | 'altered-images'; readonly images: readonly string[] }
  | { readonly code: 'too-much'; readonly of: TooMuch };

const nameOf = (book: Book, id: string): string => book.artwork[id]?.fileName ?? id;

/**
 * Packs a book and its artwork into one zip file (PKWARE APPNOTE 6.3), chunk by chunk. Images are stored as they are: they are compressed
 * already. Behind them lies a manifest, the SHA-256 of each part.
 * @param artwork the images by their ids; one whose bytes are others is left out
 * @param put takes the next chunk of the file
 * @returns the ids of images that were left out
 */
export async function packBundle(
  book: Book,
  artwork: Iterable<readonly [string, () => Promise<Bytes>]>,
  hash: Hash,
  put: (chunk: Uint8Array) => void,
): Promise<{ digest: string; leftOut: string[] }> {
  let failure: Error | null = null;
  const zip = new Zip((error, chunk) => {
    if (error) failure = error;
    else put(chunk);
  });
  const add = (file: ZipDeflate | ZipPassThrough, bytes: Uint8Array) => {
    zip.add(file);
    file.push(bytes, true);
    if (failure) throw failure;
  };
  const written = strToU8(writeKept(recordsOf(book)));
  const digest = await hash(new Uint8Array(written));
  add(new ZipDeflate(BOOK), written);
  const images: string[] = [];
  const leftOut: string[] = [];
  for (const [id, read] of artwork) {
    const bytes = await read();
    if (bytes.length <= limits.image && (await hash(bytes)) === id) {
      add(new ZipPassThrough(`${ARTWORK}${id}`), bytes);
      images.push(id);
    } else leftOut.push(id);
  }
  add(new ZipDeflate(MANIFEST), strToU8(writeManifest({ book: digest, images })));
  zip.end();
  return { digest, leftOut };
}

/** The book of a backup, and what its archive must hold beside it. */
async function readBook(
  source: Source,
  parts: ReadonlyMap<string, Part>,
  hash: Hash,
): Promise<Result<Pick<Bundle, 'book' | 'digest'> & { manifest: Manifest | null }, BundleProblem>> {
  const [part, list] = [parts.get(BOOK), parts.get(MANIFEST)];
  if (!part) return fail({ code: list ? 'damaged' : 'not-backup' });
  const listed = list ? await bytesOf(source, list) : null;
  const manifest = listed && readManifest(listed);
  const bytes = await bytesOf(source, part);
  if (!bytes || (list && !manifest)) return fail({ code: 'damaged' });
  const digest = await hash(bytes);
  if (manifest && manifest.book !== digest) return fail({ code: 'damaged' });
  const kept = readWritten(strFromU8(bytes));
  if (!kept) return fail({ code: manifest ? 'damaged' : 'not-backup' });
  if (!kept.ok) return fail({ code: kept.problem });
  const { book, setAside, version, records } = kept.value;
  if (hasLongText(Object.fromEntries(records))) return fail({ code: 'too-much', of: 'text' });
  if (setAside.length > 0 || !settingsOf(book) || (!manifest && version >= FIRST_WITH_MANIFEST))
    return fail({ code: 'damaged' });
  return ok({ book, digest, manifest });
}

/**
 * Reads a backup and verifies all of it before anything is done with it: what it would unpack to, the digests of book and images,
 * and every record by its schema, brought up from an older version.
 */
export async function unpackBundle(source: Source, hash: Hash): Promise<Result<Bundle, BundleProblem>> {
  const listed = await partsOf(source);
  if (!listed) {
    const begin = await source.read(0, Math.min(2, source.size));
    return fail({ code: begin[0] === 0x50 && begin[1] === 0x4b ? 'damaged' : 'not-backup' });
  }
  const tooMuch = tooMuchOf(listed, ({ name }) => !name.startsWith(ARTWORK));
  if (tooMuch) return fail({ code: 'too-much', of: tooMuch });
  const parts = new Map(listed.map((part) => [part.name, part]));
  if (parts.size < listed.length) return fail({ code: 'damaged' });
  const read = await readBook(source, parts, hash);
  if (!read.ok) return read;
  const { book, digest, manifest } = read.value;
  const artwork = new Map(
    listed.flatMap((part): [string, Part][] =>
      part.name.startsWith(ARTWORK) ? [[part.name.slice(ARTWORK.length), part]] : [],
    ),
  );
  const names = (ids: readonly string[]) => ids.map((id) => nameOf(book, id));
  const lost = manifest?.images.filter((id) => !artwork.has(id)) ?? [];
  if (lost.length > 0) return fail({ code: 'lost-images', images: names(lost) });
  const altered: string[] = [];
  for (const [id, part] of artwork) {
    const bytes = await bytesOf(source, part);
    if (!bytes || (await hash(bytes)) !== id) altered.push(id);
  }
  if (altered.length > 0) return fail({ code: 'altered-images', images: names(altered) });
  return ok({ book, artwork, digest, isVerified: manifest !== null });
}
