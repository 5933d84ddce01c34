import { type LaidRun, type LeftOut, tooLargeFor } from '../../src/layout';
import { copiesByTransfer, type Order, ordersByDue, type Transfer, transfersByOrder } from '../../src/model';
import { fetchPart } from '../offline/part';
import { FirstButton } from '../panels/FirstButton';
import { GradeButton } from '../panels/GradeButton';
import { useMore } from '../panels/useMore';
import { Button } from '../parts/Button';
import { OrderCode } from '../parts/OrderCode';
import { reveal } from '../store/camera';
import { sayFailed } from '../store/failures';
import { usePlanning } from '../store/planning';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { select } from '../store/view';
import { useWords } from '../words';
import { area, dueDay, whole } from '../words/format';

/** Puts a copy on the film; what that takes is fetched when it is asked for. */
const putBack = (transfer: Transfer['id']): Promise<void> =>
  fetchPart(() => import('./put-back')).then(
    (fetched) => fetched.putBack(transfer),
    (error) => sayFailed('layout', error),
  );

/** The orders as cards, soonest due first: what lies on the film and what still waits for a place. */
export function OrderCards({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const book = useShop((shop) => shop.book);
  const leftOut = usePlanning((state) => state.leftOut);
  const transfers = transfersByOrder(book);
  const copies = copiesByTransfer(book);
  const orders = ordersByDue(book);
  const { shown, more } = useMore(orders.length);
  return (
    <section aria-labelledby="cards-title">
      <div className="cards-head">
        <h2 id="cards-title">{words.ordersOnFilm}</h2>
        <span className="quiet small">{words.soonestFirst}</span>
        <span className="quiet small keys-hint">{words.keysHint}</span>
      </div>
      <ul className="cards">
        {orders.slice(0, shown).map((order) => (
          <OrderCard
            key={order.id}
            run={run}
            order={order}
            leftOut={leftOut}
            rows={(transfers.get(order.id) ?? []).map((transfer) => {
              const own = copies.get(transfer.id) ?? [];
              return {
                transfer,
                count: own.length,
                waiting: own.filter((copy) => copy.place === null).length,
              };
            })}
          />
        ))}
      </ul>
      {more}
    </section>
  );
}

interface Row {
  readonly transfer: Transfer;
  readonly count: number;
  readonly waiting: number;
}

function OrderCard({
  run,
  order,
  rows,
  leftOut,
}: {
  run: LaidRun;
  order: Order;
  rows: readonly Row[];
  leftOut: readonly LeftOut[];
}) {
  const { film: words, orders } = useWords();
  const ways = useWays();
  const waiting = rows.reduce((sum, row) => sum + row.waiting, 0);
  const total = rows.reduce((sum, row) => sum + row.count, 0);
  const showFirst = (transfer: Transfer) => {
    const copy = run.copies.find((candidate) => candidate.transfer.id === transfer.id);
    if (!copy) return;
    select(copy.id);
    reveal(copy.y, copy.y + copy.length);
  };
  return (
    <li className="card">
      <header>
        <OrderCode code={order.code} tint={order.tint} />
        <strong>{order.name}</strong>
        {order.rush && <strong className="care small">{orders.rush}</strong>}
        <span className="quiet small">
          {order.due ? orders.dueOn(dueDay(order.due, ways)) : orders.noDue}
        </span>
      </header>
      <ul>
        {rows.map(({ transfer, count, waiting: rowWaiting }) => {
          const tooLarge = tooLargeFor(run.film, transfer);
          const left = leftOut.find((entry) => entry.transfer === transfer.id);
          return (
            <li key={transfer.id} className="card-line">
              <button type="button" className="card-row" onClick={() => showFirst(transfer)}>
                <span>{transfer.name}</span>
                <span className="quiet">{area(transfer.width, transfer.height, ways)}</span>
                <b>{whole(count, ways)}</b>
              </button>
              <GradeButton transfer={transfer} short />
              {run.state === 'draft' && rowWaiting > 0 && !tooLarge && (
                <Button
                  writes
                  weight="plain"
                  aria-label={words.putBackNamed(transfer.name)}
                  onPress={() => void putBack(transfer.id)}
                >
                  {words.putBack}
                </Button>
              )}
              {rowWaiting > 0 && (tooLarge ?? left) && (
                <p className="care small">
                  {words.leftOut(transfer.name, rowWaiting, tooLarge ?? left?.reason ?? 'no-room', ways)}
                </p>
              )}
            </li>
          );
        })}
      </ul>
      <footer>
        <p className={waiting > 0 ? 'care small' : 'quiet small'}>
          {waiting > 0 ? words.wait(waiting, ways) : words.allPlaced(total, ways)}
        </p>
        <FirstButton order={order} />
      </footer>
    </li>
  );
}
