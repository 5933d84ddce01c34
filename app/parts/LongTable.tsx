import { Fragment, type ReactNode, useRef } from 'react';
import { useTableRows } from './useTableRows';
import './table.css';

/** A cell of a table and its column's name, which a narrow screen shows beside it. */
export interface Column<Row> {
  readonly key: string;
  readonly label: string;
  /** Figures stand at the far side. */
  readonly figure?: boolean;
  readonly cell: (row: Row) => ReactNode;
}

/** A table of any length, of which only what is in view is in the page; on a phone each row is a card. */
export function LongTable<Row>({
  labelledBy,
  columns,
  rows,
  keyOf,
}: {
  labelledBy: string;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  keyOf: (row: Row) => string;
}) {
  const table = useRef<HTMLTableElement>(null);
  const { shown, before, after, measure } = useTableRows(table, rows.length, 52);
  const spacer = (height: number) =>
    height > 0 && (
      <tr className="spacer">
        <td colSpan={columns.length} style={{ height }} />
      </tr>
    );
  return (
    <table ref={table} className="records" aria-labelledby={labelledBy} aria-rowcount={rows.length + 1}>
      <thead>
        <tr>
          {columns.map(({ key, label, figure }) => (
            <th key={key} scope="col" className={figure ? 'figure' : undefined}>
              {label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {spacer(before)}
        {shown.map((index) => {
          const row = rows[index];
          if (row === undefined) return <Fragment key={index} />;
          return (
            <tr key={keyOf(row)} ref={measure} data-index={index} aria-rowindex={index + 2}>
              {columns.map(({ key, label, figure, cell }, at) =>
                at === 0 ? (
                  <th key={key} scope="row">
                    {cell(row)}
                  </th>
                ) : (
                  <td key={key} data-label={label} className={figure ? 'figure' : undefined}>
                    {cell(row)}
                  </td>
                ),
              )}
            </tr>
          );
        })}
        {spacer(after)}
      </tbody>
    </table>
  );
}
