import { createZlibStream } from '../../../deflate';
import { createWhitePlane, filteredBytes, type PrintImage, planesOf } from '../..';
import type { WhiteChoice } from './job';
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
export async function createPdfWriter(
  image: PrintImage,
  sink: Sink,
  title: string,
  white: WhiteChoice | null,
): Promise<StripWriter> {
  const library = import('../../pdf');
  const [colours, alpha, coverage] = [deflated(), deflated(), deflated()];
  const plane = white && createWhitePlane(image, white.choke);
  const above = new Uint32Array(image.width);
  let whiteAbove = new Uint8Array(image.width);
  const takeWhite = (rows: Uint8Array) => {
    if (rows.length === 0) return;
    coverage.take(filteredBytes(rows, whiteAbove, image.width));
    whiteAbove = rows.slice(rows.length - image.width);
  };
  return {
    async strip(pixels) {
      const planes = planesOf(pixels, above, image.width);
      above.set(pixels.subarray(pixels.length - image.width));
      colours.take(planes.colours);
      alpha.take(planes.alpha);
      if (plane) takeWhite(plane.push(pixels));
    },
    async finish() {
      const { imagePdf } = await library;
      if (plane) takeWhite(plane.end());
      const planes = {
        colours: await colours.finish(),
        alpha: await alpha.finish(),
        white: white && { name: white.name, coverage: await coverage.finish() },
      };
      await sink.write(await imagePdf(image, planes, { title, made: new Date() }));
      await sink.close();
    },
    abandon: () => sink.abandon(),
  };
}
