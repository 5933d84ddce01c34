import { create } from 'zustand';
import { heightOf } from '../../src/artwork';
import { edits, type NewArtwork } from '../../src/editing';
import { type Book, isFixed, type Transfer } from '../../src/model';
import { keepArtwork } from '../store/artwork';
import { readArtwork } from '../store/read-artwork';
import { waysNow } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow, wordsNow } from '../words';
import { differs } from './proportions';

/** Files that can be artwork. */
export const artworkTypes = [
  'image/png',
  'image/jpeg',
  'image/webp',
  'image/svg+xml',
  'application/pdf',
  'image/tiff',
  '.psd',
];

/** The transfers whose new artwork is being read. Lives until the tab closes. */
export const useReading = create<{ readonly transfers: ReadonlySet<string> }>(() => ({
  transfers: new Set<string>(),
}));

/** Says what a new image of a transfer leaves as it was. */
function sayReplaced(book: Book, transfer: Transfer, { trim, density }: NewArtwork): void {
  const copies = Object.values(book.copy).filter((copy) => copy.transfer === transfer.id);
  const fixed = copies.filter((copy) => isFixed(book, copy));
  const placed = copies.filter(({ place }) => place !== null).length - fixed.length;
  if (fixed.length > 0) notify('plain', allWordsNow().designs.lockedKeeps(transfer.name));
  if (trim && differs(heightOf(trim, transfer.width, density), transfer.height)) {
    notify('care', allWordsNow().designs.stretched(transfer.name));
  } else notify('plain', allWordsNow().designs.replaced(transfer.name, placed, waysNow()));
}

/** Reads an image file and makes it a transfer's artwork; says why, if it cannot be. */
export async function giveArtwork(transferId: string, file: File): Promise<void> {
  if (!mayWrite()) return;
  useReading.setState(({ transfers }) => ({ transfers: new Set([...transfers, transferId]) }));
  const opened = await readArtwork(file);
  useReading.setState(({ transfers }) => ({
    transfers: new Set([...transfers].filter((id) => id !== transferId)),
  }));
  if (!opened) return;
  // The image is on the disk before the record that names it.
  const kept = await keepArtwork(opened);
  if (!kept.ok) {
    notify('error', wordsNow().storage[kept.problem.code]);
    return;
  }
  const { book } = useShop.getState();
  const transfer = book.transfer[transferId];
  if (!transfer) return;
  if (transfer.artwork === kept.value.id) {
    notify('plain', allWordsNow().designs.same(transfer.name));
    return;
  }
  act(edits.setArtwork(transferId, kept.value));
  if (transfer.artwork !== null) sayReplaced(book, transfer, kept.value);
}
