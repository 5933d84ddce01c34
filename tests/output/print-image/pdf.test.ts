import { deflateSync, inflateSync } from 'node:zlib';
import { PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib';
import { describe, expect, it } from 'vitest';
import { fitsPdf, framesOf, imageOf, type PrintImage, planesOf } from '../../../src/output/print-image';
import { imagePdf } from '../../../src/output/print-image/pdf';
import { fromMm } from '../../../src/units';
import { readPdf } from '../read-pdf';
import { runOf } from '../runs';

/** One copy on film of a size, in millimetres. */
function imageOn(width: number, length: number, ppi: number): PrintImage {
  const box = { code: 'A', number: 1, x: 10, y: 10, width: 50, length: length - 20 };
  const run = runOf([box], { width: fromMm(width), spanMax: null });
  const [frame] = framesOf(run, { kind: 'run' });
  if (!frame) throw new Error('no frame');
  const marks = { ticks: false, numbers: false, names: null, corners: false };
  return imageOf(run, frame, { ppi, mirrored: false, firstEnd: 'lead', feed: 1, marks });
}

/** The pixels of an image and its PDF, made in strips of some rows. */
async function written(image: PrintImage, rows: number) {
  const pixels = new Uint32Array(image.width * image.height).map(
    (_, at) => (Math.imul(at >> 3, 2654435761) ^ (at << 7)) >>> 0,
  );
  const [colours, alpha]: [Uint8Array[], Uint8Array[]] = [[], []];
  let above: Uint32Array = new Uint32Array(image.width);
  for (let from = 0; from < image.height; from += rows) {
    const strip = pixels.subarray(from * image.width, (from + rows) * image.width);
    const planes = planesOf(strip, above, image.width);
    colours.push(planes.colours);
    alpha.push(planes.alpha);
    above = strip.subarray(strip.length - image.width);
  }
  const facts = { title: 'Run 1', made: new Date('2026-11-26T12:00:00Z') };
  const [colourStream, alphaStream] = [colours, alpha].map((parts) => deflateSync(Buffer.concat(parts)));
  if (!colourStream || !alphaStream) throw new Error('no streams');
  return {
    pixels,
    pdf: await imagePdf(image, { colours: colourStream, alpha: alphaStream, white: null }, facts),
  };
}

/** Undoes the filters of rows as ISO 32000-1, 7.4.4.4 has them. */
function unfiltered(bytes: Uint8Array, stride: number): Uint8Array {
  const rows = bytes.length / (stride + 1);
  const plain = new Uint8Array(rows * stride);
  for (let row = 0; row < rows; row += 1) {
    if (bytes[row * (stride + 1)] !== 2) expect.fail(`row ${row} is not filtered by Up`);
    for (let at = 0; at < stride; at += 1) {
      const over = row === 0 ? 0 : (plain[(row - 1) * stride + at] ?? 0);
      plain[row * stride + at] = (bytes[row * (stride + 1) + 1 + at] ?? 0) + over;
    }
  }
  return plain;
}

describe('an image as PDF', () => {
  it.each([
    // ISO 216, A4; 13 x 19 in, common practice, no source.
    [210, 297, 150],
    [330.2, 482.6, 150],
    [105, 148, 301],
  ])(
    'has a page of %d x %d mm, and its pixels lie at %d an inch from its corner',
    async (width, length, ppi) => {
      const image = imageOn(width, length, ppi);
      const [page] = await readPdf((await written(image, 400)).pdf);
      expect(page?.width).toBeCloseTo(width, 3);
      expect(page?.height).toBeCloseTo(length, 3);
      const [placed] = page?.images ?? [];
      expect(placed?.pixels).toEqual({ width: image.width, height: image.height });
      expect(placed?.x).toBeCloseTo(0, 6);
      expect(placed?.y).toBeCloseTo(0, 6);
      expect(placed?.width).toBeCloseTo((image.width / ppi) * 25.4, 4);
      expect(placed?.height).toBeCloseTo((image.height / ppi) * 25.4, 4);
    },
  );

  it('holds the very pixels, colours and alpha apart', async () => {
    const image = imageOn(60, 30, 150);
    const { pixels, pdf } = await written(image, 7);
    const { context } = await PDFDocument.load(pdf);
    const planeOf = (space: string) => {
      const found = context
        .enumerateIndirectObjects()
        .map(([, object]) => object)
        .find(
          (object) =>
            object instanceof PDFRawStream && object.dict.get(PDFName.of('ColorSpace')) === PDFName.of(space),
        );
      if (!(found instanceof PDFRawStream)) throw new Error('no image');
      return new Uint8Array(inflateSync(found.contents));
    };
    const rgba = new Uint8Array(pixels.buffer);
    const colours = unfiltered(planeOf('DeviceRGB'), 3 * image.width);
    const alpha = unfiltered(planeOf('DeviceGray'), image.width);
    expect(
      Buffer.compare(
        alpha,
        rgba.filter((_, at) => at % 4 === 3),
      ),
    ).toBe(0);
    expect(
      Buffer.compare(
        colours,
        rgba.filter((_, at) => at % 4 !== 3),
      ),
    ).toBe(0);
  });

  it('is made of what fits a page and memory only', () => {
    expect(fitsPdf(imageOn(330, 480, 300))).toBe(true);
    expect(fitsPdf(imageOn(330, 5000, 150))).toBe(true);
    // ISO 32000-1, annex C: no side longer than 14,400 points, 5.08 m.
    expect(fitsPdf(imageOn(330, 5090, 150))).toBe(false);
    expect(fitsPdf(imageOn(330, 1400, 300))).toBe(false);
  });
});
