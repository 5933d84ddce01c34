/// <reference path="./pdfjs-worker.d.ts" />
import { getDocument, type PDFPageProxy, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { WorkerMessageHandler } from 'pdfjs-dist/legacy/build/pdf.worker.mjs';
import { fail, ok, type Result } from '../../../units';
import { MOST_PIXELS } from '../../most-pixels';
import { chosenPage } from '../../pdf';
import { Canvases, Masks } from './canvases';

/** `locked`: it opens with a password only. `no-page`: it has no page of the number that is the artwork. */
export type PdfProblem = 'broken' | 'locked' | 'no-page';

/** A page of a PDF, and which of how many it is. */
export interface OpenPage {
  readonly page: PDFPageProxy;
  readonly number: number;
  readonly pages: number;
  /** Whether something of it could not be read, once it is drawn. */
  hasFailed(): boolean;
  close(): Promise<void>;
}

/** How the library's messages tell that what is drawn of a page ends in an error. */
const STREAM_FAILED = 5;

/**
 * The part of the library that reads, which works in the same thread as the part that draws. An error on a page is listened for
 * between the two: what was read up to it is drawn all the same, as if the page ended there.
 */
function readingPart() {
  const { port1, port2 } = new MessageChannel();
  let failed = false;
  port1.addEventListener('message', ({ data }) => {
    if (data?.stream === STREAM_FAILED) failed = true;
  });
  const reading = new PDFWorker({ port: port1 as unknown as null, verbosity: 0 });
  WorkerMessageHandler.initializeFromPort(port2);
  port1.start();
  port2.start();
  const close = () => {
    reading.destroy();
    port1.close();
  };
  return { reading, close, hasFailed: () => failed };
}

const problemOf = (error: unknown): PdfProblem =>
  error instanceof Error && error.name === 'PasswordException' ? 'locked' : 'broken';

/**
 * Opens the page of a PDF that is the artwork. Nothing in the file is run, no form and no note is drawn, and nothing is fetched
 * for it; what cannot be read whole is an error, not passed over.
 */
export async function openPage(bytes: Uint8Array): Promise<Result<OpenPage, PdfProblem>> {
  const number = chosenPage(bytes);
  const { reading, hasFailed, close: closeReading } = readingPart();
  const task = getDocument({
    data: bytes,
    worker: reading,
    verbosity: 0,
    stopAtErrors: true,
    isEvalSupported: false,
    enableXfa: false,
    // The policy of the page allows no WebAssembly; what only that decodes is refused.
    useWasm: false,
    useWorkerFetch: false,
    useSystemFonts: false,
    // Letters are drawn as the paths that they are in the file.
    disableFontFace: true,
    isImageDecoderSupported: false,
    maxImageSize: MOST_PIXELS,
    CanvasFactory: Canvases,
    FilterFactory: Masks,
  });
  const close = async () => {
    await task.destroy();
    closeReading();
  };
  try {
    const file = await task.promise;
    const pages = file.numPages;
    if (number > pages) {
      await close();
      return fail('no-page');
    }
    return ok({ page: await file.getPage(number), number, pages, hasFailed, close });
  } catch (error) {
    await close().catch(() => undefined);
    return fail(problemOf(error));
  }
}
