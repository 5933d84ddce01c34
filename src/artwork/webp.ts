import { fail, ok, type Result } from '../units';
import { readExif } from './exif';
import type { RasterHeader } from './jpeg';
import type { Density } from './png';

const ascii = (bytes: Uint8Array, at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));

export const isWebp = (bytes: Uint8Array): boolean =>
  ascii(bytes, 0) === 'RIFF' && ascii(bytes, 8) === 'WEBP';

/** The data of the first chunk of a kind in the extended layout (RFC 9649, section 2.7); `null` where there is none. */
function chunkOf(bytes: Uint8Array, kind: string): Uint8Array | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    if (ascii(bytes, at) === kind) return bytes.subarray(at + 8, at + 8 + length);
    // Chunks begin at even places.
    at += 8 + length + (length % 2);
  }
  return null;
}

/** Some writers put the mark of JPEG before Exif. */
const EXIF_MARK = 'Exif';

/** The density that the Exif of a WebP tells; the format has none of its own. */
function exifDensity(bytes: Uint8Array): Density | null {
  const exif = chunkOf(bytes, 'EXIF');
  if (!exif) return null;
  return readExif(ascii(exif, 0) === EXIF_MARK ? exif.subarray(6) : exif).density;
}

/**
 * Reads size and density of a WebP as it is stored, before its Exif turns it (RFC 9649, sections 2.5 to 2.7; Exif 2.32, 4.6.4).
 */
export function readWebpHeader(bytes: Uint8Array): Result<RasterHeader, 'broken' | 'no-size'> {
  if (bytes.length < 30) return fail('broken');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const uint24 = (at: number) => view.getUint16(at, true) + ((bytes[at + 2] as number) << 16);
  const sized = (width: number, height: number, density: Density | null = null) =>
    width > 0 && height > 0
      ? ok({ width, height, density, aspect: density ? density.x / density.y : 1 })
      : fail<'no-size'>('no-size');
  switch (ascii(bytes, 12)) {
    case 'VP8X':
      return sized(uint24(24) + 1, uint24(27) + 1, exifDensity(bytes));
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

/** Whether a WebP is as long as it says (RFC 9649, section 2.4). */
export const isWholeWebp = (bytes: Uint8Array): boolean =>
  bytes.length >= 8 &&
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(4, true) + 8 <= bytes.length;

const EXTENDED_PROFILE = 0x20;
const EXTENDED_ANIMATION = 0x02;

/** Whether a WebP moves, and its ICC profile (RFC 9649, section 2.7); only the extended layout can have either. */
export function readWebpFacts(bytes: Uint8Array): { animated: boolean; icc: Uint8Array | null } {
  if (bytes.length < 38 || ascii(bytes, 12) !== 'VP8X') return { animated: false, icc: null };
  const flags = bytes[20] as number;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const hasProfile = (flags & EXTENDED_PROFILE) !== 0 && ascii(bytes, 30) === 'ICCP';
  return {
    animated: (flags & EXTENDED_ANIMATION) !== 0,
    icc: hasProfile ? bytes.subarray(38, 38 + view.getUint32(34, true)) : null,
  };
}
