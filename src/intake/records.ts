import Papa from 'papaparse';
import { fail, ok, type Result } from '../units';
import { LONGEST_CELL, MOST_COLUMNS, MOST_ROWS, MOST_SIGNS, type TableLimit } from './limits';
import type { Separator } from './separator';

function limitAt(record: readonly string[], line: number): TableLimit | null {
  if (line > MOST_ROWS) return { code: 'many-rows' };
  if (record.length > MOST_COLUMNS) return { code: 'many-columns', line };
  return record.some((cell) => cell.length > LONGEST_CELL) ? { code: 'long-cell', line } : null;
}

const NO_QUOTE = '\u0000';

/** A row as the library tells it. */
interface Row {
  readonly data: string[];
  readonly errors: readonly { readonly type: string }[];
  readonly meta: { readonly cursor: number };
}

/** Rows after which it is told how far the reading is. */
const TOLD_EVERY = 500;

/**
 * The records of a table by RFC 4180, also with tabs or semicolons, up to the first row that is too much. A quote that is never
 * closed would swallow all rows behind it: then quotes are read as plain signs.
 * @param onShare is told how much of the text is read, from 0 to 1
 */
export function recordsOf(
  text: string,
  separator: Separator,
  onShare: (share: number) => void,
): Result<string[][], TableLimit> {
  if (text.length > MOST_SIGNS) return fail({ code: 'too-long' });
  const read = (quoteChar: string) => {
    const records: string[][] = [];
    let problem: TableLimit | null = null;
    let isBroken = false;
    Papa.parse<string[]>(text, {
      delimiter: separator,
      quoteChar,
      step({ data, errors, meta }: Row, parser: { abort(): void }) {
        isBroken = errors.some(({ type }) => type === 'Quotes');
        problem = isBroken ? null : limitAt(data, records.length + 1);
        if (isBroken || problem) return parser.abort();
        records.push(data);
        if (records.length % TOLD_EVERY === 0) onShare(meta.cursor / text.length);
      },
    });
    return { isBroken, read: problem ? fail(problem) : ok(records) };
  };
  const quoted = read('"');
  return quoted.isBroken ? read(NO_QUOTE).read : quoted.read;
}
