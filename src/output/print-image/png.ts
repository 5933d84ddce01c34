import { crc32 } from '../../artwork/crc';
import type { PixelSize } from './orientation';

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
const METRES_PER_INCH = 0.0254;
/** 8 bits a sample, truecolour with alpha or grey, deflate, adaptive filters, not interlaced (11.2.1). */
const FORMS = { colours: [8, 6, 0, 0, 0], grey: [8, 0, 0, 0, 0] } as const;
const PERCEPTUAL = 0;
const METRE = 1;

/** A chunk: length, type, data, CRC of type and data (W3C PNG, third edition, 5.3). */
export function pngChunk(type: string, data: Uint8Array): Uint8Array<ArrayBuffer> {
  const chunk = new Uint8Array(data.length + 12);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, data.length);
  for (let index = 0; index < 4; index += 1) chunk[4 + index] = type.charCodeAt(index);
  chunk.set(data, 8);
  view.setUint32(8 + data.length, crc32(chunk.subarray(4, 8 + data.length)));
  return chunk;
}

/**
 * All that comes before the pixels: signature, IHDR, sRGB and pHYs (11.2.1, 11.3.2.5, 11.3.4.3). Grey is a coverage, and in no space
 * of colours.
 */
export function pngHead(
  { width, height }: PixelSize,
  ppi: number,
  form: keyof typeof FORMS = 'colours',
): Uint8Array<ArrayBuffer>[] {
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  FORMS[form].forEach((value, index) => {
    header.setUint8(8 + index, value);
  });
  const density = new DataView(new ArrayBuffer(9));
  const perMetre = Math.round(ppi / METRES_PER_INCH);
  density.setUint32(0, perMetre);
  density.setUint32(4, perMetre);
  density.setUint8(8, METRE);
  return [
    SIGNATURE,
    pngChunk('IHDR', new Uint8Array(header.buffer)),
    ...(form === 'colours' ? [pngChunk('sRGB', Uint8Array.of(PERCEPTUAL))] : []),
    pngChunk('pHYs', new Uint8Array(density.buffer)),
  ];
}

/** What ends a file. */
export const pngEnd = (): Uint8Array<ArrayBuffer> => pngChunk('IEND', new Uint8Array());
