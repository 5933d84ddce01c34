import { fail, type Result } from '../../units';
import { runTask, taskWorker, WorkerFailed } from '../../workers/browser';
import type { FileFacts, PixelBox } from '..';
import type { PdfReader } from './pdf.worker';
import type { ArtworkProblem, PdfPages, ReadArtwork } from './read-artwork';

/** How long a page may be drawn, in milliseconds: what takes longer would not end in a print either. */
const LONGEST = 20_000;
/** The worker, and what reads PDF, are fetched when the first PDF comes in, in time that is not counted. */
const STARTING = 20_000;

interface Size {
  readonly width: number;
  readonly height: number;
}

const own = taskWorker<PdfReader>(
  () => new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module' }),
);

const inTime = (signal?: AbortSignal): AbortSignal =>
  AbortSignal.any([...(signal ? [signal] : []), AbortSignal.timeout(LONGEST + STARTING)]);

/**
 * Reads a page of a PDF as artwork.
 * @param page from 1; `null`: the one that the file notes, or its first
 * @returns the file too, with the page noted in it
 * @throws {WorkerFailed} if the worker that reads fails
 */
export async function readPdf(
  file: Blob,
  page: number | null,
): Promise<Result<ReadArtwork & { readonly file: Blob }, ArtworkProblem>> {
  try {
    return await runTask(
      own,
      (remote): Promise<Result<ReadArtwork & { file: Blob }, ArtworkProblem>> => remote.read(file, page),
      { signal: inTime() },
    );
  } catch (error) {
    if (error instanceof WorkerFailed) throw error;
    return fail('too-slow');
  }
}

/** Which of how many pages of a PDF is the artwork; `null` where it cannot be opened. */
export const pdfPages = (file: Blob): Promise<PdfPages | null> =>
  runTask(own, (remote): Promise<PdfPages | null> => remote.pages(file), { signal: inTime() });

/** What a page of a PDF says of itself that changes how it prints; `null` where it cannot be read. */
export const pdfFacts = (file: Blob, signal: AbortSignal): Promise<FileFacts | null> =>
  runTask(own, (remote): Promise<FileFacts | null> => remote.facts(file), { signal: inTime(signal) });

/**
 * Draws a box of a page.
 * @param whole the pixels of the whole page
 * @returns `null` if it cannot be drawn, or not in time
 * @throws the signal's reason, if it is aborted
 */
export async function drawPage(
  file: Blob,
  whole: Size,
  box: PixelBox,
  signal?: AbortSignal,
): Promise<ImageBitmap | null> {
  try {
    return await runTask(own, (remote): Promise<ImageBitmap | null> => remote.draw(file, whole, box), {
      signal: inTime(signal),
    });
  } catch (error) {
    signal?.throwIfAborted();
    if (error instanceof WorkerFailed) throw error;
    return null;
  }
}

/** Draws the trimmed box of a page at a size, as {@link drawPage} does. @param pixels the raster that the box was found in */
export function drawPdf(
  file: Blob,
  pixels: Size,
  trim: PixelBox,
  { width, height }: Size,
  signal?: AbortSignal,
): Promise<ImageBitmap | null> {
  const [across, down] = [width / trim.width, height / trim.height];
  const whole = { width: pixels.width * across, height: pixels.height * down };
  return drawPage(file, whole, { x: trim.x * across, y: trim.y * down, width, height }, signal);
}
