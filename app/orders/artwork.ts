import { create } from 'zustand';
import { openArtwork } from '../../src/artwork/browser';
import { setArtwork } from '../../src/editing';
import { keepArtwork } from '../store/artwork';
import { commit, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { words } from '../words';

/** The transfers whose new artwork is being read. Lives until the tab closes. */
export const useReading = create<{ readonly transfers: ReadonlySet<string> }>(() => ({
  transfers: new Set<string>(),
}));

/** Reads an image file and makes it a transfer's artwork; says why, if it cannot be. */
export async function giveArtwork(transferId: string, file: File): Promise<void> {
  if (!mayWrite()) return;
  useReading.setState(({ transfers }) => ({ transfers: new Set([...transfers, transferId]) }));
  const opened = await openArtwork(file);
  useReading.setState(({ transfers }) => ({
    transfers: new Set([...transfers].filter((id) => id !== transferId)),
  }));
  if (!opened.ok) {
    notify('error', words.orders.artworkRefused(file.name, opened.problem));
    return;
  }
  // The image is on the disk before the record that names it.
  const kept = await keepArtwork(opened.value);
  if (!kept.ok) {
    notify('error', words.storage[kept.problem.code]);
    return;
  }
  if (useShop.getState().book.transfer[transferId]) {
    commit((draft, { now }) => setArtwork(draft, transferId, { ...kept.value, changed: now }));
  }
}
