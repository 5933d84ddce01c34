import { degrees, PDFDocument, PDFName, PDFNumber, StandardFonts } from '@cantoo/pdf-lib';
import * as fc from 'fast-check';
import { PNG } from 'pngjs';
import { afterEach, describe, expect, it } from 'vitest';
import { type OpenPage, openPage } from '../../src/artwork/browser/pdf-worker/open';
import { stepsOf } from '../../src/artwork/browser/pdf-worker/steps';
import { isPostScript, layeredFormat } from '../../src/artwork/other-format';
import { chosenPage, contentsOf, inMetres, isPdf, rasterOf, withPage } from '../../src/artwork/pdf';

/** PDFs are written here by a library that shares nothing with the one that reads them. */
interface PageOf {
  readonly media: readonly [number, number, number, number];
  readonly crop?: readonly [number, number, number, number];
  readonly rotate?: number;
  readonly userUnit?: number;
}

async function fileOf(pages: readonly PageOf[]): Promise<Uint8Array> {
  const file = await PDFDocument.create();
  for (const { media, crop, rotate, userUnit } of pages) {
    const page = file.addPage();
    page.setMediaBox(media[0], media[1], media[2] - media[0], media[3] - media[1]);
    if (crop) page.setCropBox(crop[0], crop[1], crop[2] - crop[0], crop[3] - crop[1]);
    if (rotate !== undefined) page.setRotation(degrees(rotate));
    if (userUnit !== undefined) page.node.set(PDFName.of('UserUnit'), PDFNumber.of(userUnit));
  }
  return file.save();
}

const open: OpenPage[] = [];
afterEach(async () => {
  for (const each of open.splice(0)) await each.close();
});

async function opened(bytes: Uint8Array): Promise<OpenPage> {
  const page = await openPage(bytes.slice());
  if (!page.ok) throw new Error(page.problem);
  open.push(page.value);
  return page.value;
}

const millimetres = async (bytes: Uint8Array): Promise<[number, number]> => {
  const { width, height } = inMetres((await opened(bytes)).page.getViewport({ scale: 1 }));
  return [width * 1000, height * 1000];
};

const MM = 25.4 / 72;

describe('the size of a page', () => {
  const A4: PageOf['media'] = [0, 0, 595.276, 841.89];
  it.each<[string, PageOf, [number, number]]>([
    ['is that of its media box, A4 by ISO 216', { media: A4 }, [210, 297]],
    [
      'is that of its crop box (ISO 32000-2, 14.11.2.1)',
      { media: A4, crop: [100, 100, 172, 136] },
      [25.4, 12.7],
    ],
    [
      'ends where the media box does (14.11.2.1)',
      { media: [0, 0, 72, 72], crop: [36, 0, 200, 72] },
      [12.7, 25.4],
    ],
    ['begins anywhere', { media: [-36, -72, 36, 72] }, [25.4, 50.8]],
    ['lies on its side when turned by 90 (7.7.3.3)', { media: [0, 0, 144, 72], rotate: 90 }, [25.4, 50.8]],
    ['stays when turned by 180', { media: [0, 0, 144, 72], rotate: 180 }, [50.8, 25.4]],
    ['is in units of its own (8.3.2.3)', { media: [0, 0, 72, 36], userUnit: 10 }, [254, 127]],
  ])('%s', async (_, page, [width, height]) => {
    const found = await millimetres(await fileOf([page]));
    expect(found[0]).toBeCloseTo(width, 2);
    expect(found[1]).toBeCloseTo(height, 2);
  });

  it('follows boxes, turn and unit of any page', async () => {
    const side = fc.integer({ min: 10, max: 3000 });
    const corner = fc.integer({ min: -500, max: 500 });
    await fc.assert(
      fc.asyncProperty(
        fc.record({ x: corner, y: corner, width: side, height: side }),
        fc.option(
          fc.tuple(
            fc.integer({ min: 0, max: 50 }).map((part) => part / 100),
            fc.integer({ min: 60, max: 100 }).map((part) => part / 100),
          ),
        ),
        fc.constantFrom(0, 90, 180, 270, -90, 450),
        fc.constantFrom(undefined, 0.5, 1, 3),
        async ({ x, y, width, height }, share, rotate, userUnit) => {
          const media = [x, y, x + width, y + height] as const;
          const crop = share
            ? ([
                x + share[0] * width,
                y + share[0] * height,
                x + share[1] * width,
                y + share[1] * height,
              ] as const)
            : undefined;
          const part = share ? share[1] - share[0] : 1;
          const sides = [width * part, height * part].map((points) => points * MM * (userUnit ?? 1));
          const wanted = rotate % 180 === 0 ? sides : sides.toReversed();
          const page = { media, rotate, ...(crop && { crop }), ...(userUnit && { userUnit }) };
          const found = await millimetres(await fileOf([page]));
          expect(found[0]).toBeCloseTo(wanted[0] as number, 3);
          expect(found[1]).toBeCloseTo(wanted[1] as number, 3);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('is looked at in printed pixels, and in no more than a canvas takes', () => {
    expect(rasterOf({ width: 720, height: 576 })).toEqual({ width: 3000, height: 2400 });
    expect(rasterOf({ width: 72, height: 36 })).toEqual({ width: 1600, height: 800 });
    const huge = rasterOf({ width: 14400, height: 7200 });
    expect(huge.width * huge.height).toBeLessThanOrEqual(16_010_000);
    expect(huge.width / huge.height).toBeCloseTo(2, 2);
  });
});

describe('the page that is the artwork', () => {
  it('is the first, or the one that is noted; the first leaves the file as it was', async () => {
    const file = await fileOf([{ media: [0, 0, 72, 72] }, { media: [0, 0, 144, 72] }]);
    const second = withPage(file, 2);
    expect(isPdf(second)).toBe(true);
    expect([chosenPage(file), chosenPage(second), chosenPage(withPage(second, 1))]).toEqual([1, 2, 1]);
    expect(withPage(second, 1)).toEqual(new Uint8Array(file));
    expect((await millimetres(second))[0]).toBeCloseTo(50.8, 3);
    const { number, pages } = await opened(second);
    expect({ number, pages }).toEqual({ number: 2, pages: 2 });
  });

  it.each<[string, (file: Uint8Array) => Uint8Array, string]>([
    ['that is not there', (file) => withPage(file, 3), 'no-page'],
    ['of a file that is cut off', (file) => file.subarray(0, 60), 'broken'],
  ])('%s is refused', async (_, change, problem) => {
    const file = change(await fileOf([{ media: [0, 0, 72, 72] }]));
    expect(await openPage(file.slice())).toEqual({ ok: false, problem });
  });

  it('is refused behind a password', async () => {
    const file = await PDFDocument.create();
    file.addPage([72, 72]);
    file.encrypt({ userPassword: 'harbour', ownerPassword: 'rowing' });
    expect(await openPage((await file.save()).slice())).toEqual({ ok: false, problem: 'locked' });
  });
});

describe('what a page draws', () => {
  async function contents(draw: (file: PDFDocument) => Promise<void>) {
    const file = await PDFDocument.create();
    await draw(file);
    const { page, hasFailed } = await opened(await file.save());
    const { steps, lacks } = await stepsOf(page);
    return { ...contentsOf(steps, page.userUnit), lacks, failed: hasFailed() };
  }
  const picture = (side: number) => {
    const png = new PNG({ width: side, height: side });
    png.data.fill(200);
    return PNG.sync.write(png);
  };

  it('tells the coarsest of its images, however its system is turned and scaled', async () => {
    const found = await contents(async (file) => {
      const page = file.addPage([400, 400]);
      const image = await file.embedPng(picture(100));
      page.drawImage(image, { x: 10, y: 10, width: 24, height: 24 });
      page.drawImage(image, { x: 200, y: 100, width: 72, height: 36, rotate: degrees(30) });
    });
    // 100 pixels on an inch across, 200 down.
    expect((found.coarsest ?? 0) * 72).toBeCloseTo(100, 3);
    expect(found).toMatchObject({ fonts: [], lacks: false, failed: false });
  });

  it('names fonts that are not in the file', async () => {
    const found = await contents(async (file) => {
      const page = file.addPage([200, 200]);
      page.drawText('Club', { font: await file.embedFont(StandardFonts.CourierBold), size: 12 });
    });
    expect(found.fonts).toEqual(['Courier-Bold']);
  });

  it('is told to be incomplete where something that it draws by is damaged', async () => {
    const found = await contents(async (file) => {
      const page = file.addPage([200, 200]);
      page.node.setExtGState(PDFName.of('Odd'), file.context.register(file.context.obj([])));
      const drawing = file.context.stream('q /Odd gs 0 0 50 50 re f Q');
      page.node.addContentStream(file.context.register(drawing));
    });
    expect(found.failed).toBe(true);
  });

  it('is told to be incomplete where an image cannot be decoded', async () => {
    const found = await contents(async (file) => {
      const page = file.addPage([200, 200]);
      const image = file.context.stream(new Uint8Array([1, 2, 3]), {
        Type: 'XObject',
        Subtype: 'Image',
        Width: 8,
        Height: 8,
        BitsPerComponent: 8,
        ColorSpace: 'DeviceRGB',
        Filter: 'JPXDecode',
      });
      page.node.setXObject(PDFName.of('Pic'), file.context.register(image));
      const drawing = file.context.stream('q 50 0 0 50 0 0 cm /Pic Do Q');
      page.node.addContentStream(file.context.register(drawing));
    });
    expect(found.lacks || found.failed).toBe(true);
  });

  it('leaves text alone that is not seen (ISO 32000-2, table 104)', () => {
    const text = [{ kind: 'font', missing: 'ABCDEF+Odd' }, { kind: 'text' }] as const;
    expect(contentsOf([{ kind: 'text-mode', mode: 3 }, ...text]).fonts).toEqual([]);
    expect(contentsOf(text).fonts).toEqual(['Odd']);
  });
});

describe('files of other formats', () => {
  it.each([
    ['8BPS\0\u0001', 'layers', false],
    // The large kind, of 64-bit lengths.
    ['8BPS\0\u0002', 'other', false],
    ['gimp xcf v011', 'other', false],
    ['II*\0', 'tiff', false],
    ['MM\0*', 'tiff', false],
    ['%!PS-Adobe-3.0 EPSF-3.0', null, true],
    ['GIF89a', null, false],
  ])('%j is told for what it is', (head, layered, postScript) => {
    const bytes = Uint8Array.from(head, (sign) => sign.charCodeAt(0));
    expect([layeredFormat(bytes), isPostScript(bytes)]).toEqual([layered, postScript]);
  });
});
