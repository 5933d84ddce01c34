import { proxy } from 'comlink';
import type { Result } from '../../../units';
import { runAlone } from '../../../workers/browser';
import { drawnBands } from './drawn-band';
import type { ImageJob, ImageProblem, Printer } from './image-worker/job';

export type { ImageProblem, ImageSource, ImageTarget, WhiteChoice } from './image-worker/job';
export { hasPrivateFiles, openPrivateFolder, sweepPrivateFiles } from './private-files';

/**
 * Writes print-ready images in a worker of their own.
 * @param signal stops it; what was begun is not left behind, which the worker itself sees to
 * @throws {WorkerFailed} if the worker fails
 */
export const writeImages = (
  job: ImageJob,
  signal: AbortSignal,
  onProgress: (share: number) => void,
): Promise<Result<void, ImageProblem>> =>
  runAlone<Printer, Result<void, ImageProblem>, number>(
    () => new Worker(new URL('./print-image.worker.ts', import.meta.url), { type: 'module' }),
    async (printer, told) => {
      const stop = () => void printer.stop();
      if (signal.aborted) stop();
      signal.addEventListener('abort', stop);
      try {
        return await printer.write(job, told, proxy(drawnBands(job.sources)));
      } finally {
        signal.removeEventListener('abort', stop);
      }
    },
    { onProgress },
  );
