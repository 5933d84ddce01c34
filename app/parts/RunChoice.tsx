import type { LaidRun } from '../../src/layout';
import { openRuns, printedRuns } from '../../src/model';
import { useShop } from '../store/shop';
import { openRun } from '../store/view';
import { pressWords } from '../words/press';
import { Choice } from './Choice';

/** Which run is looked at; nothing where there is only one. */
export function RunChoice({ run }: { run: LaidRun }) {
  const book = useShop((shop) => shop.book);
  const runs = [...openRuns(book), ...printedRuns(book)];
  if (runs.length < 2) return null;
  return (
    <Choice
      label={pressWords.run}
      value={run.id as string}
      options={runs.map(({ id, name, state }) => ({
        value: id as string,
        label: `${name} · ${pressWords.states[state]}`,
      }))}
      onChange={openRun}
    />
  );
}
