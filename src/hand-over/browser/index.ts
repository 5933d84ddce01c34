import { type Remote, wrap } from 'comlink';
import type { Reader } from './reader.worker';

export { type CameraProblem, isFacing, openCamera, watchCodes } from './camera';

export type CodeReader = Remote<Reader>;

/** Reads codes in a worker until it is closed. */
export function openReader(): { reader: CodeReader; close(): void } {
  const worker = new Worker(new URL('./reader.worker.ts', import.meta.url), { type: 'module' });
  return { reader: wrap<Reader>(worker), close: () => worker.terminate() };
}
