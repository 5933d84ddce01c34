import { createZlibStream } from '../../../deflate';
import { createWhitePlane, type PrintImage, tiffDirectory, tiffHead, tiffStrip, tiffStripRows } from '../..';
import type { WhiteChoice } from './job';
import type { StripWriter } from './png-writer';
import type { Sink } from './sink';

/** Rows of pixels, or of their white, that wait for a strip to be full. */
function rowsWaiting<Rows extends Uint32Array | Uint8Array>(make: (length: number) => Rows) {
  let rows = make(0);
  let taken = 0;
  return {
    get count() {
      return rows.length - taken;
    },
    add(more: Rows): void {
      const both = make(rows.length - taken + more.length);
      both.set(rows.subarray(taken));
      both.set(more, rows.length - taken);
      rows = both;
      taken = 0;
    },
    take(count: number): Rows {
      taken += count;
      return rows.subarray(taken - count, taken) as Rows;
    },
  };
}

/**
 * Writes a TIFF strip by strip, the white as an extra channel; its directory comes last, when it is known where strips lie. No library that is
 * kept writes extra samples, or strips as they come.
 */
export async function createTiffWriter(
  image: PrintImage,
  sink: Sink,
  white: WhiteChoice | null,
): Promise<StripWriter> {
  const profile = import('../../../pdf/profile');
  const form = { width: image.width, height: image.height, ppi: image.ppi, white: white?.name ?? null };
  const whole = tiffStripRows(form) * form.width;
  const plane = white && createWhitePlane(image, white.choke);
  const pixels = rowsWaiting<Uint32Array>((length) => new Uint32Array(length));
  const coverage = rowsWaiting<Uint8Array>((length) => new Uint8Array(length));
  const strips: { offsets: number[]; counts: number[] } = { offsets: [], counts: [] };
  let at = 0;
  const write = async (bytes: Uint8Array<ArrayBuffer>) => {
    await sink.write(bytes);
    at += bytes.length;
  };
  const writeStrip = async (count: number) => {
    const strip = tiffStrip(pixels.take(count), plane && coverage.take(count), form.width);
    const stream = createZlibStream();
    const [first, rest] = [stream.push(strip).slice(), stream.end()];
    strips.offsets.push(at);
    strips.counts.push(first.length + rest.length);
    await write(first);
    await write(rest);
  };
  /** Writes what is known of both, in whole strips. */
  const writeKnown = async () => {
    const known = () => (plane ? Math.min(pixels.count, coverage.count) : pixels.count);
    while (known() >= whole) await writeStrip(whole);
  };
  await write(tiffHead(0));
  return {
    async strip(rows) {
      pixels.add(rows);
      if (plane) coverage.add(plane.push(rows));
      await writeKnown();
    },
    async finish() {
      if (plane) coverage.add(plane.end());
      await writeKnown();
      if (pixels.count > 0) await writeStrip(pixels.count);
      if (at % 2 === 1) await write(Uint8Array.of(0));
      const directory = at;
      await write(tiffDirectory(form, strips, (await profile).srgbProfile(), directory));
      await sink.rewrite(tiffHead(directory), 0);
      await sink.close();
    },
    abandon: () => sink.abandon(),
  };
}
