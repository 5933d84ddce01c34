import { heightOf } from '../artwork';
import type { Artwork, ArtworkOutline, Id, Meant } from '../model';
import { writtenLength } from '../units';
import type { BookDraft, EditContext } from './step';
import { addTransfer, editTransfer, type TransferFields } from './transfers';

/** An image that is kept; the edit that uses it says when, and its outline is found later. */
export type NewArtwork = Omit<Artwork, 'changed' | 'outline' | 'outlinedBy'>;

/** Gives a transfer its artwork; its printed size stays what it was, but for a height that nobody typed, which follows. */
export function setArtwork(draft: BookDraft, id: string, artwork: NewArtwork, { now }: EditContext): void {
  const transfer = draft.transfer[id];
  if (!transfer) return;
  const { outline, outlinedBy } = draft.artwork[artwork.id] ?? { outline: null, outlinedBy: 0 };
  draft.artwork[artwork.id] = { ...artwork, outline, outlinedBy, changed: now };
  transfer.artwork = artwork.id;
  if (transfer.typed.height !== '' || !artwork.trim) return;
  const height = heightOf(artwork.trim, transfer.width, artwork.density);
  const unit = draft.settings.shop?.unit ?? 'mm';
  editTransfer(draft, id, { height, typed: { ...transfer.typed, height: writtenLength(height, unit) } });
}

/** Puts what a file tells of itself in place of what an older version read of it. */
export function readArtworkAgain(
  draft: BookDraft,
  id: Id<'artwork'>,
  artwork: NewArtwork,
  { now }: EditContext,
): void {
  if (draft.artwork[id]) draft.artwork[id] = { ...artwork, id, outline: null, outlinedBy: 0, changed: now };
}

/**
 * Keeps the outline that was found of an image, or that it has none.
 * @param by the way of finding outlines
 */
export function keepOutline(
  draft: BookDraft,
  id: Id<'artwork'>,
  outline: ArtworkOutline | null,
  by: number,
): void {
  const artwork = draft.artwork[id];
  if (artwork) Object.assign(artwork, { outline, outlinedBy: by });
}

/** Makes an image file a transfer of its order, of the file's name and size, with one copy. */
export function addArtworkFile(
  draft: BookDraft,
  order: Id<'order'>,
  fields: Pick<TransferFields, 'name' | 'width' | 'height' | 'typed'>,
  artwork: NewArtwork,
  context: EditContext,
): void {
  if (!draft.order[order]) return;
  setArtwork(draft, addTransfer(draft, order, { ...fields, turn: 'quarter' }, 1, context), artwork, context);
}

/** An image, and the transfer that it is of, or the order of which it is to be a new one. */
export type GivenArtwork = { readonly artwork: NewArtwork } & (
  | { readonly transfer: Id<'transfer'> }
  | {
      readonly order: Id<'order'>;
      readonly fields: Pick<TransferFields, 'name' | 'width' | 'height' | 'typed'>;
    }
);

/** Takes in several images at once, in one step. */
export function takeArtwork(draft: BookDraft, given: readonly GivenArtwork[], context: EditContext): void {
  for (const each of given) {
    if ('transfer' in each) setArtwork(draft, each.transfer, each.artwork, context);
    else addArtworkFile(draft, each.order, each.fields, each.artwork, context);
  }
}

/** Gives a transfer an artwork made from its own, and the size that it has then. */
export function setMadeArtwork(
  draft: BookDraft,
  id: string,
  artwork: NewArtwork,
  size: Pick<TransferFields, 'width' | 'height' | 'typed'>,
  context: EditContext,
): void {
  setArtwork(draft, id, artwork, context);
  editTransfer(draft, id, size);
}

/** Says of a finding in a transfer's artwork that it is meant so. */
export function setMeant(draft: BookDraft, id: string, meant: Meant): void {
  clearMeant(draft, id, meant.finding);
  draft.transfer[id]?.meant.push(meant);
}

/** Takes back that a finding is meant so. */
export function clearMeant(draft: BookDraft, id: string, finding: Meant['finding']): void {
  const transfer = draft.transfer[id];
  if (transfer) transfer.meant = transfer.meant.filter((other) => other.finding !== finding);
}
