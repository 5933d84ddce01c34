import { get } from 'idb-keyval';
import { fail, ok, type Result } from '../units';
import { entriesWithPrefix, openStore, writeBatch } from './database';
import type { Epoch } from './epoch';
import { problemOf, type StorageProblem } from './problem';

/** Image files and their thumbnails by the SHA-256 of the file's bytes, in a database of their own. */
export interface ArtworkStore {
  /** Written before the record that names it. */
  put(id: string, file: Blob, thumb: Blob): Promise<Result<void, StorageProblem>>;
  /** Puts a thumbnail whose file is on another device; one that is here with its file stays. */
  putThumb(id: string, thumb: Blob): Promise<void>;
  file(id: string): Promise<Blob | null>;
  thumb(id: string): Promise<Blob | null>;
  /** What was found out about an artwork before, as it was put; `null` if nothing. */
  check(id: string): Promise<unknown>;
  /** Keeps it beside the file; losing it costs no more than finding it out again. */
  putCheck(id: string, check: unknown): Promise<void>;
  /** Deletes what no record names any more. */
  sweep(used: ReadonlySet<string>): Promise<void>;
  close(): void;
}

/** @param epoch that of the book whose artwork it is: a tab that no longer writes must not sweep */
export function openArtworkStore(database: string, epoch: Epoch): ArtworkStore {
  const store = openStore(database, epoch);
  const read = async (key: string): Promise<Blob | null> => {
    const value = await get<unknown>(key, store.use);
    return value instanceof Blob ? value : null;
  };
  return {
    async put(id, file, thumb) {
      try {
        await writeBatch(
          store,
          [
            [`file/${id}`, file],
            [`thumb/${id}`, thumb],
          ],
          [],
        );
        return ok(undefined);
      } catch (error) {
        return fail(problemOf(error));
      }
    },
    async putThumb(id, thumb) {
      if (!(await read(`file/${id}`))) await writeBatch(store, [[`thumb/${id}`, thumb]], []);
    },
    file: (id) => read(`file/${id}`),
    thumb: (id) => read(`thumb/${id}`),
    check: async (id) => (await get<unknown>(`check/${id}`, store.use)) ?? null,
    putCheck: (id, check) => writeBatch(store, [[`check/${id}`, check]], []),
    async sweep(used) {
      const keys = (await entriesWithPrefix(store, '')).map(([key]) => key);
      await writeBatch(
        store,
        [],
        keys.filter((key) => !used.has(key.slice(key.indexOf('/') + 1))),
      );
    },
    close: store.close,
  };
}
