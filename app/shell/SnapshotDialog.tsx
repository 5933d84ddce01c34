import { useEffect, useMemo, useState } from 'react';
import { copiesByTransfer, ordersByDue, transfersByOrder } from '../../src/model';
import { BoxList } from '../parts/BoxList';
import { Button } from '../parts/Button';
import { OrderCode } from '../parts/OrderCode';
import { Tick } from '../parts/Tick';
import {
  bringBack,
  bringOrdersBack,
  type FoundBook,
  findSnapshot,
  lacksSomething,
} from '../store/bring-back';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { dayAndTime, dueDay } from '../words/format';
import { LeftOut } from './LeftOut';

/** A snapshot to look into: its orders, of which some or all can be brought back. */
export function SnapshotDialog({ at }: { at: string }) {
  const { bringBack: words, keep } = useAllWords();
  const ways = useWays();
  const when = dayAndTime(at, ways);
  const [found, setFound] = useState<FoundBook | null>(null);
  const toList = () => openDialog({ kind: 'keep' });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a snapshot is read once
  useEffect(() => {
    let isShown = true;
    void findSnapshot(at).then((read) => {
      if (!isShown) return;
      if (read.ok) return setFound(read.value);
      notify('error', keep.snapshotProblems[read.problem](when));
      toList();
    });
    return () => {
      isShown = false;
    };
  }, [at]);
  const bringWhole = async (whole: FoundBook) => {
    const brought = await bringBack(whole);
    if (brought.ok) notify('plain', keep.broughtBack);
    else notify('error', keep.snapshotProblems[brought.problem](when));
    toList();
  };
  return (
    <Window title={words.asOf(when)}>
      {!found && <p role="status">{words.reading}</p>}
      {found && lacksSomething(found) && (
        <div className="spaced lacking">
          <LeftOut found={found} />
        </div>
      )}
      {found && <Orders found={found} />}
      {found && <p className="quiet small">{words.wholeHint}</p>}
      <div className="actions">
        <Button onPress={toList}>{words.back}</Button>
        {found && (
          <Button writes onPress={() => void bringWhole(found)}>
            {words.whole}
          </Button>
        )}
      </div>
    </Window>
  );
}

function Orders({ found }: { found: FoundBook }) {
  const { bringBack: words } = useAllWords();
  const ways = useWays();
  const present = useShop(({ book }) => book.order);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const orders = useMemo(() => ordersByDue(found.book), [found]);
  const copiesOf = useMemo(() => {
    const [transfers, copies] = [transfersByOrder(found.book), copiesByTransfer(found.book)];
    return (order: string): number =>
      (transfers.get(order) ?? []).reduce((sum, { id }) => sum + (copies.get(id)?.length ?? 0), 0);
  }, [found]);
  const choose = (id: string, isChosen: boolean) => {
    const next = new Set(chosen);
    if (isChosen) next.add(id);
    else next.delete(id);
    setChosen(next);
  };
  const bring = () => {
    const brought = bringOrdersBack(found, chosen);
    if (!brought) return;
    setChosen(new Set());
    notify('plain', words.broughtOrders(brought.orders, brought.copies, ways));
  };
  if (orders.length === 0) return <p className="quiet">{words.noOrders}</p>;
  const isAll = chosen.size === orders.length;
  return (
    <section className="spaced" aria-label={words.ordersOf}>
      <p>{words.choose}</p>
      <div className="actions start">
        <Button onPress={() => setChosen(isAll ? new Set() : new Set(orders.map(({ id }) => id)))}>
          {isAll ? words.none : words.all}
        </Button>
      </div>
      <BoxList className="snapshot-orders" items={orders} keyOf={({ id }) => id} height={44}>
        {({ id, code, tint, name, due }) => (
          <>
            <OrderCode code={code} tint={tint} />
            <Tick
              label={words.order(name, due ? words.due(dueDay(due, ways)) : words.noDate, copiesOf(id), ways)}
              checked={chosen.has(id)}
              onChange={(isChosen) => choose(id, isChosen)}
            />
            {id in present && <span className="quiet small">{words.stillHere}</span>}
          </>
        )}
      </BoxList>
      <p className="quiet small">{words.asWaiting}</p>
      <div className="actions">
        <Button writes weight="primary" isDisabled={chosen.size === 0} onPress={bring}>
          {words.bringOrders(chosen.size, ways)}
        </Button>
      </div>
    </section>
  );
}
