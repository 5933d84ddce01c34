import { useMemo, useState } from 'react';
import { inOrder } from '../../src/units';
import { CsvButton } from '../panels/CsvButton';
import { Choice } from '../parts/Choice';
import { LongTable } from '../parts/LongTable';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';
import { useEntryColumns } from './entry-columns';

const ALL = 'all';

/** Every change of every item, the latest first. */
export function Ledger() {
  const { stock: words } = useAllWords();
  const book = useShop((shop) => shop.book);
  const [chosen, setChosen] = useState(ALL);
  const columns = useEntryColumns(book, false);
  const entries = useMemo(
    () =>
      Object.values(book.entry)
        .toReversed()
        .sort((a, b) => inOrder(b.at, a.at)),
    [book.entry],
  );
  const names = useMemo(() => new Map(entries.map(({ item, name }) => [item as string, name])), [entries]);
  const shown = chosen === ALL ? entries : entries.filter(({ item }) => item === chosen);
  return (
    <section className="stock-part" aria-labelledby="ledger">
      <div className="room-head ledger-head">
        <div>
          <h2 id="ledger">{words.ledger}</h2>
          <p className="quiet small">{words.ledgerLead}</p>
        </div>
        <div className="actions">
          <Choice
            label={words.ledgerOf}
            value={chosen}
            options={[
              { value: ALL, label: words.ledgerAll },
              ...[...names].map(([value, label]) => ({ value, label })),
            ]}
            onChange={setChosen}
          />
          <CsvButton what="ledger" />
        </div>
      </div>
      <LongTable labelledBy="ledger" columns={columns} rows={shown} keyOf={({ id }) => id} />
    </section>
  );
}
