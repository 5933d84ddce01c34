import { proxy, wrap } from 'comlink';
import { fail, type Result } from '../../../units';
import type { ImageJob, ImageProblem, Printer } from './image-worker/job';
import { svgBands } from './svg-band';

export type { ImageProblem, ImageSource, ImageTarget } from './image-worker/job';
export { hasPrivateFiles, openPrivateFolder, sweepPrivateFiles } from './private-files';

/**
 * Writes print-ready images in a worker of their own.
 * @param signal stops it; what was begun is not left behind
 */
export async function writeImages(
  job: ImageJob,
  signal: AbortSignal,
  onProgress: (share: number) => void,
): Promise<Result<void, ImageProblem>> {
  const worker = new Worker(new URL('./print-image.worker.ts', import.meta.url), { type: 'module' });
  const printer = wrap<Printer>(worker);
  const stop = () => void printer.stop();
  signal.addEventListener('abort', stop);
  try {
    if (signal.aborted) stop();
    const ended = new Promise<never>((_, reject) => {
      worker.onerror = reject;
    });
    return await Promise.race([printer.write(job, proxy(onProgress), proxy(svgBands(job.sources))), ended]);
  } catch {
    return fail({ code: 'not-written' });
  } finally {
    signal.removeEventListener('abort', stop);
    worker.terminate();
  }
}
