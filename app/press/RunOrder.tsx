import { edits } from '../../src/editing';
import type { Run } from '../../src/model';
import { Button } from '../parts/Button';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import type { Day } from '../store/timeline';
import { useAllWords } from '../words';
import { timeAndDay } from '../words/format';

/** In which order runs are printed: as the planner finds best, or as someone moves them. */
export function RunOrder({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const { runOrder } = useShop(({ book }) => settingsOrFirst(book));
  const { runs } = day.timeline;
  if (runs.length < 2) return null;
  const ids = runs.map(({ run }) => run.id);
  const set = (order: readonly Run['id'][]) => act(edits.editSettings({ runOrder: [...order] }));
  const sooner = (at: number) => {
    const [moved] = ids.slice(at, at + 1);
    if (moved)
      set([...ids.slice(0, at - 1), moved, ...ids.filter((id, index) => index >= at - 1 && id !== moved)]);
  };
  return (
    <section aria-labelledby="order-title">
      <h2 id="order-title">{words.runOrder}</h2>
      <p className="quiet small">{runOrder.length > 0 ? words.orderByHand : words.orderFound}</p>
      <ol className="run-order">
        {runs.map(({ run, print, end }, at) => (
          <li key={run.id}>
            <b>{run.name}</b>{' '}
            {print === null ? words.allPrinted : words.printsAt(timeAndDay(day.origin + 1000 * print, ways))},{' '}
            {words.doneAt(timeAndDay(day.origin + 1000 * end, ways))}{' '}
            {at > 0 && print !== null && runs[at - 1]?.print !== null && (
              <Button writes weight="plain" aria-label={words.soonerOf(run.name)} onPress={() => sooner(at)}>
                {words.sooner}
              </Button>
            )}
          </li>
        ))}
      </ol>
      {runOrder.length > 0 && (
        <Button writes weight="plain" onPress={() => set([])}>
          {words.orderAgain}
        </Button>
      )}
    </section>
  );
}
