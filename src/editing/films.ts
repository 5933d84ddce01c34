import type { Film, Id, Roll, Sheets } from '../model';
import type { BookDraft, EditContext } from './step';

type Own = 'id' | 'changed';
export type FilmFields = Omit<Roll, Own> | Omit<Sheets, Own>;

export function addFilm(draft: BookDraft, fields: FilmFields, { newId, now }: EditContext): Id<'film'> {
  const id = newId() as Id<'film'>;
  draft.film[id] = { ...fields, id, changed: now } as BookDraft['film'][string];
  return id;
}

/** Puts other fields in place of a film's: a roll may become a stack of sheets. */
export function editFilm(draft: BookDraft, id: string, fields: FilmFields): void {
  const film = draft.film[id];
  if (film) draft.film[id] = { ...fields, id: film.id, changed: film.changed } as BookDraft['film'][string];
}

/** A film that a run has used stays with it; others are gone. */
export function removeFilm(draft: BookDraft, id: string): void {
  const film: Film | undefined = draft.film[id];
  if (!film) return;
  if (Object.values(draft.run).some((run) => run.film === id)) {
    const kept = draft.film[id];
    if (kept) kept.archived = true;
  } else delete draft.film[id];
}
