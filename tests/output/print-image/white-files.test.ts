import { inflateSync } from 'node:zlib';
import { PDFArray, PDFDict, PDFDocument, PDFName, PDFNumber, PDFRawStream, PDFString } from '@cantoo/pdf-lib';
import { PNG } from 'pngjs';
import { decode } from 'tiff';
import { describe, expect, it } from 'vitest';
import { isSpotName, type PrintImage } from '../../../src/output/print-image';
import { createPdfWriter } from '../../../src/output/print-image/browser/image-worker/pdf-writer';
import {
  createPngWriter,
  type StripWriter,
} from '../../../src/output/print-image/browser/image-worker/png-writer';
import type { Sink } from '../../../src/output/print-image/browser/image-worker/sink';
import { createTiffWriter } from '../../../src/output/print-image/browser/image-worker/tiff-writer';
import {
  createWhiteWriter,
  together,
} from '../../../src/output/print-image/browser/image-worker/white-writer';
import { fromMm, um } from '../../../src/units';
import { readPdf } from '../read-pdf';

const INCH = 25.4;
const PPI = 300;
const CHOKE = fromMm(0.2);

/** Discs and bars of several colours, one of them half as opaque, on so many millimetres. */
function drawn(width: number, height: number) {
  const [across, down] = [width, height].map((side) => Math.round((side * PPI) / INCH)) as [number, number];
  const pixel = INCH / PPI;
  const pixels = Uint32Array.from({ length: across * down }, (_, at) => {
    const [x, y] = [((at % across) + 0.5) * pixel, (Math.floor(at / across) + 0.5) * pixel];
    const near = Math.hypot((x % 12) - 6, (y % 12) - 6) - 4.5;
    const share = Math.min(1, Math.max(0, 0.5 - near / pixel));
    const alpha = Math.round(255 * share * (x > 24 ? 0.5 : 1));
    return alpha === 0
      ? 0
      : ((alpha << 24) | (Math.floor(y * 9) << 16) | (Math.floor(x * 6) << 8) | 40) >>> 0;
  });
  const image = {
    width: across,
    height: down,
    ppi: PPI,
    film: { width: um((across * 1000 * INCH) / PPI), length: um((down * 1000 * INCH) / PPI) },
  } as PrintImage;
  return { image, pixels, rgba: new Uint8Array(pixels.buffer) };
}

/** A file in memory. */
function memory(): Sink & { bytes: Uint8Array<ArrayBuffer>; state: 'open' | 'closed' | 'abandoned' } {
  return {
    bytes: new Uint8Array(),
    state: 'open',
    async write(more) {
      this.bytes = new Uint8Array(Buffer.concat([this.bytes, more]));
    },
    async rewrite(over, at) {
      this.bytes.set(over, at);
    },
    async close() {
      this.state = 'closed';
    },
    async abandon() {
      this.state = 'abandoned';
    },
  };
}

/** Writes an image in strips of some rows. */
async function write(writer: StripWriter, { image, pixels }: ReturnType<typeof drawn>, rows: number) {
  for (let from = 0; from < pixels.length; from += rows * image.width) {
    await writer.strip(pixels.slice(from, from + rows * image.width));
  }
  await writer.finish();
}

async function whitePng(of: ReturnType<typeof drawn>, rows = 57) {
  const sink = memory();
  await write(await createWhiteWriter(of.image, sink, CHOKE), of, rows);
  expect(sink.state).toBe('closed');
  return sink.bytes;
}

/** The grey of a PNG, by the decoder of others. */
const greyOf = (png: Uint8Array) => {
  const { data, width, height } = PNG.sync.read(Buffer.from(png));
  return { grey: new Uint8Array(data).filter((_, at) => at % 4 === 0), width, height };
};

describe('the white beside a PNG', () => {
  it('is grey, of the same size and density, and full, half full or empty where it should be', async () => {
    const of = drawn(36, 24);
    const png = await whitePng(of);
    const { grey, width, height } = greyOf(png);
    expect([width, height]).toEqual([of.image.width, of.image.height]);
    // Eight bits of grey, not interlaced; 300 ppi are 11,811 pixels a metre.
    expect(Array.from(png.subarray(24, 29))).toEqual([8, 0, 0, 0, 0]);
    const text = Buffer.from(png).toString('latin1');
    const density = new DataView(png.buffer).getUint32(text.indexOf('pHYs') + 4);
    expect(density).toBe(11_811);
    expect(text).not.toContain('sRGB');
    const at = (x: number, y: number) =>
      grey[Math.round((y * PPI) / INCH) * width + Math.round((x * PPI) / INCH)];
    expect([at(6, 6), at(18, 6), at(30, 6), at(12, 12)]).toEqual([255, 255, 128, 0]);
    // Within the disc, 0.1 mm from its edge, and 0.3 mm.
    expect([at(6 + 4.4, 6), at(6 + 4.15, 6)]).toEqual([0, 255]);
    // Closed form: four discs whose radius is less by the choke, and two of them half as dense.
    const area = grey.reduce((sum, value) => sum + value / 255, 0) * (INCH / PPI) ** 2;
    expect(Math.abs(area - 5 * Math.PI * 4.3 ** 2)).toBeLessThan(5 * 2 * Math.PI * 4.3 * 0.02);
  });

  it('is written with the image, and given up with it', async () => {
    const of = drawn(12, 12);
    const [png, white] = [memory(), memory()];
    const writer = together(
      await createPngWriter(of.image, png),
      await createWhiteWriter(of.image, white, CHOKE),
    );
    await write(writer, of, 20);
    expect(Buffer.from(white.bytes).equals(Buffer.from(await whitePng(of, 20)))).toBe(true);
    expect(new Uint8Array(PNG.sync.read(Buffer.from(png.bytes)).data)).toEqual(of.rgba);
    await writer.abandon();
    expect([png.state, white.state]).toEqual(['abandoned', 'abandoned']);
  });
});

describe('the white in a TIFF', () => {
  it.each([1, 40, 1000])(
    'is an extra channel that another reader finds, in strips of %i rows',
    async (rows) => {
      const of = drawn(36, 24);
      const sink = memory();
      await write(await createTiffWriter(of.image, sink, { choke: CHOKE, name: 'White' }), of, rows);
      expect(sink.state).toBe('closed');
      const [read] = decode(sink.bytes);
      if (!read) throw new Error('no image');
      expect([read.width, read.height, read.samplesPerPixel]).toEqual([of.image.width, of.image.height, 5]);
      expect([read.xResolution, read.yResolution, read.resolutionUnit]).toEqual([300, 300, 2]);
      expect([read.type, read.compression, read.planarConfiguration]).toEqual([2, 8, 1]);
      expect(read.imageDescription).toBe('Extra sample 1: alpha; 2: White, 255 = full');
      // ExtraSamples (TIFF 6.0, section 18): alpha that is not multiplied, and one without a meaning known to it.
      expect(Array.from(read.fields.get(338))).toEqual([2, 0]);
      const icc = Buffer.from(read.fields.get(34_675));
      expect(icc.toString('latin1', 36, 40)).toBe('acsp');
      const data = new Uint8Array(read.data);
      expect(
        Buffer.compare(
          data.filter((_, at) => at % 5 !== 4),
          of.rgba,
        ),
      ).toBe(0);
      expect(
        Buffer.compare(
          data.filter((_, at) => at % 5 === 4),
          greyOf(await whitePng(of)).grey,
        ),
      ).toBe(0);
    },
  );

  it('is not there unless it is asked for', async () => {
    const of = drawn(12, 12);
    const sink = memory();
    await write(await createTiffWriter(of.image, sink, null), of, 33);
    const [read] = decode(sink.bytes);
    expect(read?.samplesPerPixel).toBe(4);
    expect(Buffer.compare(new Uint8Array(read?.data ?? []), of.rgba)).toBe(0);
  });
});

/** The rows of a PDF's image, without their filters (ISO 32000-2, 7.4.4.4). */
function rowsOf(stream: PDFRawStream, width: number): Uint8Array {
  const bytes = new Uint8Array(inflateSync(stream.contents));
  const plain = new Uint8Array((bytes.length / (width + 1)) * width);
  for (let at = 0; at < plain.length; at += 1) {
    const row = Math.floor(at / width);
    plain[at] = (bytes[at + row + 1] ?? 0) + (row === 0 ? 0 : (plain[at - width] ?? 0));
  }
  return plain;
}

describe('the white in a PDF', () => {
  const pdfOf = async (of: ReturnType<typeof drawn>, name: string | null) => {
    const sink = memory();
    await write(
      await createPdfWriter(of.image, sink, 'Run 1', name === null ? null : { choke: CHOKE, name }),
      of,
      64,
    );
    return sink.bytes;
  };
  const partsOf = async (pdf: Uint8Array) => {
    const { context, catalog } = await PDFDocument.load(pdf);
    const objects = context.enumerateIndirectObjects().map(([, object]) => object);
    const images = objects.filter(
      (object): object is PDFRawStream =>
        object instanceof PDFRawStream && object.dict.get(PDFName.of('Subtype')) === PDFName.of('Image'),
    );
    const spaceOf = (image: PDFRawStream) => context.lookup(image.dict.get(PDFName.of('ColorSpace')));
    return { context, catalog, images, spaceOf };
  };

  it.each(['White', 'RIP White 2', 'W#1 (under)'])(
    'is a spot colour called %s, whose tint is its coverage',
    async (name) => {
      const of = drawn(36, 24);
      const { context, images, spaceOf } = await partsOf(await pdfOf(of, name));
      expect(images).toHaveLength(3);
      const white = images.find((image) => spaceOf(image) instanceof PDFArray);
      if (!white) throw new Error('no spot colour');
      const space = spaceOf(white);
      if (!(space instanceof PDFArray)) throw new Error('no space');
      expect(space.lookup(0)).toBe(PDFName.of('Separation'));
      expect(space.lookup(1, PDFName).decodeText()).toBe(name);
      const tint = space.lookup(3, PDFDict);
      expect(tint.lookup(PDFName.of('FunctionType'), PDFNumber).asNumber()).toBe(2);
      expect(Buffer.compare(rowsOf(white, of.image.width), greyOf(await whitePng(of)).grey)).toBe(0);
      const overprints = context
        .enumerateIndirectObjects()
        .map(([, object]) => object)
        .filter((object) => object instanceof PDFDict && object.get(PDFName.of('op'))?.toString() === 'true');
      expect(
        overprints.map((state) => state instanceof PDFDict && state.get(PDFName.of('BM'))?.toString()),
      ).toEqual(['/Multiply']);
    },
  );

  it('lies where the colours lie, by another reader', async () => {
    const of = drawn(36, 24);
    const [page] = await readPdf(await pdfOf(of, 'White'));
    expect(page?.images).toHaveLength(2);
    const [colours, white] = page?.images ?? [];
    expect(white).toEqual(colours);
    expect(white?.width).toBeCloseTo((of.image.width / PPI) * INCH, 3);
  });

  it('is not there unless it is asked for', async () => {
    const { images } = await partsOf(await pdfOf(drawn(12, 12), null));
    expect(images).toHaveLength(2);
  });

  it.each([null, 'White'])('comes with colours that are said to be sRGB (white: %s)', async (name) => {
    const { catalog, context } = await partsOf(await pdfOf(drawn(12, 12), name));
    // ISO 32000-2, 14.11.5.
    const intent = catalog.lookup(PDFName.of('OutputIntents'), PDFArray).lookup(0, PDFDict);
    expect(intent.lookup(PDFName.of('OutputConditionIdentifier'), PDFString).asString()).toBe(
      'sRGB IEC61966-2.1',
    );
    const profile = context.lookup(intent.get(PDFName.of('DestOutputProfile')));
    if (!(profile instanceof PDFRawStream)) throw new Error('no profile');
    expect(profile.dict.lookup(PDFName.of('N'), PDFNumber).asNumber()).toBe(3);
    const icc = Buffer.from(inflateSync(profile.contents));
    expect([icc.length, icc.toString('latin1', 16, 20), icc.toString('latin1', 36, 40)]).toEqual([
      icc.readUInt32BE(0),
      'RGB ',
      'acsp',
    ]);
  });
});

describe('the name of a spot colour', () => {
  it.each(['White', 'White_1', 'RIP White 2', 'w', 'W#1 (under)'])('can be %s', (name) =>
    expect(isSpotName(name)).toBe(true),
  );
  it.each(['', ' White', 'White ', 'Blanco ñ', 'All', 'none', 'CYAN', 'x'.repeat(61), 'a\nb'])(
    'cannot be %j',
    (name) => expect(isSpotName(name)).toBe(false),
  );
});
