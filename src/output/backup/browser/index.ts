import { type Remote, wrap } from 'comlink';
import type { Archivist } from './backup.worker';

/** Packs and unpacks backups in a worker until it is closed. */
export function openArchivist(): { archivist: Remote<Archivist>; close(): void } {
  const worker = new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module' });
  return { archivist: wrap<Archivist>(worker), close: () => worker.terminate() };
}
