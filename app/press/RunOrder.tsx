import { Button as AriaButton, GridList, GridListItem, useDragAndDrop } from 'react-aria-components';
import { edits } from '../../src/editing';
import type { Run } from '../../src/model';
import { Button } from '../parts/Button';
import { useHeld } from '../parts/held';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import type { Day } from '../store/timeline';
import { useAllWords } from '../words';
import { timeAndDay } from '../words/format';
import { movedTo } from './run-order';

const set = (order: readonly Run['id'][]) => act(edits.editSettings({ runOrder: [...order] }));

/** In which order runs are printed: as the planner finds best, or as someone moves them, by hand, by key or by a button. */
export function RunOrder({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const { isHeld } = useHeld(true);
  const { runOrder } = useShop(({ book }) => settingsOrFirst(book));
  const { runs } = day.timeline;
  const ids = runs.map(({ run }) => run.id);
  const { dragAndDropHooks } = useDragAndDrop({
    getItems: (keys) =>
      [...keys].map((key) => ({ 'text/plain': runs.find(({ run }) => run.id === key)?.run.name ?? '' })),
    onReorder({ keys, target }) {
      const at = ids.find((id) => id === target.key);
      if (at !== undefined && target.dropPosition !== 'on')
        set(movedTo(ids, new Set(ids.filter((id) => keys.has(id))), at, target.dropPosition));
    },
  });
  return (
    <section aria-labelledby="order-title">
      <h2 id="order-title">{words.runOrder}</h2>
      <p className="quiet small">{runOrder.length > 0 ? words.orderByHand : words.orderFound}</p>
      <GridList
        className="run-order"
        aria-labelledby="order-title"
        keyboardNavigationBehavior="tab"
        {...(isHeld ? {} : { dragAndDropHooks })}
      >
        {runs.map(({ run, print, end }, at) => {
          const before = runs[at - 1];
          return (
            <GridListItem key={run.id} id={run.id} textValue={run.name} className="run-in-order">
              {!isHeld && (
                <AriaButton slot="drag" className="run-handle" aria-label={words.moveRun(run.name)}>
                  <span aria-hidden="true">⠿</span>
                </AriaButton>
              )}
              <span>
                <b>{run.name}</b>{' '}
                {print === null
                  ? words.allPrinted
                  : words.printsAt(timeAndDay(day.origin + 1000 * print, ways))}
                , {words.doneAt(timeAndDay(day.origin + 1000 * end, ways))}
              </span>
              {before && before.print !== null && print !== null && (
                <Button
                  writes
                  weight="plain"
                  aria-label={words.soonerOf(run.name)}
                  onPress={() => set(movedTo(ids, new Set([run.id]), before.run.id, 'before'))}
                >
                  {words.sooner}
                </Button>
              )}
            </GridListItem>
          );
        })}
      </GridList>
      {runOrder.length > 0 && (
        <Button writes weight="plain" onPress={() => set([])}>
          {words.orderAgain}
        </Button>
      )}
    </section>
  );
}
