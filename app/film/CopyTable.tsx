import { Suspense, useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { part } from '../offline/part';
import { useWords } from '../words';

const CopyRows = part(() => import('./CopyRows').then(({ CopyRows: rows }) => rows));

/** The table twin of the film: every copy a row, every act a key. */
export function CopyTable({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const [open, setOpen] = useState(false);
  return (
    <details className="copy-table" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{words.table}</h2>
      </summary>
      <p className="quiet small">{words.tableHint}</p>
      {open && (
        <Suspense>
          <CopyRows run={run} />
        </Suspense>
      )}
    </details>
  );
}
