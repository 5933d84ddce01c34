import { crc32 } from './crc';

/** Pixels a metre on each axis. */
export interface Density {
  readonly x: number;
  readonly y: number;
}

export const PNG_SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
/** 8 bits a sample, truecolour with alpha or grey, deflate, adaptive filters, not interlaced (11.2.1). */
const FORMS = { colours: [8, 6, 0, 0, 0], grey: [8, 0, 0, 0, 0] } as const;
/** The unit of pHYs (11.3.4.3). */
export const METRE = 1;

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

/** An IHDR chunk (11.2.1). */
export function headerChunk(
  { width, height }: { readonly width: number; readonly height: number },
  form: keyof typeof FORMS = 'colours',
): Uint8Array<ArrayBuffer> {
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  FORMS[form].forEach((value, index) => {
    header.setUint8(8 + index, value);
  });
  return pngChunk('IHDR', new Uint8Array(header.buffer));
}

/** A pHYs chunk of so many pixels a metre (11.3.4.3). */
export function densityChunk({ x, y }: Density): Uint8Array<ArrayBuffer> {
  const density = new DataView(new ArrayBuffer(9));
  density.setUint32(0, Math.round(x));
  density.setUint32(4, Math.round(y));
  density.setUint8(8, METRE);
  return pngChunk('pHYs', new Uint8Array(density.buffer));
}
