import { transfer } from 'comlink';
import { closeWorker, runTask, taskWorker } from '../../workers/browser';
import type { Reader } from './reader.worker';

/** Reads codes in a worker. Either throws a `WorkerFailed` if it fails. */
export interface CodeReader {
  /** The text of the code in a frame of a film, whose pixels are handed over; `null` if none is found. */
  frame(image: ImageData): Promise<string | null>;
  /** The text of the code in a picture file; `null` if none is found, or it is no picture. */
  picture(file: Blob): Promise<string | null>;
  close(): void;
}

export function openReader(): CodeReader {
  const own = taskWorker<Reader>(
    () => new Worker(new URL('./reader.worker.ts', import.meta.url), { type: 'module' }),
  );
  return {
    frame: (image) => runTask(own, (reader) => reader.frame(transfer(image, [image.data.buffer]))),
    picture: (file) => runTask(own, (reader) => reader.picture(file)),
    close: () => closeWorker(own),
  };
}
