import { ok, type Result } from '../../units';
import { runTask } from '../../workers/browser';
import { artworkWorker, weigh } from './checker';
import type { ArtworkProblem, ReadArtwork } from './read-artwork';
import { readSvg } from './svg-image';

export type { CheckRequest } from './check-request';
export { type Checker, openChecker } from './checker';
export type { ArtworkProblem } from './read-artwork';

/** An image file that can be a transfer's artwork. */
export interface OpenedArtwork extends ReadArtwork {
  readonly fileName: string;
  readonly file: Blob;
}

const reader = artworkWorker();

const inWorker = (file: File): Promise<Result<ReadArtwork, ArtworkProblem>> =>
  runTask(reader, (remote): Promise<Result<ReadArtwork, ArtworkProblem>> => remote.read(file));

async function weighed(file: File): Promise<Result<ReadArtwork, ArtworkProblem>> {
  const weight = await weigh(reader, file);
  return weight.ok ? readSvg(file, weight.value) : weight;
}

const isSvg = (file: File): boolean => file.type === 'image/svg+xml' || /\.svg$/i.test(file.name);

/**
 * Reads an image file: size, density, trimmed box, thumbnail. The file itself is not changed.
 * @throws {WorkerFailed} if the worker that reads fails
 */
export async function openArtwork(file: File): Promise<Result<OpenedArtwork, ArtworkProblem>> {
  const read = await (isSvg(file) ? weighed(file) : inWorker(file));
  return read.ok ? ok({ ...read.value, fileName: file.name, file }) : read;
}
