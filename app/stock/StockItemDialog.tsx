import { useMemo } from 'react';
import { edits, mayPutBack } from '../../src/editing';
import type { Book, Film, Supply } from '../../src/model';
import { amountOf, boxOf, entriesOf, itemOf, unitOf } from '../../src/stock';
import { Button } from '../parts/Button';
import { DateField } from '../parts/DateField';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { LongTable } from '../parts/LongTable';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { type Box, boxEntry, boxTable } from './box-form';
import { EntryForm } from './EntryForm';
import { useEntryColumns } from './entry-columns';
import { OffcutForm } from './OffcutForm';

/** Entries of an item that its window shows; the room's ledger has them all. */
const SHOWN = 30;

/** One item in stock: what happened to it, what is on its box, and its entries. */
export function StockItemDialog({ id }: { id: string }) {
  const { stock: words, common } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const item = itemOf(book, id);
  return (
    <Window title={item?.name ?? words.goneItem}>
      {item && (
        <>
          <p className="sentence">
            <strong>{words.amount(amountOf(book, id) ?? 0, unitOf(item), ways)}</strong>
          </p>
          <EntryForm item={item} book={book} />
          <BoxForm item={item} book={book} />
          {(item.kind === 'roll' || item.kind === 'sheets') && <Offcut item={item} book={book} />}
        </>
      )}
      <Entries id={id} book={book} />
      <div className="actions">
        {item && (
          <Button
            writes
            weight="plain"
            onPress={() => {
              act(edits.archiveItem(id, true));
              notify('plain', words.putAwayNote(item.name));
              openDialog(null);
            }}
          >
            {words.putAway}
          </Button>
        )}
        <Button onPress={() => openDialog(null)}>{common.close}</Button>
      </div>
    </Window>
  );
}

function Entries({ id, book }: { id: string; book: Book }) {
  const { stock: words } = useAllWords();
  const entries = useMemo(() => entriesOf(book.entry, id).slice(0, SHOWN), [book.entry, id]);
  const columns = useEntryColumns(book, true);
  if (entries.length === 0) return null;
  return (
    <section>
      <h3 id="item-entries">{words.history}</h3>
      <LongTable labelledBy="item-entries" columns={columns} rows={entries} keyOf={(entry) => entry.id} />
    </section>
  );
}

/** What is written on the box, and when more is ordered. */
function BoxForm({ item, book }: { item: Film | Supply; book: Book }) {
  const { stock: words } = useAllWords();
  const form = useForm(boxTable(unitOf(item)), () => boxEntry(boxOf(book, item.id)), useWays());
  const { record } = form;
  const save = (box: Box) => {
    act(
      item.kind === 'roll' || item.kind === 'sheets'
        ? edits.noteFilmBox(item.id, box)
        : edits.editSupply(item.id, box),
    );
    form.begin(boxEntry(box));
    notify('plain', words.saved(item.name));
  };
  return (
    <details className="more">
      <summary>{words.details}</summary>
      <Form onSubmit={() => form.submit(save)}>
        {form.field('lot')}
        <DateField
          label={words.bestBeforeLabel}
          value={record.bestBefore}
          onChange={(bestBefore) => form.choose({ ...record, bestBefore })}
        />
        <DateField
          label={words.openedLabel}
          value={record.opened}
          onChange={(opened) => form.choose({ ...record, opened })}
        />
        {form.fields('reorder', 'order')}
        <div className="actions">
          <Button writes type="submit">
            {words.saveDetails}
          </Button>
        </div>
      </Form>
    </details>
  );
}

/** Makes a film of its own of what is left, or puts an offcut back. */
function Offcut({ item, book }: { item: Film; book: Book }) {
  const { stock: words } = useAllWords();
  const box = boxOf(book, item.id);
  const cutFrom = box?.kind === 'film' ? box.cutFrom : null;
  if (cutFrom && mayPutBack(book, item.id)) {
    const putBack = () => {
      act(edits.putOffcutBack(item.id));
      notify('plain', words.putBackDone(cutFrom.name));
      openDialog(null);
    };
    return (
      <div className="actions start">
        <Button writes onPress={putBack}>
          {cutFrom.entry === null ? words.putBackSheet : words.putBack}
        </Button>
      </div>
    );
  }
  return <OffcutForm film={item} />;
}
