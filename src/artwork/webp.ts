import { fail, ok, type Result } from '../units';
import type { RasterHeader } from './jpeg';

const ascii = (bytes: Uint8Array, at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));

export const isWebp = (bytes: Uint8Array): boolean =>
  ascii(bytes, 0) === 'RIFF' && ascii(bytes, 8) === 'WEBP';

/** Reads the size of a WebP (RFC 9649, sections 2.5 to 2.7); the format has no physical density. */
export function readWebpHeader(bytes: Uint8Array): Result<RasterHeader, 'broken' | 'no-size'> {
  if (bytes.length < 30) return fail('broken');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const uint24 = (at: number) => view.getUint16(at, true) + ((bytes[at + 2] as number) << 16);
  const sized = (width: number, height: number): Result<RasterHeader, 'no-size'> =>
    width > 0 && height > 0 ? ok({ width, height, density: null }) : fail('no-size');
  switch (ascii(bytes, 12)) {
    case 'VP8X':
      return sized(uint24(24) + 1, uint24(27) + 1);
    case 'VP8L': {
      const bits = view.getUint32(21, true);
      return sized((bits & 0x3fff) + 1, ((bits >> 14) & 0x3fff) + 1);
    }
    case 'VP8 ':
      return sized(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
    default:
      return fail('broken');
  }
}
