import { useEffect, useMemo, useRef, useState } from 'react';
import type { TableReading, TableWays } from '../../src/intake';
import { readTableApart } from '../../src/intake/browser';
import { sayFailed } from '../store/failures';

/** How far a table is read. */
interface TableState {
  /** What was read last; of the table as it stands only where that is `read`. */
  readonly reading: TableReading | null;
  readonly is: 'being-read' | 'read' | 'stopped';
  /** From 0 to 1. */
  readonly share: number;
  stop(): void;
  again(): void;
}

/** Reads a table in a worker whenever it, or how it is read, changes; what was being read before is stopped. */
export function useTableReading(
  text: string,
  { unit, dateOrder, today, mapped, mends, left }: TableWays,
): TableState {
  const [tries, setTries] = useState(0);
  const task = useMemo(
    () => ({
      text,
      ways: { unit, dateOrder, today, mends: mends ?? [], left: left ?? null, ...(mapped && { mapped }) },
      tries,
      stopped: new AbortController(),
    }),
    [text, unit, dateOrder, today, mapped, mends, left, tries],
  );
  const [progress, setProgress] = useState({ task, share: 0, is: 'being-read' as TableState['is'] });
  const [reading, setReading] = useState<TableReading | null>(null);
  const work = useRef<AbortController | null>(null);
  useEffect(() => {
    const own = new AbortController();
    const { signal } = own;
    work.current = own;
    const told = (share: number) => setProgress({ task, share, is: 'being-read' });
    readTableApart(task.text, task.ways, signal, told).then(
      (found) => {
        if (signal.aborted) return;
        setReading(found);
        setProgress({ task, share: 1, is: 'read' });
      },
      (error) => {
        sayFailed('table', error);
        setProgress((now) =>
          now.task === task || !signal.aborted ? { task, share: 0, is: 'stopped' } : now,
        );
      },
    );
    return () => own.abort(new DOMException('changed', 'AbortError'));
  }, [task]);
  const { share, is } = progress.task === task ? progress : { share: 0, is: 'being-read' as const };
  return {
    reading,
    is,
    share,
    stop: () => work.current?.abort(new DOMException('stopped', 'AbortError')),
    again: () => setTries((count) => count + 1),
  };
}
