import { edits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { untoldLines } from '../../src/model';
import { costsOf } from '../store/costs';
import { stopPlanning } from '../store/planning';
import { laidNow, waysNow } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { wordsNow } from '../words';

/** The transfers on a run's film that have no artwork, by name. */
const withoutArtwork = ({ copies }: LaidRun): string[] => [
  ...new Set(copies.flatMap(({ transfer }) => (transfer.artwork === null ? [transfer.name] : []))),
];

/**
 * Locks the run that is looked at for print, what it costs by now embedded; says so, and what prints as nothing. Asks first what is pressed
 * on, where a line does not tell.
 */
export function lockRun(): void {
  stopPlanning();
  const run = laidNow();
  if (run?.state !== 'draft') return;
  if (untoldLines(run.view).length > 0) {
    openDialog({ kind: 'fabrics', run: run.id });
    return;
  }
  const { runs: words } = wordsNow();
  const { use, costs, rates } = costsOf(useShop.getState().book, run);
  act(edits.lockRun(run.id, { use, costs, rates }));
  notify('plain', words.lockedNote(run.name));
  const bare = withoutArtwork(run);
  if (bare.length > 0) notify('care', words.withoutArtwork(bare, waysNow()));
}
