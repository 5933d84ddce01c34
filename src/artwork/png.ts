import { unzlibSync } from 'fflate';
import { fail, ok, type Result } from '../units';
import { crc32 } from './crc';
import { type Density, densityChunk, METRE, PNG_SIGNATURE } from './png-parts';

export type { Density } from './png-parts';

/** What a PNG says of itself before its pixels. */
interface PngHeader {
  readonly width: number;
  readonly height: number;
  /** From pHYs, if it gives a unit. */
  readonly density: Density | null;
  /** Pixels on a length across, over those down; 1 where the file does not say. */
  readonly aspect: number;
}

/**
 * `not-png`: another format, or none. `broken`: a chunk is cut off or its checksum is wrong. `many-parts`: more chunks than are
 * read.
 */
type PngProblem = 'not-png' | 'broken' | 'no-size' | 'many-parts';

export const isPng = (bytes: Uint8Array): boolean =>
  PNG_SIGNATURE.every((byte, index) => bytes[index] === byte);

const CHUNK_FRAME = 12;

/** An image of 800 MB in the usual chunks of 8 KiB has as many. */
const MOST_CHUNKS = 100_000;

interface Chunk {
  readonly type: string;
  readonly data: Uint8Array;
}

/** The chunks up to the pixels, each with its checksum verified. */
function* chunksBeforePixels(bytes: Uint8Array): Generator<Chunk | 'broken' | 'many-parts'> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = PNG_SIGNATURE.length;
  for (let count = 0; ; count += 1) {
    if (count > MOST_CHUNKS) return yield 'many-parts';
    if (at + CHUNK_FRAME > bytes.length) return yield 'broken';
    const length = view.getUint32(at);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (type === 'IDAT' || type === 'IEND') return;
    if (at + CHUNK_FRAME + length > bytes.length) return yield 'broken';
    const checked = bytes.subarray(at + 4, at + 8 + length);
    if (crc32(checked) !== view.getUint32(at + 8 + length)) return yield 'broken';
    yield { type, data: checked.subarray(4) };
    at += CHUNK_FRAME + length;
  }
}

/**
 * Reads size and physical density of a PNG from its chunks (W3C PNG, third edition, 11.2.1 IHDR, 11.3.4.3 pHYs).
 * @param bytes the file, or as much of it as comes before its pixels
 */
export function readPngHeader(bytes: Uint8Array): Result<PngHeader, PngProblem> {
  if (!isPng(bytes)) return fail('not-png');
  if ((chunkCount(bytes) ?? 0) > MOST_CHUNKS) return fail('many-parts');
  let size: { width: number; height: number } | null = null;
  let density: Density | null = null;
  let aspect = 1;
  for (const chunk of chunksBeforePixels(bytes)) {
    if (typeof chunk === 'string') return fail(chunk);
    const { type, data } = chunk;
    const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
    if (type === 'IHDR' && data.length === 13) size = { width: view.getUint32(0), height: view.getUint32(4) };
    if (type === 'pHYs' && data.length === 9) {
      const [x, y] = [view.getUint32(0), view.getUint32(4)];
      if (x === 0 || y === 0) continue;
      aspect = x / y;
      if (data[8] === METRE) density = { x, y };
    }
  }
  if (!size || size.width === 0 || size.height === 0) return fail('no-size');
  return ok({ ...size, density, aspect });
}

/** What of a PNG's chunks changes how it prints. */
export interface PngFacts {
  readonly bitDepth: number;
  /** Frames after the first are not printed (W3C PNG, third edition, 11.3.6). */
  readonly animated: boolean;
  /** The profile embedded (11.3.2.3), with the name the chunk gives it. */
  readonly profile: { readonly name: string; readonly icc: Uint8Array | null } | null;
  /** The exponent of gAMA (11.3.2.2) where neither profile nor sRGB overrides it. */
  readonly gamma: number | null;
}

/** Reads what the chunks before the pixels say beyond size. */
export function readPngFacts(bytes: Uint8Array): PngFacts {
  let [bitDepth, animated, gamma, srgb] = [8, false, null as number | null, false];
  let profile: PngFacts['profile'] = null;
  for (const chunk of chunksBeforePixels(bytes)) {
    if (typeof chunk === 'string') break;
    const { type, data } = chunk;
    if (type === 'IHDR') bitDepth = data[8] ?? 8;
    if (type === 'acTL') animated = true;
    if (type === 'sRGB') srgb = true;
    if (type === 'gAMA' && data.length === 4) {
      gamma = new DataView(data.buffer, data.byteOffset, 4).getUint32(0) / 100_000;
    }
    if (type === 'iCCP') profile = embeddedProfile(data);
  }
  return { bitDepth, animated, profile: srgb ? null : profile, gamma: srgb || profile ? null : gamma };
}

/** A larger profile than this is none that a printer's colours need. */
const LARGEST_PROFILE = 8_000_000;

function embeddedProfile(data: Uint8Array): NonNullable<PngFacts['profile']> {
  const end = Math.max(0, data.indexOf(0));
  const name = String.fromCharCode(...data.subarray(0, Math.min(end, 79)));
  try {
    return { name, icc: unzlibSync(data.subarray(end + 2), { out: new Uint8Array(LARGEST_PROFILE) }) };
  } catch {
    return { name, icc: null };
  }
}

const IEND = 0x49454e44;

/** How many chunks a PNG has up to its end; `null` where it has none. */
function chunkCount(bytes: Uint8Array): number | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let count = 0;
  for (let at = PNG_SIGNATURE.length; at + CHUNK_FRAME <= bytes.length; count += 1) {
    if (view.getUint32(at + 4) === IEND) return count;
    at += CHUNK_FRAME + view.getUint32(at);
  }
  return null;
}

/** Whether a PNG goes on to its end: browsers show one that is cut off as far as it goes. */
export function isWholePng(bytes: Uint8Array): boolean {
  return chunkCount(bytes) !== null;
}

/** Gives a PNG that has no pHYs chunk a physical size, as pixels a metre. */
export function withDensity(png: Uint8Array, density: Density): Uint8Array<ArrayBuffer> {
  const afterHeader = PNG_SIGNATURE.length + CHUNK_FRAME + 13;
  const chunk = densityChunk(density);
  const sized = new Uint8Array(png.length + chunk.length);
  sized.set(png.subarray(0, afterHeader));
  sized.set(chunk, afterHeader);
  sized.set(png.subarray(afterHeader), afterHeader + chunk.length);
  return sized;
}
