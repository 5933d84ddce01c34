import { crc32 } from '../crc';

const SIGNATURE = 8;
const FRAME = 12;
const SAMPLES: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };
/** Where the pixels of each pass begin, and how far they lie apart (W3C PNG, third edition, 8.1). */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;
const WHOLE = [[0, 0, 1, 1]] as const;

/** Bytes of all rows, each behind its filter (9.2); none of a pass without pixels. */
function bytesOfRows(header: DataView): number {
  const [width, height] = [header.getUint32(0), header.getUint32(4)];
  const bits = header.getUint8(8) * (SAMPLES[header.getUint8(9)] ?? 1);
  return (header.getUint8(12) === 1 ? PASSES : WHOLE).reduce((sum, [x, y, across, down]) => {
    const [columns, rows] = [Math.ceil((width - x) / across), Math.ceil((height - y) / down)];
    return columns <= 0 || rows <= 0 ? sum : sum + rows * (1 + Math.ceil((columns * bits) / 8));
  }, 0);
}

/** The data of the pixels, each chunk with its checksum verified; `null` where one is wrong or the file is cut. */
function pixelData(bytes: Uint8Array<ArrayBuffer>) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const data: Uint8Array<ArrayBuffer>[] = [];
  for (let at = SIGNATURE; at + FRAME <= bytes.length; ) {
    const length = view.getUint32(at);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (type === 'IEND') return data;
    if (type === 'IDAT') {
      if (at + FRAME + length > bytes.length) return null;
      if (crc32(bytes.subarray(at + 4, at + 8 + length)) !== view.getUint32(at + 8 + length)) return null;
      data.push(bytes.subarray(at + 8, at + 8 + length));
    }
    at += FRAME + length;
  }
  return null;
}

/**
 * Whether the data of a PNG's pixels is sound and goes on to the last row: browsers show what there is of it, whatever its
 * checksums say. The browser inflates it and holds it against the checksum of RFC 1950.
 */
export async function hasAllRows(bytes: Uint8Array<ArrayBuffer>): Promise<boolean> {
  const data = pixelData(bytes);
  if (!data) return false;
  let missing = bytesOfRows(new DataView(bytes.buffer, bytes.byteOffset + SIGNATURE + 8, 13));
  try {
    const inflated = new Blob(data).stream().pipeThrough(new DecompressionStream('deflate')).getReader();
    for (let read = await inflated.read(); !read.done; read = await inflated.read()) {
      missing -= read.value.length;
    }
  } catch {
    return false;
  }
  return missing <= 0;
}
