import { heightOf, physicalSize } from '../../src/artwork';
import { type OpenedArtwork, openArtwork } from '../../src/artwork/browser';
import { addTransfer, setArtwork } from '../../src/editing';
import type { Id } from '../../src/model';
import { fromMm } from '../../src/units';
import { keepArtwork } from '../store/artwork';
import { waysNow } from '../store/selectors';
import { commit, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { words } from '../words';
import { typedLength } from '../words/format';

/** `back_print-2.png` is a transfer called `back print 2`. */
const nameOf = (fileName: string): string =>
  fileName
    .replace(/\.[a-z0-9]+$/i, '')
    .replace(/[_-]+/g, ' ')
    .trim();

/** The size a file tells, or a start to be typed over where it tells none. */
function sizeOf({ trim, density }: OpenedArtwork) {
  if (density) return physicalSize(trim, density);
  const width = fromMm(100);
  return { width, height: heightOf(trim, width, null) };
}

/**
 * Takes in several image files at once: one whose name is a transfer's of the order becomes its artwork, any other
 * a new transfer of its name and size.
 */
export async function addArtworkFiles(order: Id<'order'>, files: readonly File[]): Promise<void> {
  if (!mayWrite()) return;
  let taken = 0;
  for (const file of files) {
    const opened = await openArtwork(file);
    if (!opened.ok) {
      notify('error', words.orders.artworkRefused(file.name, opened.problem));
      continue;
    }
    const kept = await keepArtwork(opened.value);
    if (!kept.ok) {
      notify('error', words.storage[kept.problem.code]);
      return;
    }
    const name = nameOf(file.name);
    const ways = waysNow();
    commit((draft, context) => {
      if (!draft.order[order]) return;
      const same = Object.values(useShop.getState().book.transfer).find(
        (transfer) => transfer.order === order && transfer.name.toLowerCase() === name.toLowerCase(),
      );
      const size = sizeOf(opened.value);
      const typed = (length: typeof size.width) => `${typedLength(length, ways)} ${ways.unit}`;
      const fields = { name, ...size, typed: { width: typed(size.width), height: typed(size.height) } };
      const id = same?.id ?? addTransfer(draft, order, { ...fields, turn: 'quarter' }, 1, context);
      setArtwork(draft, id, { ...kept.value, changed: context.now });
    });
    taken += 1;
  }
  if (taken > 0) notify('plain', words.orders.filesTaken(taken, waysNow()));
}
