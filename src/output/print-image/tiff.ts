import { strToU8 } from 'fflate';
import type { PixelSize } from './orientation';

/** What an extra channel is called: white, 255 where it is full. */
interface TiffForm extends PixelSize {
  readonly ppi: number;
  readonly white: string | null;
}

/** Of the first nine kinds of values those that are used, with their bytes (TIFF 6.0, section 2). */
const ASCII = { code: 2, bytes: 1 } as const;
const SHORT = { code: 3, bytes: 2 } as const;
const LONG = { code: 4, bytes: 4 } as const;
const RATIONAL = { code: 5, bytes: 8 } as const;
const UNDEFINED = { code: 7, bytes: 1 } as const;

/** Colours, how opaque they are, and the white. */
const tiffSamples = ({ white }: Pick<TiffForm, 'white'>): number => (white === null ? 4 : 5);

/** A strip is compressed by itself; so many bytes of it lose next to nothing. */
const STRIP_BYTES = 262_144;

/** Rows of each strip but the last. */
export const tiffStripRows = (form: TiffForm): number =>
  Math.min(form.height, Math.max(1, Math.floor(STRIP_BYTES / (form.width * tiffSamples(form)))));

/** The first eight bytes: little-endian, 42, where the directory lies (section 2). */
export function tiffHead(directoryAt: number): Uint8Array<ArrayBuffer> {
  const head = new DataView(new ArrayBuffer(8));
  head.setUint16(0, 0x4949);
  head.setUint16(2, 42, true);
  head.setUint32(4, directoryAt, true);
  return new Uint8Array(head.buffer);
}

/**
 * Rows of an image as a strip: its samples one after the other, each as it differs from that of the pixel before (section 14).
 * @param pixels RGBA as one number a pixel
 * @param white a byte a pixel, as many
 */
export function tiffStrip(
  pixels: Uint32Array,
  white: Uint8Array | null,
  width: number,
): Uint8Array<ArrayBuffer> {
  const rgba = new Uint8Array(pixels.buffer, pixels.byteOffset, 4 * pixels.length);
  const samples = white ? 5 : 4;
  const strip = new Uint8Array(samples * pixels.length);
  for (let at = 0, to = 0; at < pixels.length; at += 1) {
    const isFirst = at % width === 0;
    for (let sample = 0; sample < 4; sample += 1, to += 1) {
      const before = isFirst ? 0 : (rgba[4 * at - 4 + sample] as number);
      strip[to] = (rgba[4 * at + sample] as number) - before;
    }
    if (white) strip[to++] = (white[at] as number) - (isFirst ? 0 : (white[at - 1] as number));
  }
  return strip;
}

/**
 * The directory of an image (TIFF 6.0): RGB with alpha that it is not multiplied by and, where there is white, a channel of no
 * meaning that the standard knows (ExtraSamples 2 and 0, section 18), in strips of deflate (compression 8, of the supplement of 2002). Names
 * of inks are of separated images alone (section 16), so that the white's is told in the description.
 * @param at where it lies in the file, which its own values follow
 */
export function tiffDirectory(
  form: TiffForm,
  strips: { readonly offsets: readonly number[]; readonly counts: readonly number[] },
  profile: Uint8Array,
  at: number,
): Uint8Array<ArrayBuffer> {
  const samples = tiffSamples(form);
  const text = (value: string) => [...strToU8(`${value}\0`)];
  const described =
    form.white === null ? 'Extra sample 1: alpha' : `Extra sample 1: alpha; 2: ${form.white}, 255 = full`;
  const entries: readonly (readonly [
    tag: number,
    kind: { code: number; bytes: number },
    values: ArrayLike<number>,
  ])[] = [
    [256, LONG, [form.width]],
    [257, LONG, [form.height]],
    [258, SHORT, new Array<number>(samples).fill(8)],
    [259, SHORT, [8]],
    [262, SHORT, [2]],
    [270, ASCII, text(described)],
    [273, LONG, strips.offsets],
    [277, SHORT, [samples]],
    [278, LONG, [tiffStripRows(form)]],
    [279, LONG, strips.counts],
    [282, RATIONAL, [form.ppi, 1]],
    [283, RATIONAL, [form.ppi, 1]],
    [284, SHORT, [1]],
    [296, SHORT, [2]],
    [305, ASCII, text('Rollwright')],
    [317, SHORT, [2]],
    [338, SHORT, form.white === null ? [2] : [2, 0]],
    [34675, UNDEFINED, profile],
  ];
  /** Bytes of all values of an entry; a rational is two numbers. */
  const sizeOf = (kind: { bytes: number }, values: ArrayLike<number>) =>
    kind === RATIONAL ? 4 * values.length : kind.bytes * values.length;
  const even = (size: number) => size + (size & 1);
  const own = 2 + 12 * entries.length + 4;
  const beside = entries.map(([, kind, values]) =>
    sizeOf(kind, values) > 4 ? even(sizeOf(kind, values)) : 0,
  );
  const bytes = new Uint8Array(own + beside.reduce((sum, size) => sum + size, 0));
  const view = new DataView(bytes.buffer);
  view.setUint16(0, entries.length, true);
  let free = own;
  for (const [index, [tag, kind, values]] of entries.entries()) {
    const entry = 2 + 12 * index;
    view.setUint16(entry, tag, true);
    view.setUint16(entry + 2, kind.code, true);
    view.setUint32(entry + 4, kind === RATIONAL ? values.length / 2 : values.length, true);
    const isBeside = sizeOf(kind, values) > 4;
    if (isBeside) view.setUint32(entry + 8, at + free, true);
    const width = kind === RATIONAL ? 4 : kind.bytes;
    let to = isBeside ? free : entry + 8;
    for (let value = 0; value < values.length; value += 1, to += width) {
      if (width === 1) view.setUint8(to, values[value] as number);
      else if (width === 2) view.setUint16(to, values[value] as number, true);
      else view.setUint32(to, values[value] as number, true);
    }
    free += beside[index] as number;
  }
  return bytes;
}
