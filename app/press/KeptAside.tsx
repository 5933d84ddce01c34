import { asideReason, benchEdits, mayTakeIn } from '../../src/editing';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify } from '../store/view';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import './received.css';

/** What came back of runs that have moved on: it waits until someone takes it in or lets it go. */
export function KeptAside() {
  const { handOver: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const asides = Object.values(book.aside);
  if (asides.length === 0) return null;
  return (
    <section className="kept-aside" aria-labelledby="aside-title">
      <h2 id="aside-title">{words.aside}</h2>
      <ul>
        {asides.map((aside) => {
          const { id, name, ticks, spoilages, made } = aside;
          const why = asideReason(book, aside);
          return (
            <li key={id}>
              <span>
                {words.asideOf(name, ticks.length, spoilages.length, dayAndTime(made, ways), ways)}{' '}
                <span className="quiet small">{why && words.asideWhy[why]}</span>
              </span>
              <span className="actions">
                <Button
                  writes
                  isDisabled={!mayTakeIn(why)}
                  onPress={() => {
                    act(benchEdits.takeAside(id));
                    notify('plain', words.asideTaken);
                  }}
                >
                  {words.takeAside}
                </Button>
                <Button
                  writes
                  weight="plain"
                  onPress={() => {
                    act(benchEdits.dropAside(id));
                    notify('plain', words.dropped);
                  }}
                >
                  {words.dropAside}
                </Button>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
