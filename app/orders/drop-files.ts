import { matchArtwork } from '../../src/editing';
import type { Id } from '../../src/model';
import { mayWrite, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { openTable } from './open-table';
import { addArtworkFiles } from './several-files';

const isTable = (file: File): boolean => /\.(csv|tsv|txt)$/i.test(file.name) || file.type === 'text/csv';

/**
 * Takes files that are dropped on the page, or on an order: a table is read; images are matched with the transfers of all orders by
 * their names, and each match is shown before it is taken. One image that is like none is a new design of the order it was dropped on.
 */
export function dropFiles(files: readonly File[], order: Id<'order'> | null): void {
  if (!mayWrite()) return;
  const [first] = files;
  if (!first) return;
  if (isTable(first)) {
    void openTable(first);
    return;
  }
  const [match] = matchArtwork(useShop.getState().book, [first.name], order);
  if (order !== null && files.length === 1 && !match?.transfer) void addArtworkFiles(order, files);
  else openDialog({ kind: 'match-artwork', files, order });
}
