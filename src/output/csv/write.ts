import Papa from 'papaparse';

/** How a table program writes figures: with a decimal point, fields apart by commas, or with a comma, fields by semicolons. */
export type CsvDialect = 'point' | 'comma';

/** Text as someone typed it, a figure, or nothing. */
export type CsvCell = string | number | null;

export interface CsvTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly CsvCell[])[];
}

/** What a table program may take for a formula: OWASP, CSV Injection, full-width forms included. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

/** A text that a table program shows and never runs. */
const harmless = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);

/** The dialect that a locale's decimal sign goes with. */
export const dialectOf = (locale: string): CsvDialect =>
  new Intl.NumberFormat(locale)
    .formatToParts(1.5)
    .some(({ type, value }) => type === 'decimal' && value === ',')
    ? 'comma'
    : 'point';

/**
 * Writes a table by RFC 4180: CRLF between lines, quotes where a field needs them. Texts that could be taken for formulas get an
 * apostrophe in front; figures are figures, minus sign and all.
 */
export function writeCsv({ headings, rows }: CsvTable, dialect: CsvDialect): string {
  const figure = (value: number) => (dialect === 'comma' ? String(value).replace('.', ',') : String(value));
  const cell = (value: CsvCell) => {
    if (value === null) return '';
    return typeof value === 'number' ? figure(value) : harmless(value);
  };
  return Papa.unparse([headings.map(harmless), ...rows.map((row) => row.map(cell))], {
    delimiter: dialect === 'comma' ? ';' : ',',
    newline: '\r\n',
  });
}
