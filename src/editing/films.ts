import type { Film } from '../model';
import type { BookDraft } from './step';

export type FilmFields = Omit<Film, 'id' | 'changed'>;

export function editFilm(draft: BookDraft, id: string, fields: Partial<FilmFields>): void {
  const film = draft.film[id];
  if (film) Object.assign(film, fields);
}
