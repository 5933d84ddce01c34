import type { Id } from '../model';
import { editsOf } from './edit';
import { dropAside, noteHandedBack, removeReceived, takeAside, takeIn } from './hand-over';
import { joinDraft, joinPrinting } from './join';
import { openNextRun } from './next-run';
import type { BookDraft, EditContext } from './step';
import { type Ticking, tickJobs } from './ticks';

/**
 * Ticks jobs of a run at once, or takes their ticks back.
 * @param next the name of the run that is begun if the tick closes the printing and no other is open
 */
function tickJobsAndGoOn(
  draft: BookDraft,
  id: Id<'run'>,
  subjects: readonly string[],
  ticking: Ticking,
  next: string,
  context: EditContext,
): void {
  tickJobs(draft, id, subjects, ticking, context);
  openNextRun(draft, id, next, context);
}

/**
 * What Cut and Press do to a book beyond {@link edits}, by what it is to history. It is apart from them since it knows the work of a run,
 * which the first screen does without.
 */
export const benchEdits = {
  ...editsOf('none', { noteHandedBack }),
  ...editsOf('step', { dropAside, joinDraft }),
  ...editsOf('forget', { removeReceived, joinPrinting }),
  ...editsOf('forget-if-film-moved', { tickJobs: tickJobsAndGoOn, takeIn, takeAside }),
};
