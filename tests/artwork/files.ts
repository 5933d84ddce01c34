import { PNG } from 'pngjs';
import { crc32 } from '../../src/artwork/crc';

interface Chunk {
  readonly type: string;
  readonly data: readonly number[];
}

/** A small PNG with more chunks between its header and its pixels. */
export function pngWith(
  chunks: readonly Chunk[],
  png = PNG.sync.write(new PNG({ width: 4, height: 3 })),
): Uint8Array {
  const afterHeader = 33;
  return Uint8Array.from([
    ...png.subarray(0, afterHeader),
    ...chunks.flatMap(chunkBytes),
    ...png.subarray(afterHeader),
  ]);
}

/** A chunk with its length and checksum (W3C PNG, third edition, 5.3). */
export function chunkBytes({ type, data }: Chunk): number[] {
  const checked = Uint8Array.from([...type].map((letter) => letter.charCodeAt(0)).concat(data));
  return [...uint32(data.length), ...checked, ...uint32(crc32(checked))];
}

const uint32 = (value: number) => [value >>> 24, (value >> 16) & 0xff, (value >> 8) & 0xff, value & 0xff];

/** A JPEG of 600 x 400 up to its frame header, with more segments before it (ISO/IEC 10918-1 B.1.1.4 and B.2.2). */
export function jpegBytes(segments: readonly { marker: number; data: readonly number[] }[]): Uint8Array {
  const frame = [8, 1, 0x90, 2, 0x58, 3, ...new Array<number>(9).fill(0)];
  const bytes = [...segments, { marker: 0xc0, data: frame }].flatMap(({ marker, data }) => [
    0xff,
    marker,
    (data.length + 2) >> 8,
    (data.length + 2) & 0xff,
    ...data,
  ]);
  return Uint8Array.from([0xff, 0xd8, ...bytes]);
}
