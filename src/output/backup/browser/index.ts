import type { Book, Settings } from '../../../model';
import type { Result } from '../../../units';
import { runAlone } from '../../../workers/browser';
import type { BundleProblem } from '..';
import type { Archivist, Packed, Unpacked } from './backup.worker';

const start = (): Worker => new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module' });

/**
 * Packs a book and its artwork into a file.
 * @throws {WorkerFailed} if the worker fails
 */
export const packBackup = (book: Book, artwork: readonly (readonly [string, Blob])[]): Promise<Packed> =>
  runAlone<Archivist, Packed>(start, (archivist) => archivist.pack(book, artwork));

/**
 * Reads and verifies a packed book and its artwork.
 * @param first the settings that a shop begins with, to stand in for those that cannot be read
 * @throws {WorkerFailed} if the worker fails
 */
export const unpackBackup = (file: Blob, first: Settings): Promise<Result<Unpacked, BundleProblem>> =>
  runAlone<Archivist, Result<Unpacked, BundleProblem>>(start, (archivist) => archivist.unpack(file, first));
