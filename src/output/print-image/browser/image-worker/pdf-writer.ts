import { createZlibStream } from '../../../deflate';
import { type PrintImage, planesOf } from '../..';
import type { StripWriter } from './png-writer';
import type { Sink } from './sink';

/** Deflates what it is given, and holds it until the end. */
function deflated() {
  const stream = createZlibStream();
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  return {
    take: (bytes: Uint8Array) => void pieces.push(stream.push(bytes).slice()),
    async finish(): Promise<Uint8Array> {
      return new Uint8Array(await new Blob([...pieces, stream.end()]).arrayBuffer());
    },
  };
}

/** Writes an image as a PDF of one page, whose library is loaded for it. */
export async function createPdfWriter(image: PrintImage, sink: Sink, title: string): Promise<StripWriter> {
  const library = import('../../pdf');
  const [colours, alpha] = [deflated(), deflated()];
  const above = new Uint32Array(image.width);
  return {
    async strip(pixels) {
      const planes = planesOf(pixels, above, image.width);
      above.set(pixels.subarray(pixels.length - image.width));
      colours.take(planes.colours);
      alpha.take(planes.alpha);
    },
    async finish() {
      const { imagePdf } = await library;
      const facts = { title, made: new Date() };
      await sink.write(await imagePdf(image, await colours.finish(), await alpha.finish(), facts));
      await sink.close();
    },
    abandon: () => sink.abandon(),
  };
}
