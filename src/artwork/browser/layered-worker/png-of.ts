import { densityChunk, headerChunk, PNG_SIGNATURE, pngChunk } from '../../png-parts';
import type { Flat } from './flat';

const CHANNELS = 4;
/** The filter that takes the row above off each row (W3C PNG, third edition, 9.2). */
const UP = 2;
const PROFILE_NAME = 'profile';

const deflated = async (bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> =>
  new Uint8Array(
    await new Response(
      new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate')),
    ).arrayBuffer(),
  );

function filteredRows({ rgba, width, height }: Flat): Uint8Array<ArrayBuffer> {
  const row = width * CHANNELS;
  const rows = new Uint8Array((row + 1) * height);
  for (let y = 0, to = 0; y < height; y += 1) {
    rows[to++] = UP;
    for (let at = y * row; at < (y + 1) * row; at += 1, to += 1)
      rows[to] = (rgba[at] as number) - (y === 0 ? 0 : (rgba[at - row] as number));
  }
  return rows;
}

/** An iCCP chunk (11.3.2.3): a name, a nought, the method, and the profile. */
async function profileChunk(icc: Uint8Array): Promise<Uint8Array<ArrayBuffer>> {
  const packed = await deflated(Uint8Array.from(icc));
  const name = Array.from(PROFILE_NAME, (letter) => letter.charCodeAt(0));
  const data = new Uint8Array(name.length + 2 + packed.length);
  data.set(name);
  data.set(packed, name.length + 2);
  return pngChunk('iCCP', data);
}

/** The same pixels as a PNG, with the size and the profile that they had. */
export async function pngOf(flat: Flat): Promise<Blob> {
  const parts = [
    PNG_SIGNATURE,
    headerChunk(flat),
    ...(flat.icc ? [await profileChunk(flat.icc)] : []),
    ...(flat.density ? [densityChunk(flat.density)] : []),
    pngChunk('IDAT', await deflated(filteredRows(flat))),
    pngChunk('IEND', new Uint8Array()),
  ];
  return new Blob(parts, { type: 'image/png' });
}
