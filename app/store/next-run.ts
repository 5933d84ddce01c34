import { addRun, type BookDraft, type EditContext } from '../../src/editing';
import { openRuns } from '../../src/model';
import { wordsNow } from '../words';

/** Begins the next run on a run's film, if the last one open is printed now: there is always a film to lay copies on. */
export function openNextRun(draft: BookDraft, printed: string, context: EditContext): void {
  const { film, received = null } = draft.run[printed] ?? {};
  if (!film || received || openRuns(draft).length > 0) return;
  addRun(draft, { name: wordsNow().runs.numbered(Object.keys(draft.run).length + 1), film }, context);
}
