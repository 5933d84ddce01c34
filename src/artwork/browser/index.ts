import type { Remote } from 'comlink';
import { ok, type Result } from '../../units';
import { runAlone, runTask } from '../../workers/browser';
import { layeredFormat } from '../other-format';
import { isPdf } from '../pdf';
import { artworkWorker, weigh } from './checker';
import type { Flattener } from './layered.worker';
import { readPdf } from './pdf-image';
import type { ArtworkProblem, ReadArtwork } from './read-artwork';
import { readSvg } from './svg-image';

export type { CheckRequest } from './check-request';
export { type Checker, openChecker } from './checker';
export { drawnAs } from './drawings';
export { pdfPages } from './pdf-image';
export type { ArtworkProblem, PdfPages } from './read-artwork';

/** An image file that can be a transfer's artwork. */
export interface OpenedArtwork extends ReadArtwork {
  readonly fileName: string;
  readonly file: Blob;
}

const reader = artworkWorker();

const inWorker = (file: Blob): Promise<Result<ReadArtwork, ArtworkProblem>> =>
  runTask(reader, (remote): Promise<Result<ReadArtwork, ArtworkProblem>> => remote.read(file));

async function weighed(file: File): Promise<Result<ReadArtwork, ArtworkProblem>> {
  const weight = await weigh(reader, file);
  return weight.ok ? readSvg(file, weight.value) : weight;
}

/** Bytes by which a file is told to be a PDF, or of layers. */
const HEAD = 1024;

const headOf = async (file: File): Promise<Uint8Array> =>
  new Uint8Array(
    await file
      .slice(0, HEAD)
      .arrayBuffer()
      .catch(() => new ArrayBuffer(0)),
  );

/** The worker, and what reads layers, are fetched when the first such file comes in. */
const flatten = (file: File): Promise<Result<Blob, ArtworkProblem>> =>
  runAlone(
    () => new Worker(new URL('./layered.worker.ts', import.meta.url), { type: 'module' }),
    (remote: Remote<Flattener>): Promise<Result<Blob, ArtworkProblem>> => remote.flatten(file),
  );

const isSvg = (file: File): boolean => file.type === 'image/svg+xml' || /\.svg$/i.test(file.name);

/**
 * Reads an image file: size, density, trimmed box, thumbnail. The file itself is not changed; of one in layers, or a TIFF, the picture
 * is kept as a PNG.
 * @param page of a PDF, from 1; the one that it notes, or its first, where none is given
 * @throws {WorkerFailed} if the worker that reads fails
 */
export async function openArtwork(
  file: File,
  page: number | null = null,
): Promise<Result<OpenedArtwork, ArtworkProblem>> {
  const head = await headOf(file);
  if (isPdf(head)) {
    const read = await readPdf(file, page);
    return read.ok ? ok({ ...read.value, fileName: file.name }) : read;
  }
  if (layeredFormat(head)) {
    const flat = await flatten(file);
    if (!flat.ok) return flat;
    const read = await inWorker(flat.value);
    return read.ok ? ok({ ...read.value, fileName: file.name, file: flat.value }) : read;
  }
  const read = await (isSvg(file) ? weighed(file) : inWorker(file));
  return read.ok ? ok({ ...read.value, fileName: file.name, file }) : read;
}
