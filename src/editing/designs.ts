import type { Id, Transfer } from '../model';
import { type NewArtwork, setArtwork } from './artwork';
import type { BookDraft, EditContext } from './step';
import { addTransfer, countOf, setCount } from './transfers';

/** One size of a design: a transfer that is to be made. */
export interface NewSize extends Pick<Transfer, 'name' | 'width' | 'height' | 'typed'> {
  readonly count: number;
}

/** What is wanted of a design: new sizes of it, and more copies of transfers that are there. */
export interface DesignCopies {
  readonly artwork: NewArtwork | null;
  readonly shade: Transfer['shade'];
  readonly sizes: readonly NewSize[];
  readonly more: readonly { readonly transfer: Id<'transfer'>; readonly count: number }[];
}

/** Adds a design to an order at all its sizes, if the order is still there. A size without copies is not made. */
export function addDesign(
  draft: BookDraft,
  order: Id<'order'>,
  { artwork, shade, sizes, more }: DesignCopies,
  context: EditContext,
): void {
  if (!draft.order[order]) return;
  for (const { count, ...size } of sizes) {
    if (count === 0) continue;
    const id = addTransfer(draft, order, { ...size, turn: 'quarter', shade }, count, context);
    if (artwork) setArtwork(draft, id, artwork, context);
  }
  for (const { transfer, count } of more) {
    if (draft.transfer[transfer]) {
      setCount(draft, transfer, countOf(draft, transfer, 'ordered') + count, context);
    }
  }
}
