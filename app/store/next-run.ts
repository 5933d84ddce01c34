import { filmEdits } from '../../src/editing';
import type { Run } from '../../src/model';
import { wordsNow } from '../words';
import { firstFilmOf } from './first-film';
import { waysNow } from './selectors';
import { act, useShop } from './shop';
import { notify, openRun } from './view';

/** Says that all of a run is printed: its film is off the roll, and the next run is begun where no other is open. */
export function finishPrinting({ id, name }: Pick<Run, 'id' | 'name'>): void {
  act(filmEdits.finishRun(id, nextRunName()));
  notify('plain', wordsNow().runs.printedNote(name));
}

/** What a run that is begun now is called. */
export const nextRunName = (): string =>
  wordsNow().runs.numbered(Object.keys(useShop.getState().book.run).length + 1);

/** Begins a run in a book that has none open, and opens it. */
export function beginRun(): void {
  const begun = act(filmEdits.beginRun({ name: nextRunName(), film: firstFilmOf(waysNow()) }));
  if (begun) openRun(begun.result);
}
