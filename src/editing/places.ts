import type { Id, Place } from '../model';
import type { BookDraft } from './step';

/** Puts copies on a run's film where told. */
export function setPlaces(
  draft: BookDraft,
  run: Id<'run'>,
  places: Iterable<readonly [Id<'copy'>, Place | null]>,
): void {
  const off: string[] = [];
  for (const [id, place] of places) {
    const copy = draft.copy[id];
    if (copy && place) Object.assign(copy, { run, place });
    else off.push(id);
  }
  takeOff(draft, off);
}

/** Takes copies off their film: they wait for any run, or for the one that they were chosen for. */
export function takeOff(draft: BookDraft, ids: Iterable<string>): void {
  for (const id of ids) {
    const copy = draft.copy[id];
    if (!copy) continue;
    const keeps = copy.run !== null && draft.run[copy.run]?.takes === 'chosen';
    Object.assign(copy, { place: null, run: keeps ? copy.run : null });
  }
}

export function setPinned(draft: BookDraft, ids: Iterable<string>, pinned: boolean): void {
  for (const id of ids) {
    const place = draft.copy[id]?.place;
    if (place) place.pinned = pinned;
  }
}
