import { fail, ok, type Result } from '../units';
import type { Density } from './png';

/** What a raster image says of itself before its pixels. */
export interface RasterHeader {
  readonly width: number;
  readonly height: number;
  readonly density: Density | null;
}

/** `cmyk`: four inks, which browsers show in colours of their own. */
export type JpegProblem = 'broken' | 'no-size' | 'cmyk';

const MARKER = 0xff;
const APP0 = 0xe0;
const SCAN = 0xda;
const CENTIMETRES_PER_METRE = 100;
const INCHES_PER_METRE = 1 / 0.0254;

/** Start-of-frame markers, which carry the size; C4, C8 and CC are other things. */
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** The density of a JFIF header: units 1 are dots an inch, 2 dots a centimetre; 0 are proportions only. */
function jfifDensity(segment: Uint8Array): Density | null {
  const isJfif = String.fromCharCode(...segment.subarray(0, 5)) === 'JFIF\0';
  if (!isJfif || segment.length < 12) return null;
  const view = new DataView(segment.buffer, segment.byteOffset, segment.byteLength);
  const perMetre = [0, INCHES_PER_METRE, CENTIMETRES_PER_METRE][segment[7] ?? 0] ?? 0;
  const [x, y] = [view.getUint16(8) * perMetre, view.getUint16(10) * perMetre];
  return x > 0 && y > 0 ? { x, y } : null;
}

export const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === MARKER && bytes[1] === 0xd8;

/** Reads size and density of a JPEG (ISO/IEC 10918-1 B.2.2 frame header; ISO/IEC 10918-5 JFIF, 6.1 APP0). */
export function readJpegHeader(bytes: Uint8Array): Result<RasterHeader, JpegProblem> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let density: Density | null = null;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== MARKER) return fail('broken');
    const marker = bytes[at + 1] as number;
    if (marker === MARKER) {
      at += 1;
      continue;
    }
    if (marker === SCAN) return fail('no-size');
    const length = view.getUint16(at + 2);
    const segment = bytes.subarray(at + 4, at + 2 + length);
    if (length < 2 || at + 2 + length > bytes.length) return fail('broken');
    if (marker === APP0) density = jfifDensity(segment);
    if (isFrame(marker)) {
      const [height, width] = [view.getUint16(at + 5), view.getUint16(at + 7)];
      if (bytes[at + 9] === 4) return fail('cmyk');
      return width > 0 && height > 0 ? ok({ width, height, density }) : fail('no-size');
    }
    at += 2 + length;
  }
  return fail('broken');
}
