import { sameScale } from '../../src/artwork';
import { type OpenedArtwork, openArtwork, openChecker } from '../../src/artwork/browser';
import { edits } from '../../src/editing';
import type { Artwork, Mend, Transfer } from '../../src/model';
import { keepArtwork, loadArtworkFile } from '../store/artwork';
import { sayFailed } from '../store/failures';
import { waysNow } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow, wordsNow } from '../words';
import { area, typedLength } from '../words/format';

/** What a tab can hold twice at once. */
const MOST_PIXELS = 60_000_000;

/** The size that leaves the design as large as it is, another image in place of its own; as typed where it is the same. */
export function sizeWith(transfer: Transfer, before: Pick<Artwork, 'trim'>, after: Pick<Artwork, 'trim'>) {
  const { width, height, typed } = transfer;
  if (!before.trim || !after.trim) return { width, height, typed };
  const size = sameScale(before.trim, transfer, after.trim);
  const ways = waysNow();
  const written = (side: 'width' | 'height') =>
    size[side] === transfer[side] ? typed[side] : `${typedLength(size[side], ways)} ${ways.unit}`;
  return { ...size, typed: { width: written('width'), height: written('height') } };
}

async function mendedImage(
  file: Blob,
  transfer: Transfer,
  artwork: Artwork,
  mend: Mend,
  signal: AbortSignal,
): Promise<OpenedArtwork | null> {
  const { pixels, trim, density, fileName } = artwork;
  if (!trim) return null;
  const checker = openChecker();
  try {
    const png = await checker.mend(file, { pixels, trim, printed: transfer }, mend, density, signal);
    const words = allWordsNow().mends;
    if (!png) {
      notify('error', allWordsNow().artwork.pictureMissing);
      return null;
    }
    const opened = await openArtwork(
      new File([png], words.fileName(fileName, mend.kind), { type: 'image/png' }),
    );
    if (!opened.ok) notify('error', words.nothingLeft);
    return opened.ok ? opened.value : null;
  } finally {
    checker.close();
  }
}

/**
 * Makes a mended image and gives it to a transfer, in one step that can be undone. The design stays as large as it was; what was
 * taken off around it makes the printed size smaller.
 */
export async function takeMended(
  transferId: string,
  artwork: Artwork,
  mend: Mend,
  signal: AbortSignal,
): Promise<void> {
  if (!mayWrite()) return;
  const before = useShop.getState().book.transfer[transferId];
  if (!before) return;
  if (artwork.pixels.width * artwork.pixels.height > MOST_PIXELS) {
    return notify('error', allWordsNow().mends.tooLarge);
  }
  const file = await loadArtworkFile(artwork.id).catch(() => null);
  if (!file) return notify('error', allWordsNow().artwork.pictureMissing);
  const opened = await mendedImage(file, before, artwork, mend, signal).catch((error) => {
    if (!signal.aborted) sayFailed('mend', error);
    return null;
  });
  if (!opened) return;
  const kept = await keepArtwork(opened, { artwork: artwork.id, by: mend });
  if (!kept.ok) return notify('error', wordsNow().storage[kept.problem.code]);
  // It may have been resized meanwhile, or have another image.
  const transfer = useShop.getState().book.transfer[transferId];
  if (transfer?.artwork !== artwork.id) return;
  const size = sizeWith(transfer, artwork, kept.value);
  act(edits.setMadeArtwork(transferId, kept.value, size));
  notify('plain', allWordsNow().mends.inUse(area(size.width, size.height, waysNow())));
}
