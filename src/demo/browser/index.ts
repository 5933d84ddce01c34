import letters from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff2?url';
import { closeWorker, runTask, taskWorker } from '../../workers/browser';
import type { DrawingName } from '../drawings/boards';
import type { Artist } from './artist';

/** Ten pixels a millimetre. */
const PPI = 254;

/** Draws artwork in a worker until it is closed; a drawing throws a `WorkerFailed` if the worker fails. */
export function openArtist(): {
  draw(name: DrawingName, widthMm: number): Promise<File>;
  close(): void;
} {
  const own = taskWorker<Artist>(
    () => new Worker(new URL('./drawing.worker.ts', import.meta.url), { type: 'module' }),
  );
  let isLettered = false;
  return {
    draw: async (name, widthMm) => {
      const drawing = await runTask(own, async (artist) => {
        if (!isLettered) await artist.letterWith(new URL(letters, location.href).href);
        isLettered = true;
        return artist.draw(name, { widthMm, ppi: PPI });
      });
      return new File([drawing], `${name}.png`, { type: 'image/png' });
    },
    close: () => closeWorker(own),
  };
}
