import { pngChunk } from '../../../../artwork/png-parts';
import type { Micrometres } from '../../../../units';
import { createZlibStream } from '../../../deflate';
import { createWhitePlane, filteredBytes, type PrintImage, pngEnd, pngHead } from '../..';
import { gather, type StripWriter } from './png-writer';
import type { Sink } from './sink';

/** Writes the choked white of an image as a grey PNG of the same size: white where it is full, black where there is none. */
export async function createWhiteWriter(
  image: PrintImage,
  sink: Sink,
  choke: Micrometres,
): Promise<StripWriter> {
  for (const part of pngHead(image, image.ppi, 'grey')) await sink.write(part);
  const plane = createWhitePlane(image, choke);
  const stream = createZlibStream();
  const chunks = gather((data) => sink.write(pngChunk('IDAT', data)));
  let above = new Uint8Array(image.width);
  const take = async (white: Uint8Array) => {
    if (white.length === 0) return;
    const filtered = filteredBytes(white, above, image.width);
    above = white.slice(white.length - image.width);
    await chunks.take(stream.push(filtered));
  };
  return {
    strip: (pixels) => take(plane.push(pixels)),
    async finish() {
      await take(plane.end());
      await chunks.take(stream.end());
      await chunks.flush();
      await sink.write(pngEnd());
      await sink.close();
    },
    abandon: () => sink.abandon(),
  };
}

/** Two writers of one image as one: both are ended, or neither is left. */
export const together = (one: StripWriter, other: StripWriter): StripWriter => ({
  async strip(pixels) {
    await one.strip(pixels);
    await other.strip(pixels);
  },
  async finish() {
    await one.finish();
    await other.finish();
  },
  async abandon() {
    await one.abandon().catch(() => undefined);
    await other.abandon();
  },
});
