import { benchEdits, nextOpenSpan } from '../../src/editing';
import { openRuns, type Run, waitingReprints } from '../../src/model';
import { Button } from '../parts/Button';
import { OrderCode } from '../parts/OrderCode';
import { atOnceOrSaid } from '../store/at-once';
import { useWays, waysNow } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo, notify, openRun } from '../store/view';
import { allWordsNow, useAllWords } from '../words';
import './reprints.css';

/** Puts what waits on the next span of a run, and says what came of it; one that was sent to print is shown where it is locked again. */
async function join({ id, name, state }: Run): Promise<void> {
  const engine = await atOnceOrSaid();
  if (!engine) return;
  const isDraft = state === 'draft';
  const done = act(isDraft ? benchEdits.joinDraft(id, engine) : benchEdits.joinPrinting(id, engine));
  if (!done) return;
  const { reprints: words } = allWordsNow();
  if (!done.result) return notify('care', words.noRoom(name));
  notify('plain', words.joined(done.result.copies, done.result.spans, name, waysNow()));
  if (isDraft) return;
  openRun(id);
  goTo('film');
  notify('care', words.lockAgain(name));
}

/** Copies that wait to be printed again, those in a rush first, and the runs whose next span they can join. */
export function Reprints() {
  const { reprints: words, spoil, orders } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const waiting = waitingReprints(book);
  if (waiting.length === 0) return null;
  // What is at the printer comes first.
  const open = openRuns(book)
    .flatMap((run) => {
      const next = nextOpenSpan(book, run);
      return next && (run.state === 'draft' || run.state === 'locked')
        ? [{ run, state: run.state, next }]
        : [];
    })
    .sort((a, b) => Number(a.state === 'draft') - Number(b.state === 'draft'));
  return (
    <section className="reprints" aria-labelledby="reprints-title">
      <h2 id="reprints-title">{words.title}</h2>
      <p className="quiet small">{open.length > 0 ? words.hint : words.noRun}</p>
      <ul>
        {waiting.map(({ id, number, transfer: of }) => {
          const transfer = book.transfer[of];
          const order = book.order[transfer?.order ?? ''];
          const why = Object.values(book.spoilage).findLast(({ copy }) => copy === id);
          return (
            order && (
              <li key={id}>
                <span className="named">
                  <OrderCode code={order.code} tint={order.tint} /> {number} {transfer?.name}
                </span>{' '}
                {order.rush && <strong className="care small">{orders.rush}</strong>}{' '}
                {why && (
                  <span className="quiet small">{[spoil.stages[why.stage], why.reason].join(' · ')}</span>
                )}
              </li>
            )
          );
        })}
      </ul>
      {open.map(({ run, state, next }) => (
        <p key={run.id}>
          <Button writes onPress={() => void join(run)}>
            {words.join(next.span, run.name, ways)}
          </Button>{' '}
          <span className="quiet small">{words.joinState[state]}</span>
        </p>
      ))}
    </section>
  );
}
