import { type ReactNode, useId, useState } from 'react';
import { type Column, LongTable } from '../parts/LongTable';
import { useAllWords } from '../words';

/** A chart with the sentence that says what it shows, and the same as a table. */
export function ChartPart<Row>({
  title,
  told,
  children,
  columns,
  rows,
  keyOf,
}: {
  title: string;
  told: string;
  /** The chart; nothing while there is too little to draw. */
  children?: ReactNode;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  keyOf: (row: Row) => string;
}) {
  const { log: words } = useAllWords();
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  return (
    <section className="chart-part" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <p>{told}</p>
      {children}
      {rows.length > 0 && (
        <details className="more" onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{words.asTable}</summary>
          {isOpen && <LongTable labelledBy={id} columns={columns} rows={rows} keyOf={keyOf} />}
        </details>
      )}
    </section>
  );
}
