import { pngChunk } from '../../../../artwork/png-parts';
import { createZlibStream } from '../../../deflate';
import { filterRows, type PrintImage, pngEnd, pngHead } from '../..';
import type { Sink } from './sink';

/** Takes an image strip by strip. */
export interface StripWriter {
  /** Takes whole rows, RGBA as one number a pixel. The strip may be used anew afterwards. */
  strip(pixels: Uint32Array): Promise<void>;
  finish(): Promise<void>;
  abandon(): Promise<void>;
}

/** Compressed bytes that are put into one chunk. */
const CHUNK = 262_144;

/** Gathers small pieces into chunks of one size. */
export function gather(write: (data: Uint8Array<ArrayBuffer>) => Promise<void>) {
  const buffer = new Uint8Array(CHUNK);
  let filled = 0;
  const flush = async (): Promise<void> => {
    if (filled > 0) await write(buffer.subarray(0, filled));
    filled = 0;
  };
  return {
    async take(piece: Uint8Array): Promise<void> {
      let from = 0;
      while (from < piece.length) {
        const count = Math.min(CHUNK - filled, piece.length - from);
        buffer.set(piece.subarray(from, from + count), filled);
        filled += count;
        from += count;
        if (filled === CHUNK) await flush();
      }
    },
    flush,
  };
}

/** Writes a PNG as a stream: rows are filtered, deflated (zlib format, as IDAT asks for) and put into chunks as they come. */
export async function createPngWriter(image: PrintImage, sink: Sink): Promise<StripWriter> {
  for (const part of pngHead(image, image.ppi)) await sink.write(part);
  const stream = createZlibStream();
  const chunks = gather((data) => sink.write(pngChunk('IDAT', data)));
  const above = new Uint32Array(image.width);
  return {
    async strip(pixels) {
      const filtered = filterRows(pixels, above, image.width);
      above.set(pixels.subarray(pixels.length - image.width));
      await chunks.take(stream.push(filtered));
    },
    async finish() {
      await chunks.take(stream.end());
      await chunks.flush();
      await sink.write(pngEnd());
      await sink.close();
    },
    abandon: () => sink.abandon(),
  };
}
