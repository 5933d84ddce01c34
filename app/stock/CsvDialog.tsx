import { useState } from 'react';
import {
  type CsvDialect,
  dialectOf,
  ledgerTable,
  logTable,
  upkeepTable,
  writeCsv,
} from '../../src/output/csv';
import { download } from '../files/download';
import { Choice } from '../parts/Choice';
import { Form } from '../parts/Form';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { today } from '../store/today';
import { type Dialog, openDialog, type Saved } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { bulkUnits } from '../words/format';

/** Tells table programs that the file is UTF-8. */
const BYTE_ORDER_MARK = '\ufeff';

/** The log, the ledger or what was noted of upkeep as a file for table programs, its figures written as theirs are. */
export function CsvDialog({ what }: { what: Saved }) {
  const { csv: words, stock, closing, spoil, upkeep } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [dialect, setDialect] = useState<CsvDialect>(() => dialectOf(ways.locale));
  const units = ways.unit === 'mm' ? 'metric' : 'inch';
  // What was noted of upkeep is saved from a window, which is opened again.
  const back: Dialog | null = what === 'upkeep' ? { kind: 'upkeep' } : null;
  const save = () => {
    const film = bulkUnits(ways).length;
    const tables = {
      log: () =>
        logTable(book, units, {
          columns: words.log(film),
          spoiled: ({ copies, stage, reason }) =>
            closing.spoiledLine(copies, spoil.stages[stage], reason, ways),
        }),
      ledger: () =>
        ledgerTable(book, units, { columns: words.ledger, kinds: stock.kinds, units: words.units(film) }),
      upkeep: () =>
        upkeepTable(book, { columns: words.upkeep, states: words.states, reading: upkeep.reading }),
    };
    const table = tables[what]();
    const file = new Blob([BYTE_ORDER_MARK, writeCsv(table, dialect)], { type: 'text/csv;charset=utf-8' });
    download(file, `${words.files[what]} ${today()}.csv`);
    openDialog(back);
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
        <FormActions save={words.save} back={back} />
      </Form>
    </Window>
  );
}
