import { type ClipboardEvent, useMemo, useState } from 'react';
import { Label, TextArea, TextField } from 'react-aria-components';
import { type Answer, type Answers, edits, repeatedRows, rowsToAdd } from '../../src/editing';
import { type Left, type Mend, type TableReading, tableKey } from '../../src/intake';
import { MOST_SIGNS } from '../../src/intake/limits';
import { settingsOf } from '../../src/model';
import type { DateOrder } from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { notify, openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { wholePercent } from '../words/format';
import { usualDateOrder } from './date-order';
import { Mapping } from './Mapping';
import { MendAll } from './MendAll';
import { answered, Repeated } from './Repeated';
import { TableReadingView } from './TableReadingView';
import { useTableReading } from './useTableReading';
import './orders.css';

/** A longer text is not put into a box to be typed over, which holds up the page at each change. */
const LONGEST_SHOWN = 100_000;

const NO_ROWS: TableReading['rows'] = [];

/** Reads a table while it is pasted or typed: what was understood, and each row that was not, with its reason. */
export function PasteDialog({ text: pasted }: { text: string }) {
  const { table: words, orders, common } = useAllWords();
  const ways = useWays();
  const saidOrder = useShop(({ book }) => settingsOf(book)?.dateOrder ?? null);
  const dateOrder = saidOrder ?? usualDateOrder(ways.locale);
  const [text, setText] = useState(pasted);
  const [mends, setMends] = useState<readonly Mend[]>([]);
  const [left, setLeft] = useState<Left | null>(null);
  const tables = useShop(({ book }) => settingsOf(book)?.tables);
  const columns = useShop(({ book }) => settingsOf(book)?.columns);
  const mapped = useMemo(() => ({ tables: tables ?? {}, columns: columns ?? {} }), [tables, columns]);
  const state = useTableReading(text, { unit: ways.unit, dateOrder, today: today(), mends, left, mapped });
  const { reading } = state;
  const book = useShop((shop) => shop.book);
  const [said, setSaid] = useState<Answers>({});
  const rows = (state.is === 'read' && reading?.rows) || NO_ROWS;
  const repeated = useMemo(() => repeatedRows(book, rows), [book, rows]);
  const answers = useMemo(() => answered(repeated, said), [repeated, said]);
  const open = repeated.length - Object.keys(answers).length;
  const answeredAs = (answer: Answer) => Object.values(answers).filter((each) => each === answer).length;
  const skipped = answeredAs('skip');
  const replaced = answeredAs('replace');
  const added = rows.length - open - skipped - replaced;
  const add = () => {
    if (rows.length === 0 || !reading || open > 0) return;
    const { bad } = reading;
    if (added + replaced > 0) act(edits.addRows(rowsToAdd(rows, repeated, answers)));
    notify('plain', words.added({ added, replaced, skipped }, bad.length, ways));
    if (bad.length === 0) openDialog(null);
    else {
      setLeft(reading.left);
      setText(reading.left.text);
    }
  };
  const refuseLong = (event: ClipboardEvent) => {
    if (event.clipboardData.getData('text/plain').length <= MOST_SIGNS) return;
    event.preventDefault();
    notify('error', words.problem({ code: 'too-long' }, ways));
  };
  return (
    <Window title={words.title}>
      <p className="quiet">
        {words.hint} {words.limits(ways)}
      </p>
      {text.length > LONGEST_SHOWN ? (
        <p>{words.notShown}</p>
      ) : (
        <TextField className="field table-text" value={text} onChange={setText} autoFocus>
          <Label>{words.label}</Label>
          <TextArea spellCheck="false" onPaste={refuseLong} />
        </TextField>
      )}
      {reading?.ambiguousDate && (
        <div className="actions start">
          <Choice<DateOrder | 'ask'>
            writes
            label={words.inDatesSuchAs(reading.ambiguousDate)}
            value={dateOrder ?? 'ask'}
            options={[
              ...(dateOrder === null ? [{ value: 'ask' as const, label: '—' }] : []),
              { value: 'day-first', label: orders.dayFirst },
              { value: 'month-first', label: orders.monthFirst },
            ]}
            onChange={(order) => act(edits.editSettings({ dateOrder: order === 'ask' ? null : order }))}
          />
          {dateOrder !== null && <p className="care">{words.twoDays(reading.ambiguousDate)}</p>}
        </div>
      )}
      {reading && reading.headings.length > 0 && (
        <Mapping key={tableKey(reading.headings.map(({ text }) => text))} headings={reading.headings} />
      )}
      {state.is === 'being-read' && state.share > 0 && (
        <div className="actions">
          <progress max={1} value={state.share} aria-label={words.isRead(wholePercent(state.share, ways))} />
          <Button onPress={state.stop}>{words.stop}</Button>
        </div>
      )}
      {state.is === 'stopped' && (
        <div className="actions">
          <p className="quiet">{words.stopped}</p>
          <Button onPress={state.again}>{words.readAgain}</Button>
        </div>
      )}
      {text.trim() === '' && <p className="quiet">{words.empty}</p>}
      {reading && <MendAll bad={reading.bad} mends={mends} onChange={setMends} />}
      {repeated.length > 0 && <Repeated repeated={repeated} answers={answers} onAnswers={setSaid} />}
      {reading && text.trim() !== '' && <TableReadingView reading={reading} />}
      <div className="actions">
        {open > 0 && <p className="care">{words.again.open(open, ways)}</p>}
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button writes weight="primary" isDisabled={rows.length === 0 || open > 0} onPress={add}>
          {words.add({ added: added + open, replaced, skipped }, ways)}
        </Button>
      </div>
    </Window>
  );
}
