export { type LedgerColumn, type LogColumn, ledgerTable, logTable } from './tables';
export { type CsvDialect, dialectOf, writeCsv } from './write';
