import type { Settings } from '../model';
import { addFilm, type FilmFields } from './films';
import { addRun } from './runs';
import type { BookDraft, EditContext } from './step';

/** What an empty book starts with: the shop's ways, one roll and one run on it. */
export function startBook(
  draft: BookDraft,
  { settings, film, runName }: { settings: Omit<Settings, 'changed'>; film: FilmFields; runName: string },
  context: EditContext,
): void {
  draft.settings.shop = { ...settings, changed: context.now };
  addRun(draft, { name: runName, film: addFilm(draft, film, context) }, context);
}
