import type { Tile } from './tiles';

/** A file for pixels that memory has no room for: what is needed of the FileSystemSyncAccessHandle of the File System standard. */
export interface Scratch {
  read(pixels: Uint32Array<ArrayBuffer>, options: { readonly at: number }): number;
  write(pixels: Uint32Array<ArrayBuffer>, options: { readonly at: number }): number;
  close(): void;
}

/** Keeps the pixels of tiles that are in use: in memory up to a budget, beyond it in a scratch file. */
export interface TileStore {
  /** @throws if neither memory nor the file has room */
  put(tile: Tile, width: number, pixels: Uint32Array<ArrayBuffer>): void;
  /** Some rows of a tile, to be used before the next are asked for. */
  rows(key: string, first: number, count: number): Uint32Array | null;
  /** Lets go of what no row from here on needs. */
  release(row: number): void;
  close(): void;
}

/** A file took other than it was given: less or, in a private window of Chromium's, a number that means an error. */
export class DiskFull extends Error {}

/** Bytes of tiles in memory. */
const BUDGET = 140_000_000;
const PIXEL = 4;

type Kept =
  | { readonly done: number; readonly width: number; readonly pixels: Uint32Array }
  | { readonly done: number; readonly width: number; readonly at: number };

/** @param scratch takes the tiles beyond the budget; without one, all are kept in memory */
export function createTileStore(scratch: Scratch | null, budget = BUDGET): TileStore {
  const tiles = new Map<string, Kept>();
  let held = 0;
  let written = 0;
  let read = new Uint32Array();
  return {
    put({ key, done }, width, pixels) {
      if (scratch && held + pixels.byteLength > budget) {
        if (scratch.write(pixels, { at: written }) !== pixels.byteLength) throw new DiskFull();
        tiles.set(key, { done, width, at: written });
        written += pixels.byteLength;
      } else {
        tiles.set(key, { done, width, pixels });
        held += pixels.byteLength;
      }
    },
    rows(key, first, count) {
      const tile = tiles.get(key);
      if (!tile) return null;
      const [from, length] = [first * tile.width, count * tile.width];
      if ('pixels' in tile) return tile.pixels.subarray(from, from + length);
      if (read.length < length) read = new Uint32Array(length);
      const rows = read.subarray(0, length);
      scratch?.read(rows, { at: tile.at + PIXEL * from });
      return rows;
    },
    release(row) {
      for (const [key, tile] of tiles) {
        if (tile.done > row) continue;
        if ('pixels' in tile) held -= tile.pixels.byteLength;
        tiles.delete(key);
      }
      // Nothing that lies in the file is in use any more.
      if (written > 0 && ![...tiles.values()].some((tile) => 'at' in tile)) written = 0;
    },
    close() {
      tiles.clear();
      scratch?.close();
    },
  };
}
