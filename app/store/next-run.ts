import { edits } from '../../src/editing';
import type { Run } from '../../src/model';
import { wordsNow } from '../words';
import { act, useShop } from './shop';
import { notify } from './view';

/** Says that all of a run is printed: its film is off the roll, and the next run is begun where no other is open. */
export function finishPrinting({ id, name }: Pick<Run, 'id' | 'name'>): void {
  act(edits.finishRun(id, nextRunName()));
  notify('plain', wordsNow().runs.printedNote(name));
}

/** What a run that is begun now is called. */
export const nextRunName = (): string =>
  wordsNow().runs.numbered(Object.keys(useShop.getState().book.run).length + 1);
