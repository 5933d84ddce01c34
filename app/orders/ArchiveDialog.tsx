import { edits } from '../../src/editing';
import { copiesByTransfer, isFixed, transfersByOrder } from '../../src/model';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';

/** Asks before an order is put away that is part done. */
export function ArchiveDialog({ id }: { id: string }) {
  const { orders: words, common } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const order = book.order[id];
  if (!order) return null;
  const own = transfersByOrder(book).get(id) ?? [];
  const byTransfer = copiesByTransfer(book);
  const copies = own.flatMap((transfer) => byTransfer.get(transfer.id) ?? []);
  const inPrint = copies.filter((copy) => isFixed(book, copy)).length;
  const lying = copies.filter(({ place }) => place !== null).length - inPrint;
  return (
    <Window title={words.archiveNamed(order.name)}>
      <p>{words.partDone(inPrint, lying, copies.length - inPrint - lying, ways)}</p>
      <p className="quiet">{words.archiveKeeps}</p>
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button
          writes
          weight="primary"
          onPress={() => {
            act(edits.editOrder(order.id, { archived: true }));
            openDialog(null);
          }}
        >
          {words.archive}
        </Button>
      </div>
    </Window>
  );
}
