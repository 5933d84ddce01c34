import type { Id, Run, Settings } from '../model';
import type { FilmFields } from './films';
import type { BookDraft, EditContext } from './step';

/** What an empty book starts with: the shop's ways, one roll and one run on it. */
export function startBook(
  draft: BookDraft,
  { settings, film, runName }: { settings: Omit<Settings, 'changed'>; film: FilmFields; runName: string },
  { newId, now }: EditContext,
): void {
  const filmId = newId() as Id<'film'>;
  const runId = newId() as Run['id'];
  draft.settings.shop = { ...settings, changed: now };
  draft.film[filmId] = { id: filmId, ...film, changed: now };
  draft.run[runId] = { id: runId, name: runName, film: filmId, state: 'draft', changed: now };
}
