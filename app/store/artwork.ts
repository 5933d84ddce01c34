import { type ArtworkStore, openArtworkStore } from '../../src/storage';

let store: ArtworkStore | null = null;

/** The thumbnail of an artwork of the book that is open; `null` if there is none. */
export const loadThumbnail = (id: string): Promise<Blob | null> => store?.thumb(id) ?? Promise.resolve(null);
