import { type PrintImage, planesOf } from '../../print-image';
import type { StripWriter } from './png-writer';
import type { Sink } from './sink';

/** Deflates what it is given, and holds it until the end. */
function deflated() {
  const { readable, writable } = new CompressionStream('deflate');
  const input = writable.getWriter();
  const output = new Response(readable).arrayBuffer();
  // A stream that is given up is not heard of again.
  output.catch(() => undefined);
  return {
    take: (bytes: Uint8Array<ArrayBuffer>) => input.write(bytes),
    async finish(): Promise<Uint8Array> {
      await input.close();
      return new Uint8Array(await output);
    },
    abandon: () => input.abort().catch(() => undefined),
  };
}

/** Writes an image as a PDF of one page, whose library is loaded for it. */
export async function createPdfWriter(image: PrintImage, sink: Sink, title: string): Promise<StripWriter> {
  const library = import('../../print-image/pdf');
  const [colours, alpha] = [deflated(), deflated()];
  const above = new Uint32Array(image.width);
  return {
    async strip(pixels) {
      const planes = planesOf(pixels, above, image.width);
      above.set(pixels.subarray(pixels.length - image.width));
      await Promise.all([colours.take(planes.colours), alpha.take(planes.alpha)]);
    },
    async finish() {
      const { imagePdf } = await library;
      const facts = { title, made: new Date() };
      await sink.write(await imagePdf(image, await colours.finish(), await alpha.finish(), facts));
      await sink.close();
    },
    async abandon() {
      await Promise.all([colours.abandon(), alpha.abandon()]);
      await sink.abandon();
    },
  };
}
