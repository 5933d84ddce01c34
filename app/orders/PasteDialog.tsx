import { useDeferredValue, useMemo, useState } from 'react';
import { Label, TextArea, TextField } from 'react-aria-components';
import { edits } from '../../src/editing';
import { columnNames, headingKey, readTable, type TableReading } from '../../src/intake';
import { settingsOf } from '../../src/model';
import type { DateOrder } from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useWords } from '../words';
import { area, dueDay } from '../words/format';

const PREVIEWED = 100;

/** Reads a table while it is pasted or typed: what was understood, and each row that was not, with its reason. */
export function PasteDialog({ text: pasted }: { text: string }) {
  const { table: words, orders, common } = useWords();
  const ways = useWays();
  const dateOrder = useShop(({ book }) => settingsOf(book)?.dateOrder ?? null);
  const [text, setText] = useState(pasted);
  const read = useDeferredValue(text);
  const columns = useShop(({ book }) => settingsOf(book)?.columns);
  const reading = useMemo(
    () => readTable(read, { unit: ways.unit, dateOrder, columns: columns ?? {} }),
    [read, ways.unit, dateOrder, columns],
  );
  const { rows, bad } = reading;
  const add = () => {
    if (rows.length === 0) return;
    act(edits.addRows(rows));
    notify('plain', words.added(rows.length, bad.length, ways));
    if (bad.length === 0) openDialog(null);
    else setText(reading.badText);
  };
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <TextField className="field table-text" value={text} onChange={setText} autoFocus>
        <Label>{words.label}</Label>
        <TextArea spellCheck="false" />
      </TextField>
      {reading.needsDateOrder && (
        <Choice<DateOrder | 'ask'>
          label={orders.ambiguousDates}
          value={dateOrder ?? 'ask'}
          options={[
            { value: 'ask', label: '—' },
            { value: 'day-first', label: orders.dayFirst },
            { value: 'month-first', label: orders.monthFirst },
          ]}
          onChange={(order) => act(edits.editSettings({ dateOrder: order === 'ask' ? null : order }))}
        />
      )}
      {reading.unknown.length > 0 && <Mapping unknown={reading.unknown} />}
      <Reading reading={reading} empty={text.trim() === ''} />
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button weight="primary" isDisabled={rows.length === 0} onPress={add}>
          {words.add(rows.length, ways)}
        </Button>
      </div>
    </Window>
  );
}

/** Headings that mean nothing yet: the shop says once which column each is, and it is remembered. */
function Mapping({ unknown }: { unknown: readonly string[] }) {
  const { table: words } = useWords();
  const columns = useShop(({ book }) => settingsOf(book)?.columns) ?? {};
  return (
    <fieldset className="mapping">
      <legend>{words.mapTitle}</legend>
      {unknown.map((heading) => (
        <Choice
          key={heading}
          label={words.mapTo(heading)}
          value={columns[headingKey(heading)] ?? 'none'}
          options={[
            { value: 'none', label: words.notUsed },
            ...columnNames.map((column) => ({ value: column as string, label: words.columns[column] })),
          ]}
          onChange={(column) =>
            act(edits.editSettings({ columns: { ...columns, [headingKey(heading)]: column } }))
          }
        />
      ))}
    </fieldset>
  );
}

function Reading({ reading, empty }: { reading: TableReading; empty: boolean }) {
  const { table: words, orders } = useWords();
  const ways = useWays();
  if (empty) return <p className="quiet">{words.empty}</p>;
  if (reading.problem) return <p className="problem">{words.missingColumns(reading.problem.columns)}</p>;
  const { rows, bad } = reading;
  return (
    <div className="reading">
      {bad.length > 0 && (
        <section>
          <h3 className="care">{words.bad(bad.length, ways)}</h3>
          <ul className="bad-rows">
            {bad.map((row) => (
              <li key={row.line}>
                <strong>{words.badRow(row.line)}</strong>{' '}
                {row.problems.map((problem) => words.cellProblem(problem, ways)).join(' ')}
              </li>
            ))}
          </ul>
        </section>
      )}
      {rows.length > 0 && (
        <section>
          <h3>{words.understood(rows.length, ways)}</h3>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must scroll by keys */}
          <div className="reading-scroll" tabIndex={0}>
            <table className="small">
              <thead>
                <tr>
                  <th>{orders.orderName}</th>
                  <th>{orders.transfer}</th>
                  <th>{words.size}</th>
                  <th>{orders.count}</th>
                  <th>{orders.due}</th>
                </tr>
              </thead>
              <tbody>
                {rows.slice(0, PREVIEWED).map((row) => (
                  <tr key={row.line}>
                    <td>{row.order}</td>
                    <td>{row.transfer}</td>
                    <td>{area(row.width, row.height, ways)}</td>
                    <td>{row.count}</td>
                    <td>{row.due ? dueDay(row.due, ways) : ''}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </section>
      )}
    </div>
  );
}
