import { FileTrigger } from 'react-aria-components';
import { edits, inPrint, takenCodes } from '../../src/editing';
import { type Order, type OrderState, orderState, ordersOnFilm } from '../../src/model';
import { parseDate } from '../../src/units';
import { FirstButton } from '../panels/FirstButton';
import { Button } from '../parts/Button';
import { FileButton } from '../parts/FileButton';
import { EntryCell } from '../parts/fields/EntryCell';
import { useHeld } from '../parts/held';
import { OrderCode } from '../parts/OrderCode';
import { usePriced } from '../store/prices';
import { useReader } from '../store/reader';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog, showNewOrder } from '../store/view';
import { allWordsNow, useAllWords } from '../words';
import { money } from '../words/format';
import { artworkTypes } from './artwork';
import { dropFiles } from './drop-files';
import { codeBeside, name } from './entries';
import { addArtworkFiles } from './several-files';
import { useFileDrop } from './useFileDrop';

/** Gives an order a code, and says so where it goes by another until its film is done with. */
function enterCode({ id, name: called }: Order, code: string): void {
  act(edits.editOrder(id, { code }));
  const shown = ordersOnFilm(useShop.getState().book)[id]?.code;
  if (shown !== undefined && shown !== code)
    notify('plain', allWordsNow().orders.codeKept(called, shown, code));
}

/** An order's name, code and due date, typed over in place, and the acts for the whole of it. */
export function OrderHead({
  order,
  empty,
  isNew,
}: {
  order: Order;
  empty: boolean;
  /** It was just added: its name is typed first. */
  isNew: boolean;
}) {
  const reader = useReader();
  const { isHeld, reason } = useHeld(true);
  const { orders: words, press } = reader.words;
  const book = useShop((shop) => shop.book);
  const state = orderState(book, order);
  const { dropping, target } = useFileDrop((files) => dropFiles(files, order.id));
  const ownCode = codeBeside(() => takenCodes(book, order.id));
  const own = book.order[order.id];
  // What is on film keeps the code that stands there.
  const later = own !== undefined && own.code !== order.code;
  return (
    <section aria-label={order.name} className={dropping ? 'dropping' : undefined} {...target}>
      <header className="order-head">
        {later && <OrderCode code={order.code} tint={order.tint} />}
        {later && <span className="quiet small">{words.codeLater}</span>}
        <div className="order-code">
          <EntryCell
            label={later ? words.codeLaterOf(order.name) : words.code}
            value={own?.code ?? order.code}
            codec={ownCode}
            reader={reader}
            onEntry={(code) => enterCode(order, code)}
          />
        </div>
        <div className="order-name">
          <EntryCell
            label={words.orderName}
            value={order.name}
            isFirst={isNew}
            codec={name}
            reader={reader}
            onEntry={(called) => act(edits.editOrder(order.id, { name: called }))}
          />
        </div>
        <span className={state === 'waiting' ? 'state care' : 'state quiet'}>
          {order.rush && <strong className="rush">{words.rush}</strong>} {words.states[state]}
          {order.archived && <strong> · {words.archived}</strong>}
        </span>
        <label className="order-due">
          <span>{words.due}</span>
          <input
            type="date"
            disabled={isHeld}
            {...reason}
            value={order.due ?? ''}
            onChange={(event) => {
              const due = parseDate(event.target.value, null);
              // The browser hands out '' while a date is half typed.
              if (due.ok || event.target.value === '') {
                act(edits.editOrder(order.id, { due: due.ok ? due.value : null }));
              }
            }}
          />
        </label>
        {!empty && <PriceButton order={order} />}
        <OrderActs order={order} state={state} />
      </header>
      {!empty && (
        <div className="transfer-row transfer-titles" aria-hidden="true">
          <span>{words.artwork}</span>
          <span>{words.prints}</span>
          <span>{words.transfer}</span>
          <span>{words.width}</span>
          <span>{words.height}</span>
          <span>{words.count}</span>
          <span>{words.mayTurn}</span>
          <span>{press.fabric}</span>
        </div>
      )}
    </section>
  );
}

/** What the customer pays; opens what it is made up of. */
function PriceButton({ order }: { order: Order }) {
  const { price: words } = useAllWords();
  const ways = useWays();
  const priced = usePriced(order.id);
  const told = priced ? money(priced.price.total, ways) : words.button;
  return (
    <Button
      weight="plain"
      aria-label={words.buttonNamed(order.name, told)}
      onPress={() => openDialog({ kind: 'price', order: order.id })}
    >
      <span className={priced?.price.problem === 'below-cost' ? 'order-price error' : 'order-price'}>
        {told}
      </span>
    </Button>
  );
}

/** Some of it is on film or beyond, and it is not packed: who puts it away may have taken it for another. */
const isPartDone = (state: OrderState): boolean =>
  state === 'in-run' || state === 'part-done' || state === 'printed';

function OrderActs({ order, state }: { order: Order; state: OrderState }) {
  const { orders: words, designs } = useAllWords();
  const remove = () => {
    const { book } = useShop.getState();
    const own = Object.values(book.transfer).filter((transfer) => transfer.order === order.id);
    if (own.some((transfer) => inPrint(book, transfer.id))) {
      notify('care', words.inPrint(order.name));
      return;
    }
    act(edits.removeOrder(order.id));
    notify('plain', words.removedOrder(order.name));
  };
  return (
    <div className="order-acts">
      <FileTrigger
        allowsMultiple
        acceptedFileTypes={artworkTypes}
        onSelect={(files) => files && void addArtworkFiles(order.id, [...files])}
      >
        <FileButton writes weight="plain" aria-label={designs.addFileTo(order.name)}>
          {designs.addFile}
        </FileButton>
      </FileTrigger>
      {!order.archived && <FirstButton order={order} />}
      <Button weight="plain" onPress={() => openDialog({ kind: 'order', order: order.id })}>
        {words.details}
      </Button>
      <Button
        writes
        weight="plain"
        aria-label={words.duplicateNamed(order.name)}
        onPress={() => {
          const added = act(edits.duplicateOrder(order.id, words.again(order.name)));
          if (added?.result) showNewOrder(added.result);
        }}
      >
        {words.duplicate}
      </Button>
      <Button
        writes
        weight="plain"
        aria-label={order.archived ? words.unarchiveNamed(order.name) : words.archiveNamed(order.name)}
        onPress={() =>
          isPartDone(state) && !order.archived
            ? openDialog({ kind: 'archive', order: order.id })
            : act(edits.editOrder(order.id, { archived: !order.archived }))
        }
      >
        {order.archived ? words.unarchive : words.archive}
      </Button>
      <Button writes weight="plain" aria-label={words.removeOrder(order.code)} onPress={remove}>
        ✕
      </Button>
    </div>
  );
}
