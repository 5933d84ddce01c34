import type { Id, Roll, Sheets } from '../model';
import { leftOfFilm } from '../stock';
import { um } from '../units';
import { enter } from './ledger';
import { editRun } from './runs';
import type { BookDraft, EditContext } from './step';

type Own = 'id' | 'changed';
export type FilmFields = Omit<Roll, Own> | Omit<Sheets, Own>;

/** Fields with another amount left. */
const withLeft = (fields: FilmFields, left: number): FilmFields =>
  fields.kind === 'roll' ? { ...fields, lengthLeft: um(left) } : { ...fields, sheetsLeft: left };

/** Adds a film; what it has to begin with is its first entry in the ledger. */
export function addFilm(
  draft: BookDraft,
  fields: FilmFields,
  context: EditContext,
  kind: 'opening' | 'bought' | 'cut' = 'opening',
): Id<'film'> {
  const id = context.newId<'film'>();
  draft.film[id] = { ...withLeft(fields, 0), id, changed: context.now };
  enter(draft, id, leftOfFilm(fields), { kind }, context);
  return id;
}

/** Puts other fields in place of a film's; what is left of it was counted. A roll stays a roll: its ledger is in its unit. */
export function editFilm(draft: BookDraft, id: string, fields: FilmFields, context: EditContext): void {
  const film = draft.film[id];
  if (film?.kind !== fields.kind) return;
  const left = leftOfFilm(film);
  draft.film[id] = {
    ...withLeft(fields, left),
    id: film.id,
    changed: film.changed,
  };
  enter(draft, id, leftOfFilm(fields) - left, { kind: 'counted' }, context);
}

/** A film that a run has used stays with it; others are gone, and what was left of them with them. */
export function removeFilm(draft: BookDraft, id: string, context: EditContext): void {
  const film = draft.film[id];
  if (!film) return;
  if (Object.values(draft.run).some((run) => run.film === id)) film.archived = true;
  else {
    enter(draft, id, -leftOfFilm(film), { kind: 'discarded' }, context);
    delete draft.film[id];
    delete draft.item[id];
  }
}

/**
 * Lays a run on a film with the fields given.
 * @param film the film that has them from now on; one that is new, if it is `null`
 */
export function chooseFilm(
  draft: BookDraft,
  run: Id<'run'>,
  film: Id<'film'> | null,
  fields: FilmFields,
  context: EditContext,
): void {
  if (film) editFilm(draft, film, fields, context);
  editRun(draft, run, { film: film ?? addFilm(draft, fields, context) });
}
