import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { hasAllRows } from '../../src/artwork/browser/png-rows';
import { crc32 } from '../../src/artwork/crc';
import { hasAllBlocks } from '../../src/artwork/jpeg-scan';
import { jpegs } from './jpegs';

const bytesOf = (base64: string) => new Uint8Array(Buffer.from(base64, 'base64'));

describe.each(Object.entries(jpegs))('a JPEG that is %s', (_, base64) => {
  const whole = bytesOf(base64);
  /** Where the data of its first scan begins: behind the header of it. */
  const scan = whole.findIndex((byte, at) => byte === 0xff && whole[at + 1] === 0xda) + 14;

  it('has all its blocks', () => expect(hasAllBlocks(whole)).toBe(true));

  it('lacks some where it was cut, also with the marker of its end behind the cut', () => {
    // The bits that end a scan are filled up, so that its last byte may tell nothing.
    for (let length = scan; length < whole.length - 4; length += 7) {
      expect(hasAllBlocks(Uint8Array.from([...whole.subarray(0, length), 0xff, 0xd9]))).toBe(false);
    }
  });

  it('is read over to an answer, whatever is changed behind its frame', () => {
    const frame = whole.findIndex(
      (byte, at) => byte === 0xff && (whole[at + 1] === 0xc0 || whole[at + 1] === 0xc2),
    );
    const place = fc.integer({ min: frame + 11, max: whole.length - 1 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(place, fc.integer({ min: 0, max: 255 })), { maxLength: 6 }),
        (changes) => {
          const changed = whole.slice();
          for (const [at, byte] of changes) changed[at] = byte;
          expect(typeof hasAllBlocks(changed)).toBe('boolean');
        },
      ),
    );
  });
});

/** A PNG whose chunks have right checksums around changed data. */
function pngAround(png: Buffer, change: (data: Buffer) => Uint8Array): Uint8Array<ArrayBuffer> {
  const parts: Uint8Array[] = [png.subarray(0, 8)];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const type = png.subarray(at + 4, at + 8);
    const own = png.subarray(at + 8, at + 8 + length);
    const data = type.toString() === 'IDAT' ? change(own) : own;
    const checked = Buffer.concat([type, data]);
    const [before, behind] = [Buffer.alloc(4), Buffer.alloc(4)];
    before.writeUInt32BE(data.length);
    behind.writeUInt32BE(crc32(checked));
    parts.push(before, checked, behind);
    at += 12 + length;
  }
  return new Uint8Array(Buffer.concat(parts));
}

describe('a PNG', () => {
  const image = new PNG({ width: 31, height: 17 });
  for (let at = 0; at < image.data.length; at += 1) image.data[at] = (at * at) % 251;
  const png = PNG.sync.write(image);

  it('has all its rows', async () => {
    expect(await hasAllRows(new Uint8Array(png))).toBe(true);
    const grey = PNG.sync.write(image, { colorType: 0 });
    expect(await hasAllRows(new Uint8Array(grey))).toBe(true);
  });

  it.each([
    ['its data is cut', (data: Buffer) => data.subarray(0, Math.floor(data.length / 2))],
    [
      'a byte of its data is changed',
      (data: Buffer) => data.map((byte, at) => (at === 40 ? byte ^ 0x5a : byte)),
    ],
    ['rows are missing though its data ends well', () => deflateSync(Buffer.alloc(10 * (1 + 4 * 31)))],
    ['it has no data', () => new Uint8Array()],
  ])('lacks some where %s, whatever its checksums say', async (_, change) => {
    expect(await hasAllRows(pngAround(png, change))).toBe(false);
  });

  it('lacks them where a checksum of its data is wrong', async () => {
    const wrong = new Uint8Array(png);
    const at = png.indexOf('IDAT') + 30;
    wrong[at] = (wrong[at] as number) ^ 1;
    expect(await hasAllRows(wrong)).toBe(false);
  });

  // W3C PNG, third edition, 8.1: seven passes of a 5 by 5 image have 1, 1, 1, 2, 3, 6 and 10 pixels... of 8 bits.
  it('interlaced has the rows of its passes', async () => {
    const passes = [
      [1, 1],
      [1, 1],
      [2, 1],
      [1, 2],
      [3, 1],
      [2, 3],
      [5, 2],
    ] as const;
    const header = Buffer.from(png);
    header.writeUInt32BE(5, 16);
    header.writeUInt32BE(5, 20);
    header[25] = 0;
    header[28] = 1;
    const fixed = Buffer.from(
      pngAround(header, () => deflateSync(Buffer.concat(passes.map(([w, h]) => Buffer.alloc(h * (1 + w)))))),
    );
    fixed.writeUInt32BE(crc32(fixed.subarray(12, 29)), 29);
    expect(await hasAllRows(new Uint8Array(fixed))).toBe(true);
    const short = Buffer.from(pngAround(header, () => deflateSync(Buffer.alloc(20))));
    short.writeUInt32BE(crc32(short.subarray(12, 29)), 29);
    expect(await hasAllRows(new Uint8Array(short))).toBe(false);
  });
});
