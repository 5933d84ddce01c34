import { openArtwork } from '../../src/artwork/browser';
import { missingArtwork } from '../../src/demo';
import { openArtist } from '../../src/demo/browser';
import { edits } from '../../src/editing';
import { keepArtwork } from './artwork';
import { sayFailed } from './failures';
import { act, mayWrite, useShop } from './shop';

/** Draws what the demo day still lacks, piece by piece, and takes it in as any file; ends with the demo. */
export async function drawDemo(): Promise<void> {
  const missing = missingArtwork(useShop.getState().book);
  if (missing.length === 0) return;
  const artist = openArtist();
  try {
    for (const { transfer, drawing, widthMm } of missing) {
      const opened = await openArtwork(await artist.draw(drawing, widthMm));
      const { source, book } = useShop.getState();
      if (source !== 'demo' || !opened.ok) break;
      const kept = await keepArtwork(opened.value);
      if (!kept.ok) break;
      if (book.transfer[transfer] && mayWrite()) act(edits.drawArtwork(transfer, kept.value));
    }
  } catch (error) {
    sayFailed('demo', error);
  } finally {
    artist.close();
  }
}
