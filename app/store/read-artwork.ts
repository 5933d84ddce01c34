import { type OpenedArtwork, openArtwork } from '../../src/artwork/browser';
import { allWordsNow } from '../words';
import { sayNotRead } from './failures';
import { waysNow } from './selectors';
import { notify } from './view';

/** Reads an image file that is given to the shop; `null` if it cannot be, which is said. */
export async function readArtwork(file: File): Promise<OpenedArtwork | null> {
  try {
    const opened = await openArtwork(file);
    if (opened.ok) {
      const { page } = opened.value;
      if (page && page.of > 1) {
        notify('plain', allWordsNow().orders.pageTaken(file.name, page.number, page.of, waysNow()));
      }
      return opened.value;
    }
    notify('error', allWordsNow().orders.artworkRefused(file.name, opened.problem));
  } catch (error) {
    sayNotRead(file.name, error);
  }
  return null;
}
