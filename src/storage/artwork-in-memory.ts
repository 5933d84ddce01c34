import { ok } from '../units';
import type { ArtworkStore } from './artwork-store';

/** Image files that live as long as the tab, where the browser keeps nothing. */
export function artworkInMemory(): ArtworkStore {
  const files = new Map<string, Blob>();
  const thumbs = new Map<string, Blob>();
  const checks = new Map<string, unknown>();
  return {
    async put(id, file, thumb) {
      files.set(id, file);
      thumbs.set(id, thumb);
      return ok(undefined);
    },
    async putThumb(id, thumb) {
      if (!files.has(id)) thumbs.set(id, thumb);
    },
    file: async (id) => files.get(id) ?? null,
    thumb: async (id) => thumbs.get(id) ?? null,
    check: async (id) => checks.get(id) ?? null,
    async putCheck(id, check) {
      checks.set(id, check);
    },
    sweep: async () => undefined,
    close: () => undefined,
  };
}
