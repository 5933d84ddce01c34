import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { readPngHeader } from '../../../src/artwork';
import { crc32 } from '../../../src/artwork/crc';
import { pngChunk } from '../../../src/artwork/png-parts';
import { filterRows, pngEnd, pngHead } from '../../../src/output/print-image';

const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');

/** A whole file, its rows filtered in strips of some height. */
function fileOf(pixels: Uint32Array, width: number, rows: number, ppi = 300): Uint8Array {
  const height = pixels.length / width;
  const filtered: Uint8Array[] = [];
  let above: Uint32Array = new Uint32Array(width);
  for (let from = 0; from < height; from += rows) {
    const strip = pixels.subarray(from * width, Math.min(height, from + rows) * width);
    filtered.push(filterRows(strip, above, width));
    above = strip.subarray(strip.length - width);
  }
  const deflated = deflateSync(Buffer.concat(filtered));
  const parts = [...pngHead({ width, height }, ppi), pngChunk('IDAT', deflated), pngEnd()];
  return new Uint8Array(Buffer.concat(parts));
}

describe('the chunks of a PNG (W3C PNG, third edition)', () => {
  it('carry the CRC of annex D', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
    expect(hex(pngEnd())).toBe('0000000049454e44ae426082');
  });

  it('stand in their order, with signature and header first and pHYs before the pixels', () => {
    const bytes = fileOf(new Uint32Array(6), 3, 2);
    expect(hex(bytes.subarray(0, 8))).toBe('89504e470d0a1a0a');
    const view = new DataView(bytes.buffer);
    const types: string[] = [];
    for (let at = 8; at < bytes.length; at += view.getUint32(at) + 12) {
      types.push(String.fromCharCode(...bytes.subarray(at + 4, at + 8)));
    }
    expect(types).toEqual(['IHDR', 'sRGB', 'pHYs', 'IDAT', 'IEND']);
    // Width 3, height 2, 8 bits, truecolour with alpha, nothing else.
    expect(hex(bytes.subarray(16, 29))).toBe('00000003000000020806000000');
  });

  it.each([
    [150, 5906],
    [300, 11_811],
    [720, 28_346],
  ])('%i ppi are %i pixels a metre', (ppi, perMetre) => {
    const header = readPngHeader(fileOf(new Uint32Array(4), 2, 2, ppi));
    expect(header.ok && header.value.density).toEqual({ x: perMetre, y: perMetre });
  });
});

describe('filtered rows', () => {
  const images = fc
    .record({
      width: fc.integer({ min: 1, max: 9 }),
      height: fc.integer({ min: 1, max: 9 }),
      rows: fc.integer({ min: 1, max: 5 }),
      // Few colours make flat stretches; many make none.
      colours: fc.array(fc.nat(0xffffffff), { minLength: 1, maxLength: 4 }),
    })
    .chain(({ width, height, rows, colours }) =>
      fc
        .array(fc.oneof(fc.constantFrom(0, ...colours), fc.nat(0xffffffff)), {
          minLength: width * height,
          maxLength: width * height,
        })
        .map((pixels) => ({ width, rows, pixels: Uint32Array.from(pixels) })),
    );

  it('give every pixel back in a decoder of others, in strips of any height', () => {
    fc.assert(
      fc.property(images, ({ width, rows, pixels }) => {
        const { data } = PNG.sync.read(Buffer.from(fileOf(pixels, width, rows)));
        expect(new Uint8Array(data)).toEqual(new Uint8Array(pixels.buffer));
      }),
    );
  });

  it('are zeros where rows repeat', () => {
    const row = Uint32Array.from([1, 2, 3, 4]);
    const filtered = filterRows(Uint32Array.from([...row, ...row]), row, 4);
    expect(filtered.filter((byte) => byte !== 0)).toEqual(Uint8Array.of(2, 2));
  });
});
