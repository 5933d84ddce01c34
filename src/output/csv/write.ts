import Papa from 'papaparse';

/** How a table program writes figures: with a decimal point, fields apart by commas, or with a comma, fields by semicolons. */
export type CsvDialect = 'point' | 'comma';

/** Text as someone typed it, a figure, or nothing. */
export type CsvCell = string | number | null;

export interface CsvTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly CsvCell[])[];
}

/** What separates fields and lines where a table program guesses otherwise than the file was written. */
const GUESSED: Readonly<Record<CsvDialect, string>> = { point: ';|', comma: ',|' };

/** Signs that begin a formula (OWASP, CSV Injection), full-width forms included. */
const SIGN = '[=+\\-@＝＋－＠]';

/** What a program may drop before it looks at the sign: blanks, control and zero-width characters, quotes. */
const DROPPED = '(?:(?![\\t\\r\\n])[\\s\\p{Cc}\\p{Cf}"])*';

/** Where a formula begins, be the text a field or parted into several. */
const formulas = (dialect: CsvDialect): RegExp =>
  new RegExp(`(^|[${GUESSED[dialect]}\\t\\r\\n])(?=${DROPPED}${SIGN})`, 'gu');

/** The dialect that a locale's decimal sign goes with. */
export const dialectOf = (locale: string): CsvDialect =>
  new Intl.NumberFormat(locale)
    .formatToParts(1.5)
    .some(({ type, value }) => type === 'decimal' && value === ',')
    ? 'comma'
    : 'point';

/**
 * Writes a table by RFC 4180: CRLF between lines, quotes where a field needs them. What could be taken for a formula in a text
 * gets an apostrophe in front; figures are figures, minus sign and all.
 */
export function writeCsv({ headings, rows }: CsvTable, dialect: CsvDialect): string {
  const figure = (value: number) => (dialect === 'comma' ? String(value).replace('.', ',') : String(value));
  const begins = formulas(dialect);
  const harmless = (text: string) => text.replace(begins, "$1'").replace(/^(?=[\t\r\n])/, "'");
  const cell = (value: CsvCell) => {
    if (value === null) return '';
    return typeof value === 'number' ? figure(value) : harmless(value);
  };
  return Papa.unparse([headings.map(harmless), ...rows.map((row) => row.map(cell))], {
    delimiter: dialect === 'comma' ? ';' : ',',
    newline: '\r\n',
  });
}
