import { describe, expect, it } from 'vitest';
import {
  composeRows,
  createTileStore,
  DiskFull,
  framesOf,
  imageOf,
  type PrintImage,
  stripRows,
  tileKey,
  tilesByArtwork,
} from '../../../src/output/print-image';
import type { Scratch } from '../../../src/output/print-image/tile-store';
import { longRun } from '../runs';

/** A file in memory that holds so many bytes, and how much was written to it. */
function scratchOf(room: number) {
  const bytes = new Uint8Array(room);
  const wrote: number[] = [];
  const scratch: Scratch = {
    read(pixels, { at }) {
      const view = new Uint8Array(pixels.buffer, pixels.byteOffset, pixels.byteLength);
      view.set(bytes.subarray(at, at + view.length));
      return view.length;
    },
    write(pixels, { at }) {
      const taken = Math.max(0, Math.min(pixels.byteLength, room - at));
      bytes.set(new Uint8Array(pixels.buffer, pixels.byteOffset, taken), at);
      wrote.push(at);
      return taken;
    },
    close: () => undefined,
  };
  return { scratch, wrote };
}

const tile = (key: string, done: number) => ({
  key,
  needed: 0,
  done,
  upright: { width: 4, height: 3 },
  slant: null,
  orientation: { quarters: 0 as const, half: false, mirrored: false },
});
const pixelsOf = (start: number) => Uint32Array.from({ length: 12 }, (_, at) => start + at);

describe('tiles in use', () => {
  it('give the same rows from memory and from the file', () => {
    const { scratch, wrote } = scratchOf(1000);
    // Room for one tile of 48 bytes.
    const store = createTileStore(scratch, 50);
    store.put(tile('a', 9), 4, pixelsOf(100));
    store.put(tile('b', 9), 4, pixelsOf(200));
    store.put(tile('c', 9), 4, pixelsOf(300));
    expect(wrote).toEqual([0, 48]);
    expect([...(store.rows('a', 1, 2) ?? [])]).toEqual([104, 105, 106, 107, 108, 109, 110, 111]);
    expect([...(store.rows('b', 2, 1) ?? [])]).toEqual([208, 209, 210, 211]);
    expect([...(store.rows('c', 0, 1) ?? [])]).toEqual([300, 301, 302, 303]);
    expect(store.rows('d', 0, 1)).toBeNull();
  });

  it('are let go of when no row needs them, and their room is used again', () => {
    const { scratch, wrote } = scratchOf(1000);
    const store = createTileStore(scratch, 50);
    store.put(tile('a', 5), 4, pixelsOf(100));
    store.put(tile('b', 7), 4, pixelsOf(200));
    store.release(5);
    expect(store.rows('a', 0, 1)).toBeNull();
    store.put(tile('c', 20), 4, pixelsOf(300));
    expect(wrote).toEqual([0]);
    store.release(7);
    store.put(tile('d', 20), 4, pixelsOf(400));
    expect(wrote).toEqual([0, 0]);
    expect([...(store.rows('d', 2, 1) ?? [])]).toEqual([408, 409, 410, 411]);
  });

  it('say so where the file takes no more', () => {
    const store = createTileStore(scratchOf(10).scratch, 0);
    expect(() => store.put(tile('a', 5), 4, pixelsOf(1))).toThrow(DiskFull);
  });
});

describe('the tiles of images', () => {
  const run = longRun(12);
  const artwork = 'hash' as NonNullable<PrintImage['copies'][number]['artwork']>;
  const copies = run.copies.map((copy, index) => ({
    ...copy,
    transfer: { ...copy.transfer, artwork: index % 2 === 0 ? artwork : null },
  }));
  const images = framesOf({ ...run, copies }, { kind: 'spans' }).map((frame) =>
    imageOf(run, frame, {
      ppi: 150,
      mirrored: false,
      firstEnd: 'lead',
      feed: 1,
      marks: { ticks: false, numbers: false, names: null, corners: false },
    }),
  );

  it('are one for each artwork, size and way to lie, over all images', () => {
    const tiles = tilesByArtwork(images);
    expect([...tiles.keys()]).toEqual([artwork]);
    const [only, ...others] = tiles.get(artwork) ?? [];
    expect(others).toEqual([]);
    const total = images.reduce((sum, { height }) => sum + height, 0);
    expect(only?.needed).toBe(images[0]?.copies.find((box) => box.artwork)?.y);
    expect(only?.done).toBeLessThanOrEqual(total);
    expect(only?.done).toBeGreaterThan(total - (images.at(-1)?.height ?? 0));
  });

  it('are put together into the same image in strips of any height', () => {
    const [image] = images;
    if (!image) throw new Error('no image');
    const [first] = image.copies;
    if (!first) throw new Error('no copies');
    const picture = Uint32Array.from({ length: first.width * first.height }, (_, at) => at + 1);
    const whole = (rows: number) => {
      const pixels = new Uint32Array(image.width * image.height);
      for (let from = 0; from < image.height; from += rows) {
        const strip = pixels.subarray(from * image.width, (from + rows) * image.width);
        composeRows(strip, image.width, from, image.copies, (box, row, count) =>
          tileKey(box) === tileKey(first)
            ? picture.subarray(row * box.width, (row + count) * box.width)
            : null,
        );
      }
      return pixels;
    };
    const expected = new Uint32Array(image.width * image.height);
    for (const box of image.copies) {
      if (box.artwork === null) continue;
      for (let at = 0; at < picture.length; at += 1) {
        const [x, y] = [at % box.width, Math.floor(at / box.width)];
        expected[(box.y + y) * image.width + box.x + x] = picture[at] ?? 0;
      }
    }
    for (const rows of [1, 37, image.height]) {
      expect(Buffer.compare(new Uint8Array(whole(rows).buffer), new Uint8Array(expected.buffer))).toBe(0);
    }
  });

  it('come in strips whose memory does not grow with the image', () => {
    for (const [width, height] of [
      [3898, 70_866],
      [9356, 170_000],
      [600, 300],
    ] as const) {
      const rows = stripRows({ width, height });
      expect(rows).toBeGreaterThanOrEqual(1);
      expect(4 * width * rows).toBeLessThanOrEqual(2_000_000);
      expect(rows).toBeLessThanOrEqual(height);
    }
  });
});
