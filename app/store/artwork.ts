import type { OpenedArtwork } from '../../src/artwork/browser';
import type { NewArtwork } from '../../src/editing';
import { type Artwork, asId } from '../../src/model';
import {
  type ArtworkStore,
  artworkInMemory,
  type Epoch,
  openArtworkStore,
  type StorageProblem,
} from '../../src/storage';
import { ok, type Result } from '../../src/units';

let store: ArtworkStore | null = null;

/** Opens the artwork of the book that is about to be shown, in place of the one before. */
export function openArtworkOf(database: string, epoch: Epoch): ArtworkStore {
  store?.close();
  store = openArtworkStore(database, epoch);
  return store;
}

/** From here on images live as long as the tab, where nothing can be kept. */
export function keepArtworkInMemory(): void {
  store?.close();
  store = artworkInMemory();
}

/** The thumbnail of an artwork of the book that is open; `null` if there is none. */
export const loadThumbnail = (id: string): Promise<Blob | null> => store?.thumb(id) ?? Promise.resolve(null);

/** Keeps a picture that came with a run from another device; the file stays there. */
export const keepThumbnail = (id: string, thumb: Blob): Promise<void> =>
  store?.putThumb(id, thumb) ?? Promise.resolve();

/** The file of an artwork, as it was dropped. */
export const loadArtworkFile = (id: string): Promise<Blob | null> => store?.file(id) ?? Promise.resolve(null);

/** What was found out about an artwork before; `null` if nothing. */
export const loadCheck = (id: string): Promise<unknown> =>
  store?.check(id).catch(() => null) ?? Promise.resolve(null);

/** Keeps it for the next time; where it cannot be kept, it is found out again. */
export const keepCheck = (id: string, check: unknown): Promise<void> =>
  store?.putCheck(id, check).catch(() => undefined) ?? Promise.resolve();

/** Keeps a file that cannot be looked at here, without a picture of it. */
export const keepFile = (id: string, file: Blob): Promise<Result<void, StorageProblem>> =>
  store?.put(id, file, new Blob()) ?? Promise.resolve(ok(undefined));

/**
 * Puts an image on the disk.
 * @param madeFrom the image it was made from
 * @returns the record that names it, still without the instant of its change
 */
export async function keepArtwork(
  opened: OpenedArtwork,
  madeFrom: Artwork['madeFrom'] = null,
): Promise<Result<NewArtwork, StorageProblem>> {
  const { id, kind, file, fileName, thumbnail, pixels, density, trim } = opened;
  const kept = store ? await store.put(id, file, thumbnail) : null;
  if (kept && !kept.ok) return kept;
  return ok({ id: asId(id), fileName, kind, pixels, density, trim, madeFrom });
}
