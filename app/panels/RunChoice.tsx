import type { LaidRun } from '../../src/layout';
import { benchRuns } from '../../src/model';
import { Choice } from '../parts/Choice';
import { useShop } from '../store/shop';
import { openRun } from '../store/view';
import { useAllWords } from '../words';

/** Which run is looked at; nothing where there is only one. */
export function RunChoice({ run }: { run: LaidRun }) {
  const { press } = useAllWords();
  const book = useShop((shop) => shop.book);
  const runs = benchRuns(book);
  if (runs.length < 2) return null;
  return (
    <Choice
      label={press.run}
      value={run.id as string}
      options={runs.map(({ id, name, state }) => ({
        value: id as string,
        label: `${name} · ${press.states[state]}`,
      }))}
      onChange={openRun}
    />
  );
}
