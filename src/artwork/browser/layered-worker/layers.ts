import { fail, fromUnit, ok, type Result } from '../../../units';
import { MOST_PIXELS, WIDEST } from '../../most-pixels';
import type { Flat, FlatProblem } from './flat';

/**
 * Files of layers hold, beside the layers, the picture that they make. It is read as the format is published: a head of 26 bytes; colour
 * table, resources and layers, each behind its length; then the picture in planes of a channel each, as they are or with their rows
 * packed (PackBits; TIFF 6.0, section 9).
 */
const HEADER = 26;
const [GREY, RGB] = [1, 3];
const PACKED = 1;
/** Numbers of resources. */
const [RESOLUTION, PROFILE] = [1005, 1039];
/** Where the count of layers stands in their part: behind its length and that of what tells of them. */
const LAYER_COUNT = 8;
/** A colour on white is rounded. */
const TOLERANCE = 2;

/** Where the parts behind the head begin, each with its length before it, and where the picture does. */
function partsOf(view: DataView): {
  readonly resources: number;
  readonly layers: number;
  readonly picture: number;
} {
  const after = (at: number) => at + 4 + view.getUint32(at);
  const resources = after(HEADER);
  const layers = after(resources);
  return { resources, layers, picture: after(layers) };
}

/** The resources: blocks of a sign, a number, a name and data, each of even length. */
function* resourcesOf(view: DataView, from: number, end: number): Generator<readonly [number, Uint8Array]> {
  for (let at = from + 4; at + 12 <= end; ) {
    const name = view.getUint8(at + 6) + 1;
    const data = at + 6 + name + (name % 2) + 4;
    const length = view.getUint32(data - 4);
    yield [view.getUint16(at + 4), new Uint8Array(view.buffer, view.byteOffset + data, length)];
    at = data + length + (length % 2);
  }
}

/** Pixels a metre: a resolution is of an inch in fixed point, whatever unit it was shown in. */
function densityOf(data: Uint8Array): Flat['density'] {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const perMetre = (at: number) => (view.getUint32(at) / 65_536) * (1_000_000 / fromUnit(1, 'in'));
  const density = { x: perMetre(0), y: perMetre(8) };
  return density.x > 0 && density.y > 0 ? density : null;
}

/** Unpacks one row. @returns whether it is as long as it has to be */
function unpack(packed: Uint8Array, row: Uint8Array): boolean {
  let to = 0;
  for (let at = 0; at < packed.length; ) {
    const count = ((packed[at++] as number) << 24) >> 24;
    if (count >= 0) {
      row.set(packed.subarray(at, at + count + 1).subarray(0, row.length - to), to);
      at += count + 1;
      to += count + 1;
    } else if (count !== -128) {
      row.fill(packed[at++] as number, to, to + 1 - count);
      to += 1 - count;
    }
  }
  return to === row.length;
}

/** The rows of the picture, plane by plane; ends early where the file does, or where a row is not as long as it has to be. */
function* rowsOf(bytes: Uint8Array, picture: number, rows: number, length: number): Generator<Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isPacked = view.getUint16(picture) === PACKED;
  const row = new Uint8Array(length);
  let at = picture + 2 + (isPacked ? rows * 2 : 0);
  for (let index = 0; index < rows; index += 1) {
    const taken = isPacked ? view.getUint16(picture + 2 + index * 2) : length;
    if (at + taken > bytes.length) return;
    const stands = bytes.subarray(at, at + taken);
    if (isPacked && !unpack(stands, row)) return;
    yield isPacked ? row : stands;
    at += taken;
  }
}

/** Takes off the white that soft edges are saved on; a colour darker than that white alone says that these were not. */
function takeWhiteOff(rgba: Uint8ClampedArray): void {
  for (let at = 0; at < rgba.length; at += 4) {
    const white = 255 - (rgba[at + 3] as number) - TOLERANCE;
    for (let channel = at; channel < at + 3; channel += 1) if ((rgba[channel] as number) < white) return;
  }
  for (let at = 0; at < rgba.length; at += 4) {
    const alpha = rgba[at + 3] as number;
    if (alpha === 0) continue;
    for (let channel = at; channel < at + 3; channel += 1)
      rgba[channel] = (((rgba[channel] as number) - 255 + alpha) * 255) / alpha;
  }
}

/**
 * Reads the picture that the layers of a file make: greys or RGB of 8 or 16 bits, of which the high byte is kept.
 * @throws {RangeError} if the file ends before its picture
 */
export function readLayers(bytes: Uint8Array<ArrayBuffer>): Result<Flat, FlatProblem> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const [channels, height, width] = [view.getUint16(12), view.getUint32(14), view.getUint32(18)];
  const [depth, mode] = [view.getUint16(22), view.getUint16(24)];
  if (width * height > MOST_PIXELS) return fail('too-large');
  if (width > WIDEST) return fail('too-wide');
  if ((depth !== 8 && depth !== 16) || (mode !== RGB && mode !== GREY)) return fail('layered');
  const { resources, layers, picture } = partsOf(view);
  const told = new Map(resourcesOf(view, resources, Math.min(layers, bytes.length)));
  const colours = mode === RGB ? 3 : 1;
  // A count below nought says that the channel behind the colours is the picture's alpha; others there are selections that were kept.
  const hasAlpha =
    channels > colours && picture >= layers + LAYER_COUNT + 6 && view.getInt16(layers + LAYER_COUNT) < 0;
  const planes = colours + (hasAlpha ? 1 : 0);
  const rgba = new Uint8ClampedArray(width * height * 4).fill(255);
  const step = depth / 8;
  let rows = 0;
  for (const row of rowsOf(bytes, picture, channels * height, width * step)) {
    const plane = Math.floor(rows / height);
    if (plane === planes) break;
    const first = (rows % height) * width * 4;
    const alone = mode === GREY && plane === 0;
    const to = plane === colours ? [3] : alone ? [0, 1, 2] : [plane];
    for (let x = 0; x < width; x += 1)
      for (const channel of to) rgba[first + x * 4 + channel] = row[x * step] as number;
    rows += 1;
  }
  if (rows < planes * height) return fail('broken');
  if (hasAlpha) takeWhiteOff(rgba);
  const [resolution, profile] = [told.get(RESOLUTION), told.get(PROFILE)];
  return ok({
    width,
    height,
    rgba,
    density: resolution ? densityOf(resolution) : null,
    icc: (mode === RGB && profile) || null,
  });
}
