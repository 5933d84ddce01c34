import type { Id, Place } from '../model';
import type { BookDraft } from './step';

/** Puts copies on a film where told, or takes them off it (`null`). */
export function setPlaces(draft: BookDraft, places: Iterable<readonly [Id<'copy'>, Place | null]>): void {
  for (const [id, place] of places) {
    const copy = draft.copy[id];
    if (copy) copy.place = place;
  }
}

export function setPinned(draft: BookDraft, ids: Iterable<string>, pinned: boolean): void {
  for (const id of ids) {
    const place = draft.copy[id]?.place;
    if (place) place.pinned = pinned;
  }
}
