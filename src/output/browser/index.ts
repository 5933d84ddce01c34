import { proxy, type Remote, wrap } from 'comlink';
import { fail, type Result } from '../../units';
import type { Archivist } from './backup.worker';
import type { ImageJob, ImageProblem, Printer } from './print-job';
import { svgBands } from './svg-band';

export type { ImageProblem, ImageSource, ImageTarget } from './print-job';
export { hasPrivateFiles, openPrivateFolder, sweepPrivateFiles } from './private-files';

/** Packs and unpacks backups in a worker until it is closed. */
export function openArchivist(): { archivist: Remote<Archivist>; close(): void } {
  const worker = new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module' });
  return { archivist: wrap<Archivist>(worker), close: () => worker.terminate() };
}

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
