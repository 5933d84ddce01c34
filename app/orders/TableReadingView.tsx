import { useRef } from 'react';
import type { Doubt, TableReading } from '../../src/intake';
import { BoxList } from '../parts/BoxList';
import { useBoxRows } from '../parts/useBoxRows';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { area, dueDay } from '../words/format';

/** What was understood of a table, and each row that was not, with its reason. */
export function TableReadingView({ reading: { rows, bad, problem } }: { reading: TableReading }) {
  const { table: words } = useAllWords();
  const ways = useWays();
  if (problem) return <p className="problem">{words.problem(problem, ways)}</p>;
  return (
    <div className="reading">
      {bad.length > 0 && (
        <section>
          <h3 className="care">{words.bad(bad.length, ways)}</h3>
          <BadRows bad={bad} />
        </section>
      )}
      {rows.length > 0 && (
        <section>
          <h3>{words.understood(rows.length, ways)}</h3>
          <Doubts rows={rows} />
          <GoodRows rows={rows} />
        </section>
      )}
    </div>
  );
}

const DOUBTS: readonly Doubt[] = ['past-due', 'no-count', 'no-height'];
/** More lines are not named one by one. */
const MOST_NAMED = 6;

/** What is taken of the rows and may not be meant, and on which lines. */
function Doubts({ rows }: { rows: TableReading['rows'] }) {
  const { table: words } = useAllWords();
  const ways = useWays();
  return DOUBTS.map((doubt) => {
    const lines = rows.filter(({ doubts }) => doubts.includes(doubt)).map(({ line }) => line);
    return (
      lines.length > 0 && (
        <p key={doubt} className="care">
          {words.doubts[doubt](lines.length, ways)}{' '}
          {words.onLines(lines.slice(0, MOST_NAMED), lines.length - MOST_NAMED, ways)}
        </p>
      )
    );
  });
}

function BadRows({ bad }: { bad: TableReading['bad'] }) {
  const { table: words } = useAllWords();
  const ways = useWays();
  return (
    <BoxList className="bad-rows" items={bad} keyOf={({ line }) => line} height={28}>
      {({ line, problems }) => (
        <>
          <strong>{words.badRow(line)}</strong>{' '}
          {problems.map((problem) => words.cellProblem(problem, ways)).join(' ')}
        </>
      )}
    </BoxList>
  );
}

function GoodRows({ rows }: { rows: TableReading['rows'] }) {
  const { table: words, orders, press } = useAllWords();
  const ways = useWays();
  const told = rows.some(({ fabric }) => fabric !== null);
  const box = useRef<HTMLDivElement>(null);
  const { shown, before, after, measure } = useBoxRows<HTMLTableRowElement>(box, rows.length, 34);
  const spacer = (height: number) =>
    height > 0 && (
      <tr aria-hidden>
        <td colSpan={told ? 7 : 6} style={{ height, padding: 0 }} />
      </tr>
    );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must scroll by keys
    <div ref={box} className="reading-scroll" tabIndex={0}>
      <table className="small" aria-rowcount={rows.length + 1}>
        <thead>
          <tr>
            <th>{words.row}</th>
            <th>{orders.orderName}</th>
            <th>{orders.transfer}</th>
            <th>{words.size}</th>
            <th>{orders.count}</th>
            <th>{orders.due}</th>
            {told && <th>{press.fabric}</th>}
          </tr>
        </thead>
        <tbody>
          {spacer(before)}
          {shown.map((index) => {
            const row = rows[index];
            return (
              row && (
                <tr key={row.line} ref={measure} data-index={index} aria-rowindex={index + 2}>
                  <td>{row.line}</td>
                  <td>{row.order}</td>
                  <td>{row.transfer}</td>
                  <td>{area(row.width, row.height, ways)}</td>
                  <td>{row.count}</td>
                  <td>{row.due ? dueDay(row.due, ways) : ''}</td>
                  {told && <td>{row.fabric === null ? press.untold : press.fabrics[row.fabric]}</td>}
                </tr>
              )
            );
          })}
          {spacer(after)}
        </tbody>
      </table>
    </div>
  );
}
