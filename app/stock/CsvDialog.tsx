import { useState } from 'react';
import { type CsvDialect, dialectOf, ledgerTable, logTable, writeCsv } from '../../src/output/csv';
import { Choice } from '../parts/Choice';
import { download } from '../parts/download';
import { Form } from '../parts/Form';
import { FormActions } from '../parts/FormActions';
import { Window } from '../parts/Window';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { today } from '../store/today';
import { openDialog } from '../store/view';
import { useWords } from '../words';
import { rollUnit } from './amounts';

/** Tells table programs that the file is UTF-8. */
const BYTE_ORDER_MARK = '\ufeff';

/** The log or the ledger as a file for table programs, its figures written as theirs are. */
export function CsvDialog({ what }: { what: 'log' | 'ledger' }) {
  const { csv: words, stock, closing, spoil } = useWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [dialect, setDialect] = useState<CsvDialect>(() => dialectOf(ways.locale));
  const units = ways.unit === 'mm' ? 'metric' : 'inch';
  const save = () => {
    const film = rollUnit(ways);
    const table =
      what === 'log'
        ? logTable(book, units, {
            columns: words.log(film),
            spoiled: ({ copies, stage, reason }) =>
              closing.spoiledLine(copies, spoil.stages[stage], reason, ways),
          })
        : ledgerTable(book, units, { columns: words.ledger, kinds: stock.kinds, units: words.units(film) });
    const file = new Blob([BYTE_ORDER_MARK, writeCsv(table, dialect)], { type: 'text/csv;charset=utf-8' });
    download(file, `${words.files[what]} ${today()}.csv`);
    openDialog(null);
  };
  return (
    <Window title={words.titles[what]}>
      <Form onSubmit={save}>
        <p className="wide-row quiet">{words.lead}</p>
        <Choice
          label={words.dialect}
          value={dialect}
          options={(['point', 'comma'] as const).map((value) => ({ value, label: words.dialects[value] }))}
          onChange={setDialect}
        />
        <FormActions save={words.save} />
      </Form>
    </Window>
  );
}
