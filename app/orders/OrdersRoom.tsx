import { useEffect, useRef } from 'react';
import { FileTrigger } from 'react-aria-components';
import { addOrder } from '../../src/editing';
import { copiesByTransfer, ordersByDue, transfersByOrder } from '../../src/model';
import { redoCommand, undoCommand } from '../commands';
import { Button } from '../parts/Button';
import { CommandButton } from '../parts/CommandButton';
import { DemoButton } from '../parts/DemoButton';
import { useWays } from '../store/selectors';
import { commit, useShop } from '../store/shop';
import { openDialog, useView } from '../store/view';
import { useWords } from '../words';
import { OrderSection } from './OrderSection';
import { openTable } from './open-table';
import './orders.css';

/** The day's orders: pasted, opened or typed, each with its transfers. */
export function OrdersRoom() {
  const { orders: words } = useWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const orders = ordersByDue(book);
  const transfers = transfersByOrder(book);
  const copies = copiesByTransfer(book);
  usePastedTable();
  return (
    <>
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          {orders.length > 0 && (
            <p className="quiet">
              {words.summary(
                orders.length,
                Object.keys(book.transfer).length,
                Object.keys(book.copy).length,
                ways,
              )}
            </p>
          )}
        </div>
        <div className="actions">
          <CommandButton command={undoCommand} weight="plain" />
          <CommandButton command={redoCommand} weight="plain" />
          <FileTrigger
            acceptedFileTypes={[
              '.csv',
              '.tsv',
              '.txt',
              'text/csv',
              'text/tab-separated-values',
              'text/plain',
            ]}
            onSelect={(files) => files?.[0] && void openTable(files[0])}
          >
            <Button>{words.open}</Button>
          </FileTrigger>
          <Button
            onPress={() =>
              commit((draft, context) => addOrder(draft, { name: words.newOrder, due: null }, context))
            }
          >
            {words.addOrder}
          </Button>
          <Button weight="primary" onPress={() => openDialog({ kind: 'paste', text: '' })}>
            {words.paste}
          </Button>
        </div>
      </div>
      {orders.length === 0 ? (
        <section className="empty">
          <h2>{words.emptyTitle}</h2>
          <p>{words.empty}</p>
          <DemoButton />
        </section>
      ) : (
        orders.map((order) => (
          <OrderSection
            key={order.id}
            order={order}
            transfers={(transfers.get(order.id) ?? []).map((transfer) => {
              const own = copies.get(transfer.id) ?? [];
              return {
                transfer,
                count: own.length,
                placed: own.filter((copy) => copy.place !== null).length,
              };
            })}
          />
        ))
      )}
    </>
  );
}

/** A table pasted anywhere in the room, outside of a field, opens the window that reads it. */
function usePastedTable(): void {
  const open = useRef(false);
  open.current = useView((view) => view.dialog !== null);
  useEffect(() => {
    const stopped = new AbortController();
    const onPaste = (event: ClipboardEvent): void => {
      const inField = event.target instanceof HTMLElement && event.target.closest('input, textarea') !== null;
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (inField || open.current || text.trim() === '') return;
      event.preventDefault();
      openDialog({ kind: 'paste', text });
    };
    addEventListener('paste', onPaste, { signal: stopped.signal });
    return () => stopped.abort();
  }, []);
}
