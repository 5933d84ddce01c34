import { runTask, taskWorker } from '../../workers/browser';
import type { TableReading, TableWays } from '..';
import type { TableReader } from './table.worker';

const reader = taskWorker<TableReader>(
  () => new Worker(new URL('./table.worker.ts', import.meta.url), { type: 'module' }),
);

/**
 * Reads a table in a worker, as `readTable` does.
 * @param onProgress is told how much of a long one is read, from 0 to 1
 * @throws {WorkerFailed} if the worker fails; the signal's reason if it is stopped
 */
export const readTableApart = (
  text: string,
  ways: TableWays,
  signal: AbortSignal,
  onProgress: (share: number) => void,
): Promise<TableReading> =>
  runTask<TableReader, TableReading, number>(reader, (remote, told) => remote.read(text, ways, told), {
    signal,
    onProgress,
  });
