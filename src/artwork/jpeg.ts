import { fail, ok, type Result } from '../units';
import { type Exif, readExif } from './exif';
import type { Density } from './png';

/** What a raster image says of itself before its pixels. */
export interface RasterHeader {
  readonly width: number;
  readonly height: number;
  readonly density: Density | null;
  /** Pixels on a length across, over those down; 1 where the file does not say. */
  readonly aspect: number;
}

export type JpegProblem = 'broken' | 'no-size';

const MARKER = 0xff;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
const SCAN = 0xda;
const END = 0xd9;
const CENTIMETRES_PER_METRE = 100;
const INCHES_PER_METRE = 1 / 0.0254;

/** Start-of-frame markers, which carry the size; C4, C8 and CC are other things. */
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** What a JFIF header says of density: units 1 are dots an inch, 2 dots a centimetre; 0 are proportions only. */
function jfifDensity(segment: Uint8Array): { density: Density | null; aspect: number } | null {
  const isJfif = String.fromCharCode(...segment.subarray(0, 5)) === 'JFIF\0';
  if (!isJfif || segment.length < 12) return null;
  const view = new DataView(segment.buffer, segment.byteOffset, segment.byteLength);
  const perMetre = [0, INCHES_PER_METRE, CENTIMETRES_PER_METRE][segment[7] ?? 0] ?? 0;
  const [x, y] = [view.getUint16(8), view.getUint16(10)];
  if (x === 0 || y === 0) return null;
  return { density: perMetre > 0 ? { x: x * perMetre, y: y * perMetre } : null, aspect: x / y };
}

export const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === MARKER && bytes[1] === 0xd8;

/** The marker segments up to the pixels, each without its length; ends early where the file does. */
function* segments(bytes: Uint8Array): Generator<{ marker: number; data: Uint8Array } | 'broken'> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== MARKER) return yield 'broken';
    const marker = bytes[at + 1] as number;
    if (marker === MARKER) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (length < 2 || at + 2 + length > bytes.length) return yield 'broken';
    yield { marker, data: bytes.subarray(at + 4, at + 2 + length) };
    if (marker === SCAN) return;
    at += 2 + length;
  }
  yield 'broken';
}

const startsWith = (data: Uint8Array, name: string): boolean =>
  [...name].every((letter, index) => data[index] === letter.charCodeAt(0));

const EXIF = 'Exif\0\0';
const ICC = 'ICC_PROFILE\0';

/**
 * Reads size and density of a JPEG as it is looked at, turned as its Exif says (ISO/IEC 10918-1 B.2.2 frame header; ISO/IEC
 * 10918-5 JFIF, 6.1 APP0; Exif 2.32, 4.7.2 APP1).
 */
export function readJpegHeader(bytes: Uint8Array): Result<RasterHeader, JpegProblem> {
  let jfif: ReturnType<typeof jfifDensity> = null;
  let exif: Exif | null = null;
  for (const segment of segments(bytes)) {
    if (segment === 'broken') return fail('broken');
    const { marker, data } = segment;
    if (marker === SCAN) return fail('no-size');
    if (marker === APP0) jfif ??= jfifDensity(data);
    if (marker === APP1 && startsWith(data, EXIF)) exif ??= readExif(data.subarray(EXIF.length));
    if (!isFrame(marker)) continue;
    const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
    if (data.length < 6) return fail('broken');
    const [height, width] = [view.getUint16(1), view.getUint16(3)];
    if (width === 0 || height === 0) return fail('no-size');
    const density = jfif?.density ?? exif?.density ?? null;
    const aspect = density ? density.x / density.y : (jfif?.aspect ?? 1);
    return ok(turnedBy(exif?.orientation ?? 1, { width, height, density, aspect }));
  }
  return fail('broken');
}

/** How the four inks of a JPEG are stored. */
export interface JpegInks {
  /** 255 stands for no ink. */
  readonly inverted: boolean;
  readonly orientation: number;
  readonly icc: Uint8Array | null;
}

/**
 * What a JPEG says of its four inks; `null` of one that has none. One that bears the mark of ISO/IEC 10918-6, 6.5.3 (APP14) has them
 * inverted (common practice, and what libjpeg's users do).
 */
export function jpegInks(bytes: Uint8Array): JpegInks | null {
  let inverted = false;
  let exif: Exif | null = null;
  for (const segment of segments(bytes)) {
    if (segment === 'broken') return null;
    const { marker, data } = segment;
    if (marker === APP14 && startsWith(data, 'Adobe')) inverted = true;
    if (marker === APP1 && startsWith(data, EXIF)) exif ??= readExif(data.subarray(EXIF.length));
    if (!isFrame(marker)) continue;
    if (data[5] !== 4) return null;
    return { inverted, orientation: exif?.orientation ?? 1, icc: jpegProfile(bytes) };
  }
  return null;
}

/** From orientation 5 on, an image lies on its side. */
function turnedBy(orientation: number, header: RasterHeader): RasterHeader {
  if (orientation < 5) return header;
  const { width, height, density, aspect } = header;
  return {
    width: height,
    height: width,
    density: density && { x: density.y, y: density.x },
    aspect: 1 / aspect,
  };
}

/** The ICC profile of a JPEG, put together from its parts (ICC.1:2022, annex B.4); `null` if it has none. */
export function jpegProfile(bytes: Uint8Array): Uint8Array | null {
  const parts: Uint8Array[] = [];
  for (const segment of segments(bytes)) {
    if (segment === 'broken') break;
    const { marker, data } = segment;
    if (marker !== APP2 || !startsWith(data, ICC)) continue;
    parts[(data[ICC.length] ?? 1) - 1] = data.subarray(ICC.length + 2);
  }
  const found = parts.filter(Boolean);
  if (found.length === 0) return null;
  const whole = new Uint8Array(found.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of found) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Whether the marker that ends a JPEG is there: browsers show one that is cut off as far as it goes. */
export function isWholeJpeg(bytes: Uint8Array): boolean {
  for (let at = bytes.length - 2; at > 0; at -= 1) {
    if (bytes[at] === MARKER && bytes[at + 1] === END) return true;
    if (bytes[at] === MARKER && bytes[at + 1] === SCAN) return false;
  }
  return false;
}
