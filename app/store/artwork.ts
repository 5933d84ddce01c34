import type { OpenedArtwork } from '../../src/artwork/browser';
import type { Artwork, Id } from '../../src/model';
import { type ArtworkStore, openArtworkStore, type StorageProblem } from '../../src/storage';
import { ok, type Result } from '../../src/units';

let store: ArtworkStore | null = null;

/** Opens the artwork of the book that is about to be shown, in place of the one before. */
export function openArtworkOf(database: string): ArtworkStore {
  store?.close();
  store = openArtworkStore(database);
  return store;
}

/** The thumbnail of an artwork of the book that is open; `null` if there is none. */
export const loadThumbnail = (id: string): Promise<Blob | null> => store?.thumb(id) ?? Promise.resolve(null);

/** The file of an artwork, as it was dropped. */
export const loadArtworkFile = (id: string): Promise<Blob | null> => store?.file(id) ?? Promise.resolve(null);

/**
 * Puts an image on the disk.
 * @returns the record that names it, still without the instant of its change
 */
export async function keepArtwork(
  opened: OpenedArtwork,
): Promise<Result<Omit<Artwork, 'changed'>, StorageProblem>> {
  const { id, kind, file, fileName, thumbnail, pixels, density, trim } = opened;
  const kept = store ? await store.put(id, file, thumbnail) : null;
  if (kept && !kept.ok) return kept;
  return ok({ id: id as Id<'artwork'>, fileName, kind, pixels, density, trim });
}
