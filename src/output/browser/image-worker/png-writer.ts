import { filterRows, type PrintImage, pngChunk, pngEnd, pngHead } from '../../print-image';
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
function gather(write: (data: Uint8Array<ArrayBuffer>) => Promise<void>) {
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
  const deflate = new CompressionStream('deflate');
  const input = deflate.writable.getWriter();
  const chunks = gather((data) => sink.write(pngChunk('IDAT', data)));
  const reader = deflate.readable.getReader();
  const output = (async () => {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      await chunks.take(value);
    }
    await chunks.flush();
  })();
  let failure: unknown = null;
  output.catch((error: unknown) => {
    failure = error;
    // Whoever waits to hand rows in would wait for ever.
    return reader.cancel(error).catch(() => undefined);
  });
  const orFailure = (error: unknown): never => {
    throw failure ?? error;
  };
  const above = new Uint32Array(image.width);
  return {
    async strip(pixels) {
      const filtered = filterRows(pixels, above, image.width);
      above.set(pixels.subarray(pixels.length - image.width));
      await input.write(filtered).catch(orFailure);
    },
    async finish() {
      await input.close().catch(orFailure);
      await output;
      await sink.write(pngEnd());
      await sink.close();
    },
    async abandon() {
      await reader.cancel().catch(() => undefined);
      await output.catch(() => undefined);
      await sink.abandon();
    },
  };
}
