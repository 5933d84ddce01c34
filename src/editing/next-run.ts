import { type Id, openRuns } from '../model';
import { addRun, finishRun } from './runs';
import type { BookDraft, EditContext } from './step';
import { tickJobs } from './ticks';

/** Begins the next run on a run's film, if the last one open is printed now: there is always a film to lay copies on. */
function openNextRun(draft: BookDraft, printed: string, name: string, context: EditContext): void {
  const { film, received = null } = draft.run[printed] ?? {};
  if (!film || received || openRuns(draft).length > 0) return;
  addRun(draft, { name, film }, context);
}

/**
 * Closes the printing of a run.
 * @param next the name of the run that is begun if no other is open
 */
export function finishRunAndGoOn(draft: BookDraft, id: Id<'run'>, next: string, context: EditContext): void {
  finishRun(draft, id, context);
  openNextRun(draft, id, next, context);
}

/**
 * Ticks jobs of a run at once, or takes their ticks back.
 * @param next the name of the run that is begun if the tick closes the printing and no other is open
 */
export function tickJobsAndGoOn(
  draft: BookDraft,
  id: Id<'run'>,
  subjects: readonly string[],
  done: boolean,
  next: string,
  context: EditContext,
): void {
  tickJobs(draft, id, subjects, done, context);
  openNextRun(draft, id, next, context);
}
