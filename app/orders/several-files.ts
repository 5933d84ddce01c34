import { heightOf, physicalSize } from '../../src/artwork';
import type { OpenedArtwork } from '../../src/artwork/browser';
import { edits, type NewArtwork } from '../../src/editing';
import type { Id, Transfer } from '../../src/model';
import { fromMm } from '../../src/units';
import { keepArtwork } from '../store/artwork';
import { readArtwork } from '../store/read-artwork';
import { waysNow } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { allWordsNow } from '../words';
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

/** Reads an image file and puts it on the disk; says why, if that cannot be. */
export async function takeIn(file: File): Promise<{ opened: OpenedArtwork; kept: NewArtwork } | null> {
  const opened = await readArtwork(file);
  if (!opened) return null;
  const kept = await keepArtwork(opened);
  if (kept.ok) return { opened, kept: kept.value };
  notify('error', allWordsNow().storage[kept.problem.code]);
  return null;
}

/** What a new transfer of an image is called, and its size. */
export function fieldsOf(fileName: string, opened: OpenedArtwork) {
  const ways = waysNow();
  const size = sizeOf(opened);
  const typed = (length: typeof size.width) => `${typedLength(length, ways)} ${ways.unit}`;
  return {
    name: nameOf(fileName),
    ...size,
    typed: { width: typed(size.width), height: typed(size.height) },
  };
}

/** The transfer of an order that has a name, letters' case aside. */
const named = (order: Id<'order'>, name: string): Transfer | undefined =>
  Object.values(useShop.getState().book.transfer).find(
    (transfer) => transfer.order === order && transfer.name.toLowerCase() === name.toLowerCase(),
  );

/**
 * Takes in image files that are given to an order. One whose name is a transfer's becomes its artwork. Any other is a new
 * transfer of its name and size; of one alone the sizes and copies are asked for, and an image that a transfer of the order
 * has already is said and not added again.
 */
export async function addArtworkFiles(order: Id<'order'>, files: readonly File[]): Promise<void> {
  if (!mayWrite()) return;
  let taken = 0;
  for (const file of files) {
    const name = nameOf(file.name);
    const same = named(order, name);
    const read = await takeIn(file);
    if (!read) continue;
    const { opened, kept } = read;
    const fields = fieldsOf(file.name, opened);
    const known = Object.values(useShop.getState().book.transfer).find(
      (transfer) => transfer.order === order && transfer.artwork === kept.id,
    );
    if (files.length === 1 && (known || !same)) {
      openDialog({
        kind: 'design',
        order,
        design: { name, artwork: kept, size: sizeOf(opened), shade: null },
      });
      return;
    }
    if (known) {
      notify('plain', allWordsNow().designs.wasKnown(file.name, known.name));
      continue;
    }
    act(same ? edits.setArtwork(same.id, kept) : edits.addArtworkFile(order, fields, kept));
    taken += 1;
  }
  if (taken > 0) notify('plain', allWordsNow().orders.filesTaken(taken, waysNow()));
}
