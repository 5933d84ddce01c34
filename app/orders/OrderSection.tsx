import { editOrder, removeOrder } from '../../src/editing';
import type { Order } from '../../src/model';
import { parseDate } from '../../src/units';
import { Button } from '../parts/Button';
import { EntryCell } from '../parts/EntryCell';
import { tintOf } from '../parts/tints';
import { commit, useShop } from '../store/shop';
import { notify } from '../store/view';
import { useWords } from '../words';
import { readCode, readName } from './entries';
import { NewTransferRow } from './NewTransferRow';
import { type TransferLine, TransferRow } from './TransferRow';

/** An order with its transfers, all of it typed over in place. */
export function OrderSection({ order, transfers }: { order: Order; transfers: readonly TransferLine[] }) {
  const { orders: words } = useWords();
  const book = useShop((shop) => shop.book);
  const otherCodes = new Set(
    Object.values(book.order)
      .filter((other) => other.id !== order.id)
      .map((other) => other.code),
  );
  return (
    <section className="order" style={{ '--tint': tintOf(order.tint) }} aria-label={order.name}>
      <header className="order-head">
        <div className="order-code">
          <EntryCell
            label={words.code}
            text={order.code}
            read={(typed) => readCode(typed, otherCodes)}
            onEntry={(code) => commit((draft) => editOrder(draft, order.id, { code }))}
          />
        </div>
        <div className="order-name">
          <EntryCell
            label={words.orderName}
            text={order.name}
            read={readName}
            onEntry={(name) => commit((draft) => editOrder(draft, order.id, { name }))}
          />
        </div>
        <label className="order-due">
          <span>{words.due}</span>
          <input
            type="date"
            value={order.due ?? ''}
            onChange={(event) => {
              const due = parseDate(event.target.value, null);
              // The browser hands out '' while a date is half typed.
              if (due.ok || event.target.value === '') {
                commit((draft) => editOrder(draft, order.id, { due: due.ok ? due.value : null }));
              }
            }}
          />
        </label>
        <Button
          weight="plain"
          aria-label={words.removeOrder(order.code)}
          onPress={() => {
            commit((draft) => removeOrder(draft, order.id));
            notify('plain', words.removedOrder(order.name));
          }}
        >
          ✕
        </Button>
      </header>
      {transfers.length > 0 && (
        <div className="transfer-row transfer-titles" aria-hidden="true">
          <span>{words.artwork}</span>
          <span>{words.transfer}</span>
          <span>{words.width}</span>
          <span>{words.height}</span>
          <span>{words.count}</span>
          <span>{words.mayTurn}</span>
        </div>
      )}
      <ul>
        {transfers.map((line) => (
          <TransferRow key={line.transfer.id} {...line} />
        ))}
      </ul>
      <NewTransferRow order={order} />
    </section>
  );
}
