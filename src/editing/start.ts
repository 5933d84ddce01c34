import type { Settings } from '../model';
import { addFilm, type FilmFields } from './films';
import { addRun } from './runs';
import type { BookDraft, EditContext } from './step';

/** What a book begins with: the shop's ways, a roll and a run on it. */
export interface Start {
  readonly settings: Omit<Settings, 'changed'>;
  readonly film: FilmFields;
  readonly runName: string;
}

/** Begins an empty book. */
export function startBook(draft: BookDraft, { settings, film, runName }: Start, context: EditContext): void {
  draft.settings.shop = { ...settings, changed: context.now };
  addRun(draft, { name: runName, film: addFilm(draft, film, context) }, context);
}
