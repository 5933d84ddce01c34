import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { physicalSize, readPngHeader, withDensity } from '../../src/artwork';
import { crc32 } from '../../src/artwork/crc';
import { chunkBytes, pngWith } from './files';

const ascii = (text: string) => new TextEncoder().encode(text);

/** A PNG as an independent library writes it. */
const png = (width: number, height: number) => new Uint8Array(PNG.sync.write(new PNG({ width, height })));

describe('CRC-32', () => {
  // W3C PNG (third edition), annex D; the check value is the standard one for this polynomial.
  it('of 123456789 is CBF43926', () => {
    expect(crc32(ascii('123456789'))).toBe(0xcbf43926);
  });

  it('of an empty IEND chunk is AE426082', () => {
    expect(crc32(ascii('IEND'))).toBe(0xae426082);
  });
});

describe('a PNG', () => {
  it('tells its size; without pHYs no density', () => {
    expect(readPngHeader(png(40, 25))).toEqual({
      ok: true,
      value: { width: 40, height: 25, density: null, aspect: 1 },
    });
  });

  it('tells its physical size by pHYs: 11811 pixels a metre is 300 ppi', () => {
    const header = readPngHeader(withDensity(png(1181, 591), { x: 11_811, y: 11_811 }));
    expect(header).toEqual({
      ok: true,
      value: { width: 1181, height: 591, density: { x: 11_811, y: 11_811 }, aspect: 1 },
    });
    const size = physicalSize({ width: 1181, height: 591 }, { x: 11_811, y: 11_811 });
    expect(size.width / 1000).toBeCloseTo(99.99, 2);
    expect(size.height / 1000).toBeCloseTo(50.04, 2);
  });

  it('is still a PNG to others when it was given a density', () => {
    const read = PNG.sync.read(Buffer.from(withDensity(png(8, 4), { x: 5906, y: 5906 })));
    expect([read.width, read.height]).toEqual([8, 4]);
  });

  it('takes a density without a unit for none: only proportions are known', () => {
    const sized = withDensity(png(8, 4), { x: 2, y: 1 });
    const unit = 8 + 25 + 8 + 8;
    sized[unit] = 0;
    new DataView(sized.buffer).setUint32(unit + 1, crc32(sized.subarray(unit - 12, unit + 1)));
    expect(readPngHeader(sized)).toMatchObject({ ok: true, value: { density: null } });
    const narrow = pngWith([{ type: 'pHYs', data: [0, 0, 0, 2, 0, 0, 0, 1, 0] }]);
    expect(readPngHeader(narrow)).toMatchObject({ ok: true, value: { density: null, aspect: 2 } });
  });

  it.each([
    ['a text file', ascii('order,transfer,width'), 'not-png'],
    ['nothing', new Uint8Array(), 'not-png'],
    ['a JPEG', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), 'not-png'],
    ['a file cut off in its header', png(8, 8).subarray(0, 20), 'broken'],
    ['a file with a flipped bit', png(8, 8).map((byte, index) => (index === 18 ? byte ^ 1 : byte)), 'broken'],
  ])('is refused where it is %s', (_, bytes, problem) => {
    expect(readPngHeader(bytes)).toEqual({ ok: false, problem });
  });

  it('of a million chunks is refused before they are looked at one by one', () => {
    const head = png(4, 4);
    const chunk = Uint8Array.from(chunkBytes({ type: 'tEXt', data: [] }));
    const bytes = new Uint8Array(head.length + 1_000_000 * chunk.length);
    bytes.set(head.subarray(0, 33));
    for (let at = 33; at < 33 + 1_000_000 * chunk.length; at += chunk.length) bytes.set(chunk, at);
    bytes.set(head.subarray(33), 33 + 1_000_000 * chunk.length);
    expect(readPngHeader(bytes)).toEqual({ ok: false, problem: 'many-parts' });
  });
});
