import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeRows } from '../../../src/output/print-image';

const [WIDTH, HEIGHT] = [24, 30];

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint32Array;
}

/** Artwork of a box, most of which is see-through: opaque, faint and clear pixels, of which some have colours. */
const anyBox = fc
  .record({
    x: fc.integer({ min: 0, max: 12 }),
    y: fc.integer({ min: 0, max: 14 }),
    width: fc.integer({ min: 1, max: 12 }),
    height: fc.integer({ min: 1, max: 16 }),
  })
  .chain((box) =>
    fc
      .array(fc.tuple(fc.constantFrom(0, 0, 0, 3, 128, 255), fc.nat(0xffffff)), {
        minLength: box.width * box.height,
        maxLength: box.width * box.height,
      })
      .map(
        (pixels): Box => ({
          ...box,
          pixels: Uint32Array.from(pixels, ([alpha, colour]) => alpha * 2 ** 24 + colour),
        }),
      ),
  );

const rowsOf = ({ pixels, width }: Box, first: number, count: number) =>
  pixels.subarray(first * width, (first + count) * width);

function composed(boxes: readonly Box[], rows: number): Uint32Array {
  const image = new Uint32Array(WIDTH * HEIGHT);
  for (let from = 0; from < HEIGHT; from += rows) {
    const strip = image.subarray(from * WIDTH, Math.min(HEIGHT, from + rows) * WIDTH);
    composeRows(strip, WIDTH, from, boxes, rowsOf);
  }
  return image;
}

const isClear = (pixel: number | undefined): boolean => (pixel ?? 0) >>> 24 === 0;

/** A box without the pixels that one before it prints: outlines that keep a gap never share any. */
const apartFrom = (boxes: readonly Box[]): Box[] => {
  const taken = new Uint8Array(WIDTH * HEIGHT);
  return boxes.map((box) => ({
    ...box,
    pixels: box.pixels.map((pixel, at) => {
      const place = (box.y + Math.floor(at / box.width)) * WIDTH + box.x + (at % box.width);
      if (isClear(pixel) || taken[place] === 1) return pixel & 0xffffff;
      taken[place] = 1;
      return pixel;
    }),
  }));
};

describe('an image of copies whose boxes overlap', () => {
  it('has every pixel of each copy as if it were alone, in whatever strips and order', () => {
    let shared = 0;
    fc.assert(
      fc.property(
        fc.array(anyBox, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: HEIGHT }),
        (drawn, rows) => {
          const boxes = apartFrom(drawn);
          const all = composed(boxes, rows);
          const alone = boxes.map((box) => composed([box], rows));
          for (const [at, pixel] of all.entries()) {
            const own = alone.map((image) => image[at] as number).filter((each) => !isClear(each));
            if (own.length > 0) expect(pixel).toBe(own[0]);
            else expect(isClear(pixel)).toBe(true);
            if (own.length === 1 && boxes.length > 1) shared += 1;
          }
          const backwards = composed(boxes.toReversed(), rows);
          for (const [at, pixel] of all.entries()) {
            if (!isClear(pixel)) expect(backwards[at]).toBe(pixel);
          }
        },
      ),
      { numRuns: 100 },
    );
    expect(shared).toBeGreaterThan(100);
  });
});
