import type { Draft } from 'immer';
import { type Copy, type Id, isCutByOutline, isFixed, type Place, type Whereabouts } from '../model';
import type { BookDraft } from './step';

/** Says where a copy is. */
export const bring = (copy: Draft<Copy>, to: Whereabouts): void => void Object.assign(copy, to);

/**
 * Puts copies on a draft's film where told, but for those in print; one that was taken from the shelf needs none. A run that is sent
 * to print prints what was embedded of it then, so nothing comes to lie on it any more.
 */
export function setPlaces(
  draft: BookDraft,
  run: Id<'run'>,
  places: Iterable<readonly [Id<'copy'>, Place | null]>,
): void {
  const own = draft.run[run];
  const isDraft = own?.state === 'draft';
  const film = draft.film[own?.film ?? ''];
  if (isDraft && film && isCutByOutline(film)) own.laidBy = 'outlines';
  const off: string[] = [];
  for (const [id, place] of places) {
    const copy = draft.copy[id];
    if (!place) off.push(id);
    else if (isDraft && copy && copy.state !== 'shelved' && !isFixed(draft, copy))
      bring(copy, { state: 'placed', run, place });
  }
  takeOff(draft, off);
}

/** Takes copies off their film, but for those in print. */
export function takeOff(draft: BookDraft, ids: Iterable<string>): void {
  letGo(
    draft,
    [...ids].filter((id) => {
      const copy = draft.copy[id];
      return copy !== undefined && !isFixed(draft, copy);
    }),
  );
}

/** Takes copies off their film, printed or not: they wait for any run, or for the one that they were chosen for. */
export function letGo(draft: BookDraft, ids: Iterable<string>): void {
  for (const id of ids) {
    const copy = draft.copy[id];
    if (!copy || copy.state === 'shelved') continue;
    const keeps = copy.run !== null && draft.run[copy.run]?.takes === 'chosen';
    bring(copy, { state: 'waiting', run: keeps ? copy.run : null, place: null });
  }
}

export function setPinned(draft: BookDraft, ids: Iterable<string>, pinned: boolean): void {
  for (const id of ids) {
    const place = draft.copy[id]?.place;
    if (place) place.pinned = pinned;
  }
}
