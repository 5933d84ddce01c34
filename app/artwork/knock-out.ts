import { heightOf, type KnockOut } from '../../src/artwork';
import { openArtwork, openChecker } from '../../src/artwork/browser';
import { edits } from '../../src/editing';
import type { Artwork } from '../../src/model';
import { keepArtwork, loadArtworkFile } from '../store/artwork';
import { sayFailed } from '../store/failures';
import { waysNow } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow, wordsNow } from '../words';
import { hex, shortLength, typedLength } from '../words/format';

/** What a tab can hold twice at once. */
const MOST_PIXELS = 60_000_000;

async function knockedOut(file: Blob, artwork: Artwork, knock: KnockOut) {
  const checker = openChecker();
  try {
    const png = await checker.knockOut(file, knock, artwork.density);
    if (!png) return notify('error', allWordsNow().artwork.pictureMissing);
    return await openArtwork(
      new File([png], allWordsNow().artwork.madeName(artwork.fileName), { type: 'image/png' }),
    );
  } finally {
    checker.close();
  }
}

/**
 * Makes an image with a colour knocked out and gives it to a transfer, in one step that can be undone. The printed width stays;
 * the height follows the proportions of what is left.
 */
export async function takeKnockedOut(transferId: string, artwork: Artwork, knock: KnockOut): Promise<void> {
  if (!mayWrite()) return;
  if (artwork.pixels.width * artwork.pixels.height > MOST_PIXELS) {
    return notify('error', allWordsNow().artwork.tooLargeToKnock);
  }
  const file = await loadArtworkFile(artwork.id).catch(() => null);
  if (!file) return notify('error', allWordsNow().artwork.pictureMissing);
  const opened = await knockedOut(file, artwork, knock).catch((error) => sayFailed('knockOut', error));
  if (!opened) return;
  if (!opened.ok) return notify('error', allWordsNow().artwork.notMade);
  const colour = hex(knock.colour);
  const { tolerance, reach } = knock;
  const kept = await keepArtwork(opened.value, { artwork: artwork.id, colour, tolerance, reach });
  if (!kept.ok) return notify('error', wordsNow().storage[kept.problem.code]);
  const transfer = useShop.getState().book.transfer[transferId];
  if (!transfer) return;
  const ways = waysNow();
  const height = heightOf(opened.value.trim, transfer.width, opened.value.density);
  act(
    edits.setMadeArtwork(transferId, kept.value, {
      height,
      typed: { ...transfer.typed, height: `${typedLength(height, ways)} ${ways.unit}` },
    }),
  );
  notify('plain', allWordsNow().artwork.made(shortLength(transfer.width, ways)));
}
