import type { Column } from './headings';
import type { CellProblem } from './row';

/** A fault that several rows share: the same text in the same column. */
export interface SharedFault {
  readonly column: Column;
  readonly text: string;
  readonly rows: number;
}

/** The faults that two rows or more share and that another text mends, the most frequent first. */
export function sharedFaults(bad: readonly { readonly problems: readonly CellProblem[] }[]): SharedFault[] {
  const shared = new Map<string, SharedFault>();
  for (const problem of bad.flatMap(({ problems }) => problems)) {
    // An order is named by the rows above; too many copies in all are no fault of a row.
    if (problem.column === 'order' || problem.code === 'too-many-in-all') continue;
    const { column } = problem;
    const text = 'text' in problem ? problem.text : '';
    const key = `${column} ${text}`;
    shared.set(key, { column, text, rows: (shared.get(key)?.rows ?? 0) + 1 });
  }
  return [...shared.values()].filter(({ rows }) => rows > 1).sort((a, b) => b.rows - a.rows);
}
