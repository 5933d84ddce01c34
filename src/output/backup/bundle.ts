import { strFromU8, strToU8, Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import {
  artworkInUse,
  type Book,
  type NotBroughtUp,
  type Opened,
  readWritten,
  recordsOf,
  type Settings,
  writeKept,
} from '../../model';
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

/** A backup that was read and verified: the book as far as it can be read, and what cannot. */
export interface Bundle extends Opened {
  /** Where each image lies in the archive, by its id. */
  readonly artwork: ReadonlyMap<string, Part>;
  /** Ids of images that the book needs and that are not in the archive, or have been changed there. */
  readonly missing: readonly string[];
  /** False for one of an earlier version, which has no list of what must be in it. */
  readonly isVerified: boolean;
  /** SHA-256 of the book as it is written there. */
  readonly digest: string;
}

/**
 * Why a file is not brought back. `damaged`: the book in it was changed or is not whole. `newer`: made by a newer version.
 * `part-missing`: made by an older version, and what reads that could not be fetched. `too-much`: it would unpack to more than a shop can
 * have.
 */
export type BundleProblem =
  | { readonly code: 'not-backup' | NotBroughtUp }
  | { readonly code: 'too-much'; readonly of: TooMuch };

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
  first: Settings,
): Promise<Result<Opened & Pick<Bundle, 'digest'> & { manifest: Manifest | null }, BundleProblem>> {
  const [part, list] = [parts.get(BOOK), parts.get(MANIFEST)];
  if (!part) return fail({ code: list ? 'damaged' : 'not-backup' });
  const listed = list ? await bytesOf(source, list) : null;
  const manifest = listed && readManifest(listed);
  const bytes = await bytesOf(source, part);
  if (!bytes || (list && !manifest)) return fail({ code: 'damaged' });
  const digest = await hash(bytes);
  if (manifest && manifest.book !== digest) return fail({ code: 'damaged' });
  const kept = await readWritten(strFromU8(bytes), first);
  if (!kept) return fail({ code: manifest ? 'damaged' : 'not-backup' });
  if (!kept.ok) return fail({ code: kept.problem });
  const { book, setAside, fellBack, version, records } = kept.value;
  if (hasLongText(Object.fromEntries(records))) return fail({ code: 'too-much', of: 'text' });
  if (!manifest && version >= FIRST_WITH_MANIFEST) return fail({ code: 'damaged' });
  return ok({ book, setAside, fellBack, digest, manifest });
}

/**
 * Reads a backup and verifies all of it before anything is done with it: what it would unpack to, the digests of book and images,
 * and every record by its schema, brought up from an older version. A record or an image that cannot be read is left out and told.
 * @param first the settings that a shop begins with, to stand in for those that cannot be read
 */
export async function unpackBundle(
  source: Source,
  hash: Hash,
  first: Settings,
): Promise<Result<Bundle, BundleProblem>> {
  const listed = await partsOf(source);
  if (!listed) {
    const begin = await source.read(0, Math.min(2, source.size));
    return fail({ code: begin[0] === 0x50 && begin[1] === 0x4b ? 'damaged' : 'not-backup' });
  }
  const tooMuch = tooMuchOf(listed, ({ name }) => !name.startsWith(ARTWORK));
  if (tooMuch) return fail({ code: 'too-much', of: tooMuch });
  const parts = new Map(listed.map((part) => [part.name, part]));
  if (parts.size < listed.length) return fail({ code: 'damaged' });
  const read = await readBook(source, parts, hash, first);
  if (!read.ok) return read;
  const { manifest, ...opened } = read.value;
  const artwork = new Map<string, Part>();
  for (const part of listed) {
    if (!part.name.startsWith(ARTWORK)) continue;
    const id = part.name.slice(ARTWORK.length);
    const bytes = await bytesOf(source, part);
    if (bytes && (await hash(bytes)) === id) artwork.set(id, part);
  }
  const used = artworkInUse(opened.book);
  const missing = Object.keys(opened.book.artwork).filter((id) => used.has(id) && !artwork.has(id));
  return ok({ ...opened, artwork, missing, isVerified: manifest !== null });
}
