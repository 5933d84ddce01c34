import { expose, transfer } from 'comlink';
import { AnnotationMode } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { fail, ok, type Result } from '../../units';
import { sha256 } from '../../units/browser/sha256';
import { type FileFacts, type PixelBox, plainFacts } from '..';
import { contentsOf, inMetres, rasterOf, withPage } from '../pdf';
import { pageContext } from './pdf-worker/canvases';
import { type OpenPage, openPage, type PdfProblem } from './pdf-worker/open';
import { stepsOf } from './pdf-worker/steps';
import { type ArtworkProblem, type PdfPages, type ReadArtwork, thumbnailOf, trimOf } from './read-artwork';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Draws a box of the page on a clear ground, where the whole page has so many pixels. */
async function drawn({ page }: OpenPage, whole: Size, box: PixelBox): Promise<OffscreenCanvas> {
  const { width, height } = page.getViewport({ scale: 1 });
  const [across, down] = [whole.width / width, whole.height / height];
  const drawing = pageContext(box.width, box.height);
  await page.render({
    canvas: null,
    // The library takes any canvas's context; its types know that of a page alone.
    canvasContext: drawing as unknown as Parameters<typeof page.render>[0]['canvasContext'],
    viewport: page.getViewport({ scale: across }),
    transform: [1, 0, 0, down / across, -box.x, -box.y],
    background: 'transparent',
    annotationMode: AnnotationMode.DISABLE,
  }).promise;
  return drawing.canvas;
}

/** Opens the page that is the artwork, lets something be done with it, and lets go of it. */
async function withOpen<Value, Problem>(
  file: Blob,
  use: (open: OpenPage) => Promise<Result<Value, Problem>>,
): Promise<Result<Value, Problem | PdfProblem | 'not-whole'>> {
  const opened = await openPage(new Uint8Array(await file.arrayBuffer()));
  if (!opened.ok) return opened;
  try {
    const used = await use(opened.value);
    return opened.value.hasFailed() ? fail('not-whole') : used;
  } catch {
    return fail('not-whole');
  } finally {
    await opened.value.close();
  }
}

const reader = {
  /** Reads a page: its size, what of it prints, a thumbnail. @param page from 1; `null`: the one that the file notes */
  async read(file: Blob, page: number | null): Promise<Result<ReadArtwork & { file: Blob }, ArtworkProblem>> {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const own = page === null ? file : new Blob([withPage(bytes, page)], { type: 'application/pdf' });
    const id = await sha256(await own.arrayBuffer());
    return withOpen(own, async (open): Promise<Result<ReadArtwork & { file: Blob }, ArtworkProblem>> => {
      const points = open.page.getViewport({ scale: 1 });
      const pixels = rasterOf(points);
      if ((await stepsOf(open.page)).lacks) return fail('not-whole');
      const image = await drawn(open, pixels, { x: 0, y: 0, ...pixels });
      const trim = trimOf({ image, ...pixels });
      if (!trim) return fail('blank');
      const metres = inMetres(points);
      return ok({
        id,
        kind: 'pdf',
        pixels,
        density: { x: pixels.width / metres.width, y: pixels.height / metres.height },
        trim,
        thumbnail: await thumbnailOf({ image, ...pixels }, trim),
        page: { number: open.number, of: open.pages },
        file: own,
      });
    });
  },

  /** Which of how many pages is the artwork; `null` where it cannot be opened. */
  async pages(file: Blob): Promise<PdfPages | null> {
    const found = await withOpen(file, async ({ number, pages }) => ok({ number, of: pages }));
    return found.ok ? found.value : null;
  },

  /** What a page lacks that it asks for, and how coarse its images are. */
  async facts(file: Blob): Promise<FileFacts | null> {
    const facts = await withOpen(file, async ({ page }) => {
      const { steps } = await stepsOf(page);
      const { fonts, coarsest } = contentsOf(steps, page.userUnit);
      const { width } = page.getViewport({ scale: 1 });
      return ok({ ...plainFacts, fonts, embedded: coarsest === null ? null : coarsest * width });
    });
    return facts.ok ? facts.value : null;
  },

  /** Rows of a box of the page, where the whole page has so many pixels; `null` where it cannot be drawn. */
  async draw(file: Blob, whole: Size, box: PixelBox): Promise<ImageBitmap | null> {
    const image = await withOpen(file, async (open) => ok(await drawn(open, whole, box)));
    if (!image.ok) return null;
    const bitmap = image.value.transferToImageBitmap();
    return transfer(bitmap, [bitmap]);
  },
};

export type PdfReader = typeof reader;

expose(reader);
