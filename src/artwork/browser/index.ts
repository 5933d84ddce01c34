import { type Remote, wrap } from 'comlink';
import { ok, type Result } from '../../units';
import type { ArtworkProblem, ArtworkReader, ReadArtwork } from './artwork.worker';

export type { ArtworkProblem } from './artwork.worker';

/** An image file that can be a transfer's artwork. */
export interface OpenedArtwork extends ReadArtwork {
  readonly fileName: string;
  readonly file: Blob;
}

let reader: Remote<ArtworkReader> | null = null;

/** Reads an image file in a worker: size, density, trimmed box, thumbnail. The file itself is not changed. */
export async function openArtwork(file: File): Promise<Result<OpenedArtwork, ArtworkProblem>> {
  reader ??= wrap<ArtworkReader>(
    new Worker(new URL('./artwork.worker.ts', import.meta.url), { type: 'module' }),
  );
  const read = await reader.read(file);
  return read.ok ? ok({ ...read.value, fileName: file.name, file }) : read;
}
