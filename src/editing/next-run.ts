import { type Id, openRuns } from '../model';
import { tickJob } from './bench';
import { addRun, finishRun } from './runs';
import type { BookDraft, EditContext } from './step';

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
 * Ticks a job of a run, or takes its tick back.
 * @param next the name of the run that is begun if the tick closes the printing and no other is open
 */
export function tickJobAndGoOn(
  draft: BookDraft,
  id: Id<'run'>,
  subject: string,
  done: boolean,
  next: string,
  context: EditContext,
): void {
  tickJob(draft, id, subject, done, context);
  openNextRun(draft, id, next, context);
}
