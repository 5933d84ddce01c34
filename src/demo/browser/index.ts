import letters from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff2?url';
import { wrap } from 'comlink';
import type { DrawingName } from '../drawings';
import type { Artist } from './artist';

/** Ten pixels a millimetre. */
const PPI = 254;

/** Draws artwork in a worker until it is closed. */
export async function openArtist(): Promise<{
  draw(name: DrawingName, widthMm: number): Promise<File>;
  close(): void;
}> {
  const worker = new Worker(new URL('./drawing.worker.ts', import.meta.url), { type: 'module' });
  const artist = wrap<Artist>(worker);
  await artist.letterWith(new URL(letters, location.href).href);
  return {
    draw: async (name, widthMm) =>
      new File([await artist.draw(name, { widthMm, ppi: PPI })], `${name}.png`, { type: 'image/png' }),
    close: () => worker.terminate(),
  };
}
